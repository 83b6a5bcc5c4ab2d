using Closeout.Cardboard;
using Closeout.Facts;
using Closeout.Vans;
using Closeout.Words;
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
        Use(db => Between(db, "boxes", from, to).Select(ArchiveRows.Boxes).OrderBy(b => b.Date).ThenBy(b => b.Row.Van).ThenBy(b => b.Row.Item).ToList());

    /// <summary>The mileage log from one date to another, both included, by date, then van.</summary>
    public IReadOnlyList<LoggedMiles> Miles(DateOnly from, DateOnly to) =>
        Use(db => Between(db, "miles", from, to).Select(ArchiveRows.Miles).OrderBy(m => m.Date).ThenBy(m => m.Van).ToList());

    /// <summary>What came home of waste streams from one date to another, both included, by date, stream and van.</summary>
    public IReadOnlyList<StreamDay> Streams(DateOnly from, DateOnly to) =>
        Use(db => Between(db, "streams", from, to).Select(ArchiveRows.Stream).OrderBy(s => s.Date).ThenBy(s => s.Stream).ThenBy(s => s.Van).ToList());

    /// <summary>All incidents of the book, by number.</summary>
    public IReadOnlyList<LoggedIncident> Incidents() =>
        Use(db => db.GetCollection("incidents").FindAll().ToList().Select(ArchiveRows.Incident).OrderBy(i => i.Incident.Number).ToList());

    /// <summary>All pictures of the book and the entries that attached them, oldest first.</summary>
    public IReadOnlyList<(int Number, DateOnly Date, PhotoAttached Photo)> Photos() =>
        Use(db => db.GetCollection("photos").FindAll().ToList().Select(ArchiveRows.Photo).OrderBy(p => p.Number).ToList());

    /// <summary>The numbers of all entries of a van, oldest first.</summary>
    public IReadOnlyList<int> EntriesOf(string van) => Use(db =>
        db.GetCollection("entries").Find(Query.EQ("van", van)).ToList().Select(e => e["_id"].AsInt32).Order().ToList());

    /// <summary>The last entry that the archive has seen of this book, and its checksum; 0: none. The archive is not brought up to date first.</summary>
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
        {
            return (null, "");
        }

        try
        {
            using var held = BookLock.TakeToLook(files.Lock);
            files.MustBePlain();
            return (files.AreAsLeft ? Remembered() : null, "");
        }
        catch (Exception e) when (e is BookException or NoPlainFileException)
        {
            return (null, $"The archive at {folder.Archive} was not asked what it has seen. {e.Message}");
        }
    }

    private LastEntry? Remembered()
    {
        try
        {
            var state = files.Look(ArchiveState.Of);
            return state.Number > 0 && state.BookSha == FirstSha() ? new(state.Number, ArchiveRows.Date(state.Day), state.Sha, state.BookSha) : null;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // A damaged archive knows nothing, and is made anew at its next use; of a damaged page it cannot tell which book it is.
            return null;
        }
    }

    /// <summary>Brings the archive up to the pages.</summary>
    public void CatchUp() => Use(_ => 0);

    /// <summary>Throws the archive away and makes it from the pages. The book should have been checked: what only the archive knew is gone.</summary>
    public void MakeAnew()
    {
        MakeFolder();
        using var held = BookLock.Take(files.Lock);
        Writing(() =>
        {
            files.MustBePlain();
            files.Delete();
            return UpToDate(_ => 0);
        });
    }

    private void MakeFolder() => Writing(() =>
    {
        Disk.MakeFolder(folder.Archive);
        return 0;
    });

    private T Use<T>(Func<LiteDatabase, T> read)
    {
        MakeFolder();
        using var held = BookLock.Take(files.Lock);
        Writing(() =>
        {
            files.MustBePlain();
            return 0;
        });
        try
        {
            return files.AreAsLeft || !files.Exist ? UpToDate(read) : throw new InvalidDataException("not the archive that was left");
        }
        catch (Exception e) when (e is not (BookException or OutOfMemoryException))
        {
            // Damage shows as almost any exception. The pages hold everything: put the archive aside and make it anew.
            return Writing(() =>
            {
                files.PutAside();
                return UpToDate(read);
            });
        }
    }

    private T Writing<T>(Func<T> write)
    {
        try
        {
            return write();
        }
        catch (Exception e) when (e is not (BookException or OutOfMemoryException))
        {
            // The database tells a want of room, and a limit on files, as almost anything.
            throw new BookException($"The archive at {folder.Archive} cannot be written: {e.Message} Every entry is safe in the pages; {BookException.Do(e, "free some room or make the folder writable")}.", e);
        }
    }

    private T UpToDate<T>(Func<LiteDatabase, T> read)
    {
        var taken = 0;
        try
        {
            var answer = Read(read, ref taken);
            if (taken > 0)
            {
                files.SetSeal();
            }

            return answer;
        }
        catch (BookException) when (taken > 0)
        {
            // A page is damaged: what was taken of those before it stands.
            files.SetSeal();
            throw;
        }
    }

    /// <summary>Takes in what is new, and asks.</summary>
    /// <param name="taken">Counts the pages that were written from.</param>
    private T Read<T>(Func<LiteDatabase, T> read, ref int taken)
    {
        // Before the pages: what other programs append meanwhile is not missing.
        var last = LastEntry.Read(folder);
        using var db = files.Connect();
        var known = ArchiveState.Of(db);
        if (known.Number > 0 && known.BookSha != FirstSha())
        {
            throw new InvalidDataException("an archive of another book");
        }

        var dates = folder.Dates.Where(d => ArchiveRows.Day(d) >= known.Day).ToList();
        for (var i = 0; i < dates.Count; i++)
        {
            progress?.Invoke(i, dates.Count);
            taken += Take(db, dates[i]);
        }

        return ArchiveState.Of(db) is var now && last is not null && last.BookSha == now.BookSha && last.Number > now.Number
            ? throw new BookException($"{folder.Page(last.Date)}: entries {now.Number + 1} to {last.Number} are missing at the end: the book has had them. {BookException.Remedy}")
            : read(db);
    }

    private string FirstSha() => folder.Dates is not [var first, ..]
        ? ""
        : PageEnds.FirstSha(folder.Page(first)) ?? throw new BookException($"{folder.Page(first)}:1: the line does not end in its checksum. {BookException.Remedy}");

    /// <returns>1: the page had something new; else 0.</returns>
    private int Take(LiteDatabase db, DateOnly date)
    {
        var known = ArchiveState.Of(db);
        var page = PageReader.Read(folder.Page(date), default);
        if (page.Entries.Count == 0)
        {
            return 0;
        }

        var first = page.Entries[0].Number;
        if (known.Number > page.Mark.Number || (known.Number >= first && page.Shas[known.Number - first] != known.Sha))
        {
            throw new BookException($"{folder.Page(date)}: the archive has seen entry {known.Number}, and the page does not have it so: entries were cut off. {BookException.Remedy}");
        }

        if (page.Mark.Number == known.Number)
        {
            return 0;
        }

        var path = folder.Page(date);
        var fault = known.Number >= first ? null : known.Number == 0 ? PageLinks.First(path, page) : PageLinks.After(path, page, "the page that the archive has before it", known.Sha);
        if (fault is not null)
        {
            throw new BookException($"{fault} {BookException.Remedy}");
        }

        db.BeginTrans();
        var entries = db.GetCollection("entries");
        entries.EnsureIndex("date");
        entries.EnsureIndex("van");
        entries.EnsureIndex("person");
        entries.EnsureIndex("kind");
        entries.Insert(ArchiveEntries.Of(date, page.Entries, known.Number).ToList());

        var depot = page.Fold(path);
        if (known.Number == 0 && page.Entries[0].Entry is PageOpened { Carried.Yard.BoxDays: var earlier })
        {
            // What older records told stands in no page of its own.
            db.GetCollection("boxes").Insert(earlier.Where(d => d.Date < date).Select(d => ArchiveRows.Of(new DatedBoxes(d.Date, new(default, default, d.Expected, d.Flattened, d.WeightLb)))).ToList());
        }

        Replace(db, "boxes", date, RecyclingTotals.Tonight(depot).Select(ArchiveRows.Of));
        Replace(db, "miles", date, MileageLog.Of(depot).Select(ArchiveRows.Of));
        Replace(db, "streams", date, depot.Shifts.Values.SelectMany(s => s.Streams.Where(a => a.Value > 0).Select(a => new StreamDay(date, s.Van, a.Key, a.Value))).Select(ArchiveRows.Of));
        Replace(db, "photos", date, page.Entries.Where(e => e.Entry is PhotoAttached).Select(e => ArchiveRows.Of(date, e.Number, (PhotoAttached)e.Entry)));
        db.GetCollection("incidents").Upsert(IncidentLog.Of(depot).Select(ArchiveRows.Of).ToList());
        new ArchiveState(page.Mark.Number, ArchiveRows.Day(date), page.Mark.Sha!, known.Number == 0 ? FirstSha() : known.BookSha).Write(db);
        db.Commit();
        return 1;
    }

    private static IReadOnlyList<BsonDocument> Between(LiteDatabase db, string collection, DateOnly from, DateOnly to) =>
        db.GetCollection(collection).Find(Query.Between("date", ArchiveRows.Day(from), ArchiveRows.Day(to))).ToList();

    /// <summary>The rows of a date, anew.</summary>
    private static void Replace(LiteDatabase db, string collection, DateOnly date, IEnumerable<BsonDocument> rows)
    {
        var all = db.GetCollection(collection);
        all.EnsureIndex("date");
        all.DeleteMany(Query.EQ("date", ArchiveRows.Day(date)));
        all.Insert(rows.ToList());
    }
}
