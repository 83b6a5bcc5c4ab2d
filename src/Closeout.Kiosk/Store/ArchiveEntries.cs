using System.Globalization;
using Closeout.DayBook;
using Closeout.Facts;
using LiteDB;

namespace Closeout.Store;

/// <summary>How entries stand in the archive: when, of what kind, of which van, by whom.</summary>
internal static class ArchiveEntries
{
    /// <param name="page">All entries of the page: who is in charge of a van stands before its answers.</param>
    /// <param name="after">Entries up to this number stand there already.</param>
    public static IEnumerable<BsonDocument> Of(DateOnly date, IEnumerable<Recorded> page, int after) =>
        Concerned.Of(page).Where(e => e.Recorded.Number > after).Select(e => new BsonDocument
        {
            ["_id"] = e.Recorded.Number,
            ["date"] = ArchiveRows.Day(date),
            ["at"] = e.Recorded.At.ToString("O", CultureInfo.InvariantCulture),
            ["kind"] = EntryKind.Of(e.Recorded.Entry).Name,
            ["van"] = e.Concerned.Van?.Text,
            ["person"] = e.Concerned.Person?.Text,
        });
}
