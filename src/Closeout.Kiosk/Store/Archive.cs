using System.Globalization;
using Closeout.Cardboard;
using Closeout.DayBook;
using LiteDB;

namespace Closeout.Store;

/// <summary>Boxes of one business date, all vans.</summary>
public sealed record BoxDay(DateOnly Date, int Expected, int Flattened, double WeightLb);

/// <summary>
/// The searchable database made from the pages: entries by date, van, person and kind, and the boxes of every day. It is
/// derived: brought up to date when asked, made anew when missing, behind or damaged. It is open only while it is used,
/// under a lock of its own, because two programs that open such a file at once destroy each other's work.
/// </summary>
public sealed class Archive
{
    private readonly BookFolder folder;

    public Archive(BookFolder folder) => this.folder = folder;

    private string Database => Path.Combine(folder.Archive, "closeout.db");

    /// <summary>
    /// Stands, flushed, while the database is written, until that is flushed too. Where it is found, somebody broke off: the
    /// database does not flush what it commits, and what a power loss leaves of it may answer wrongly without an error.
    /// </summary>
    private string Writing => Path.Combine(folder.Archive, "writing");

    /// <summary>The boxes of every day from one date to another, both included, oldest first.</summary>
    public IReadOnlyList<BoxDay> Boxes(DateOnly from, DateOnly to) => Use(db =>
        db.GetCollection("boxes")
            .Find(Query.Between("date", Day(from), Day(to)))
            .ToList()
            .GroupBy(b => b["date"].AsInt32)
            .OrderBy(g => g.Key)
            .Select(g => new BoxDay(Date(g.Key), g.Sum(b => b["expected"].AsInt32), g.Sum(b => b["flattened"].AsInt32), g.Sum(b => b["weight_lb"].AsDouble)))
            .ToList());

    /// <summary>The numbers of all entries of a van, oldest first.</summary>
    public IReadOnlyList<int> EntriesOf(string van) => Use(db =>
        db.GetCollection("entries").Find(Query.EQ("van", van)).ToList().Select(e => e["_id"].AsInt32).Order().ToList());

    /// <summary>The last entry that the archive has seen of this book, and its checksum; 0: none. The archive is not brought up to date first.</summary>
    public (int Number, string Sha) Seen()
    {
        if (!File.Exists(Database))
        {
            return (0, "");
        }

        using var held = BookLock.Take(Path.Combine(folder.Archive, "lock"));
        if (File.Exists(Writing))
        {
            return (0, "");
        }

        try
        {
            using var db = Connect();
            var state = ArchiveState.Of(db);
            return state.Book == FirstSha() ? (state.Number, state.Sha) : (0, "");
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // A damaged archive knows nothing, and is made anew at its next use; of a damaged page it cannot tell which book it is.
            return (0, "");
        }
    }

    /// <summary>Brings the archive up to the pages.</summary>
    public void CatchUp() => Use(_ => 0);

    private T Use<T>(Func<LiteDatabase, T> read)
    {
        try
        {
            Directory.CreateDirectory(folder.Archive);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The archive at {folder.Archive} cannot be written: {e.Message}", e);
        }

        using var held = BookLock.Take(Path.Combine(folder.Archive, "lock"));
        try
        {
            return File.Exists(Writing) ? Anew(read) : UpToDate(read);
        }
        catch (Exception e) when (e is not (BookException or OutOfMemoryException))
        {
            return Anew(read);
        }
    }

    /// <summary>Damage shows as almost any exception. The pages hold everything: put the archive aside and make it anew.</summary>
    private T Anew<T>(Func<LiteDatabase, T> read)
    {
        try
        {
            PutAside();
            return UpToDate(read);
        }
        catch (Exception e) when (e is not (BookException or OutOfMemoryException))
        {
            // Not the archive's damage, then: most likely there is no room for it.
            throw new BookException($"The archive at {folder.Archive} cannot be written: {e.Message} The day book is not touched by that. Free some room or make the folder writable, then try again.", e);
        }
    }

    private T UpToDate<T>(Func<LiteDatabase, T> read)
    {
        if (!File.Exists(Database))
        {
            Disk.WriteWhole(Writing, []);
        }

        var told = Told(read);
        if (File.Exists(Writing))
        {
            foreach (var file in Files)
            {
                Disk.FlushFile(file);
            }

            Disk.FlushFolder(folder.Archive);
            File.Delete(Writing);
        }

        return told;
    }

