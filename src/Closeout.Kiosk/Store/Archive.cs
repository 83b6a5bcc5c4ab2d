using Closeout.Cardboard;
using Closeout.Vans;
using LiteDB;

namespace Closeout.Store;

/// <summary>
/// The searchable database made from the pages: entries by date, van, person and kind, and the boxes of every day. It is
/// derived: brought up to date when asked, made anew when missing, behind or damaged. It is open only while it is used,
/// under a lock of its own, because two programs that open such a file at once destroy each other's work.
/// </summary>
/// <param name="progress">Told before each page that is taken in: how many are done, and how many there are to do.</param>
public sealed class Archive(BookFolder folder, Action<int, int>? progress = null)
{
    private readonly ArchiveFiles files = new(folder.Archive);

    /// <summary>The boxes of every day from one date to another, both included, oldest first.</summary>
    public IReadOnlyList<DatedBoxes> Boxes(DateOnly from, DateOnly to) =>
        [.. Dated("boxes", from, to, ArchiveRows.Boxes).OrderBy(b => b.Date).ThenBy(b => b.Row.Van).ThenBy(b => b.Row.Item)];

    /// <summary>The mileage log from one date to another, both included, by date, then van.</summary>
    public IReadOnlyList<LoggedMiles> Miles(DateOnly from, DateOnly to) =>
        [.. Dated("miles", from, to, ArchiveRows.Miles).OrderBy(m => m.Date).ThenBy(m => m.Van)];

    /// <summary>What came home of waste streams from one date to another, both included, by date, stream and van.</summary>
    public IReadOnlyList<StreamDay> Streams(DateOnly from, DateOnly to) =>
        [.. Dated("streams", from, to, ArchiveRows.Stream).OrderBy(s => s.Date).ThenBy(s => s.Stream).ThenBy(s => s.Van)];

    /// <summary>All incidents of the book, by number.</summary>
    public IReadOnlyList<LoggedIncident> Incidents() =>
        [.. Found("incidents", null, ArchiveRows.Incident).OrderBy(i => i.Incident.Number)];

    /// <summary>All pictures of the book and the entries that attached them, oldest first.</summary>
    public IReadOnlyList<(int Number, DateOnly Date, PhotoAttached Photo)> Photos() =>
        [.. Found("photos", null, ArchiveRows.Photo).OrderBy(p => p.Number)];

    /// <summary>The numbers of all entries of a van, oldest first.</summary>
    public IReadOnlyList<int> EntriesOf(string van) => [.. Found("entries", Query.EQ("van", van), e => e["_id"].AsInt32).Order()];

    /// <summary>The last entry that it has seen of this book, and its checksum; 0: none. It is not brought up to date first.</summary>
    public (int Number, string Sha) Seen() => Witness().Last is { } last ? (last.Number, last.Sha) : (0, "");

    /// <summary>What the book says its last entry was; where it says nothing, the last that the archive has seen; null: neither.</summary>
    internal LastEntry? LastKnown() => LastEntry.Read(folder) ?? Witness().Last;

    /// <summary>
    /// The same for a check, which writes nothing: the database is only read, by a file that cannot be written, and believed as
    /// it was sealed. It asks for the lock only to look.
    /// </summary>
    /// <returns>Also why the archive could not be asked; empty: it was, or there is none.</returns>
    internal (LastEntry? Last, string Unasked) Witness()
    {
        if (!files.Exist)
            return (null, "");

        try
        {
            using var held = BookLock.TakeToLook(files.Lock);
            files.MustBePlain();
            return (files.AreAsLeft ? Remembered() : null, "");
        }
        catch (Exception e) when (e is BookException or NoPlainFileException)
        {
            return (null, T($"The archive at {folder.Archive} was not asked what it has seen. {e.Message}"));
        }
    }

    private LastEntry? Remembered()
    {
        try
        {
            var state = files.Look(ArchiveState.Of);
            return state.Number > 0 && state.BookSha == PageEnds.BookSha(folder)
                ? new(state.Number, ArchiveRows.Date(state.Day), state.Sha, state.BookSha)
                : null;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // A damaged archive knows nothing, and is remade at its next use; of a damaged page it cannot tell which book it is.
            return null;
        }
    }

    /// <summary>Brings the archive up to the pages.</summary>
    public void CatchUp() => Use(_ => 0);

    /// <summary>Makes it anew from the pages. The book should have been checked: what only the archive knew is gone.</summary>
    public void MakeAnew() => Held(intake =>
    {
        files.Delete();
        return intake.Ask(_ => 0);
    });

    private IReadOnlyList<TResult> Dated<TResult>(string collection, DateOnly from, DateOnly to, Func<BsonDocument, TResult> row) =>
        Found(collection, Query.Between("date", ArchiveRows.Day(from), ArchiveRows.Day(to)), row);

    private IReadOnlyList<TResult> Found<TResult>(string collection, BsonExpression? where, Func<BsonDocument, TResult> row) =>
        Use(db => (where is null ? db.GetCollection(collection).FindAll() : db.GetCollection(collection).Find(where)).Select(row).ToList());

    private TResult Use<TResult>(Func<LiteDatabase, TResult> read) => Held(intake =>
    {
        try
        {
            return files.AreAsLeft || !files.Exist ? intake.Ask(read) : throw new InvalidDataException("not the archive that was left");
        }
        catch (Exception e) when (e is not (BookException or OutOfMemoryException))
        {
            // Damage shows as almost any exception. The pages hold everything: put the archive aside and make it anew.
            files.PutAside();
            return intake.Ask(read);
        }
    });

    private TResult Held<TResult>(Func<ArchiveIntake, TResult> act)
    {
        try
        {
            DurableFolder.Make(folder.Archive);
            using var held = BookLock.Take(files.Lock);
            files.MustBePlain();
            return act(new(folder, files, progress));
        }
        catch (Exception e) when (e is not (BookException or OutOfMemoryException))
        {
            // The database tells a want of room, and a limit on files, as almost anything.
            var then = e is NoPlainFileException ? T("take it away and try again") : T("free some room or make the folder writable");
            throw new BookException(
                T($"The archive at {folder.Archive} cannot be written: {e.Message} Every entry is safe in the pages; {then}."), e);
        }
    }
}
