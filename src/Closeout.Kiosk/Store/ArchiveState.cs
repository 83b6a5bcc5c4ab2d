using LiteDB;

namespace Closeout.Store;

/// <summary>How far the archive has read which book.</summary>
/// <param name="Number">The last entry; 0: none.</param>
/// <param name="Day">Its business date, as yyyymmdd.</param>
/// <param name="Sha">Its line's checksum.</param>
/// <param name="BookSha">The checksum of the book's very first line: what makes it this book.</param>
internal sealed record ArchiveState(int Number, int Day, string Sha, string BookSha)
{
    /// <summary>Changes when what is stored changes; an archive of another shape is remade.</summary>
    private const int Shape = 4;

    public static bool Fits(LiteDatabase db) => Document(db) is not { } state || state["shape"].AsInt32 == Shape;

    public static ArchiveState Of(LiteDatabase db) => Document(db) is { } state
        ? new(state["number"].AsInt32, state["day"].AsInt32, state["sha"].AsString, state["book"].AsString)
        : new(0, 0, "", "");

    public void Write(LiteDatabase db) => db.GetCollection("state").Upsert(new BsonDocument
    {
        ["_id"] = 1, ["shape"] = Shape, ["number"] = Number, ["day"] = Day, ["sha"] = Sha, ["book"] = BookSha,
    });

    private static BsonDocument? Document(LiteDatabase db) => db.GetCollection("state").FindById(1);
}