    private T Told<T>(Func<LiteDatabase, T> read)
    {
        using var db = Connect();
        if (ArchiveState.Of(db) is { Number: > 0 } state && state.Book != FirstSha())
        {
            throw new InvalidDataException("an archive of another book");
        }

        foreach (var date in folder.Dates.Where(d => Day(d) >= ArchiveState.Of(db).Day).ToList())
        {
            Take(db, date);
        }

        return read(db);
    }

    private string FirstSha() => PageReader.Read(folder.Page(folder.Dates[0]), default).Shas.FirstOrDefault("");

    private void Take(LiteDatabase db, DateOnly date)
    {
        var known = ArchiveState.Of(db);
        var page = PageReader.Read(folder.Page(date), default);
        if (page.Entries.Count == 0)
        {
            return;
        }

        var first = page.Entries[0].Number;
        if (known.Number > page.Mark.Number || (known.Number >= first && page.Shas[known.Number - first] != known.Sha))
        {
            throw new BookException($"{folder.Page(date)}: the archive has seen entry {known.Number}, and the page does not have it so: entries were cut off. Copy the book's folder away before anything else, then run: closeout check");
        }

        if (page.Mark.Number == known.Number)
        {
            return;
        }

        Disk.WriteWhole(Writing, []);
        db.BeginTrans();
        var entries = db.GetCollection("entries");
        entries.EnsureIndex("date");
        entries.EnsureIndex("van");
        entries.EnsureIndex("person");
        entries.EnsureIndex("kind");
        entries.Insert(page.Entries.Where(e => e.Number > known.Number).Select(e => Document(date, e)).ToList());

        var boxes = db.GetCollection("boxes");
        boxes.EnsureIndex("date");
        boxes.DeleteMany(Query.EQ("date", Day(date)));
        boxes.Insert(CardboardTotals.Rows(Depot.Fold(page.Entries)).Select(r => Document(date, r)).ToList());
        new ArchiveState(page.Mark.Number, Day(date), page.Mark.Sha!, known.Number == 0 ? FirstSha() : known.Book).Write(db);
        db.Commit();
    }

    private LiteDatabase Connect()
    {
        var db = new LiteDatabase($"Filename=\"{Path.GetFullPath(Database)}\";Connection=direct;Collation=/Ordinal");
        if (!ArchiveState.Fits(db))
        {
            db.Dispose();
            throw new InvalidDataException("an archive of another shape");
        }

        return db;
    }

    private IReadOnlyList<string> Files => [.. new[] { Database, Path.Combine(folder.Archive, "closeout-log.db") }.Where(File.Exists)];

    private void PutAside()
    {
        foreach (var file in Files)
        {
            File.Move(file, file + ".damaged", overwrite: true);
        }
    }

    private static BsonDocument Document(DateOnly date, Recorded e) => new()
    {
        ["_id"] = e.Number,
        ["date"] = Day(date),
        ["at"] = e.At.ToString("O", CultureInfo.InvariantCulture),
        ["kind"] = EntryCodec.KindOf(e.Entry).Name,
        ["van"] = e.Entry switch
        {
            VanEntry v => v.Van.Text,
            VanLoaded l => l.Van.Text,
            PlanOverridden p => p.Van.Text,
            HoldsLifted h => h.Van.Text,
            _ => null,
        },
        ["person"] = e.Entry switch
        {
            VanCameIn c => c.Technician.Text,
            MileageLogged m => m.Technician.Text,
            Signed s => s.Technician.Text,
            PlanOverridden p => p.Lead.Text,
            OverrideWithdrawn w => w.Lead.Text,
            VanLoaded { By: { } by } => by.Text,
            DeliveryReceived d => d.By.Text,
            CountCorrected c => c.By.Text,
            HoldsLifted h => h.Lead.Text,
            _ => null,
        },
    };

    private static BsonDocument Document(DateOnly date, BoxRow row) => new()
    {
        ["_id"] = $"{Day(date)} {row.Van} {row.Item}",
        ["date"] = Day(date),
        ["van"] = row.Van.Text,
        ["item"] = row.Item.Text,
        ["expected"] = row.Expected,
        ["flattened"] = row.Flattened,
        ["weight_lb"] = row.WeightLb,
    };

    private static int Day(DateOnly date) => date.Year * 10_000 + date.Month * 100 + date.Day;

    private static DateOnly Date(int day) => new(day / 10_000, day / 100 % 100, day % 100);
}
