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
    private const int Shape = 1;

    private readonly BookFolder folder;

    public Archive(BookFolder folder) => this.folder = folder;

    private string Database => Path.Combine(folder.Archive, "closeout.db");

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

    /// <summary>Number of the last entry that the archive knows; 0: none. It is not brought up to date first.</summary>
    public int LastNumber()
    {
        if (!File.Exists(Database))
        {
            return 0;
        }

        using var held = BookLock.Take(Path.Combine(folder.Archive, "lock"));
        try
        {
            using var db = Connect();
            return State(db).Number;
        }
        catch (Exception e) when (e is not (BookException or OutOfMemoryException))
        {
            // A damaged archive knows nothing; it is made anew at its next use.
            return 0;
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
            return UpToDate(read);
        }
        catch (Exception e) when (e is not (BookException or OutOfMemoryException))
        {
            // Damage shows as almost any exception. The pages hold everything: put the archive aside and make it anew.
            PutAside();
            return UpToDate(read);
        }
    }

    private T UpToDate<T>(Func<LiteDatabase, T> read)
    {
        using var db = Connect();
        foreach (var date in folder.Dates.Where(d => Day(d) >= State(db).Day).ToList())
        {
            Take(db, date);
        }

        return read(db);
    }

    private void Take(LiteDatabase db, DateOnly date)
    {
        var known = State(db).Number;
        var page = PageReader.Read(folder.Page(date), default);
        if (page.Entries.Count == 0 || page.Mark.Number <= known)
        {
            return;
        }

        db.BeginTrans();
        var entries = db.GetCollection("entries");
        entries.EnsureIndex("date");
        entries.EnsureIndex("van");
        entries.EnsureIndex("person");
        entries.EnsureIndex("kind");
        entries.Insert(page.Entries.Where(e => e.Number > known).Select(e => Document(date, e)).ToList());

        var boxes = db.GetCollection("boxes");
        boxes.EnsureIndex("date");
        boxes.DeleteMany(Query.EQ("date", Day(date)));
        boxes.Insert(CardboardTotals.Rows(Depot.Fold(page.Entries)).Select(r => Document(date, r)).ToList());
        db.GetCollection("state").Upsert(new BsonDocument { ["_id"] = 1, ["shape"] = Shape, ["number"] = page.Mark.Number, ["day"] = Day(date) });
        db.Commit();
    }

    private LiteDatabase Connect()
    {
        var db = new LiteDatabase($"Filename=\"{Path.GetFullPath(Database)}\";Connection=direct;Collation=/Ordinal");
        if (db.GetCollection("state").FindById(1) is { } state && state["shape"].AsInt32 != Shape)
        {
            db.Dispose();
            throw new InvalidDataException("an archive of another shape");
        }

        return db;
    }

    private void PutAside()
    {
        foreach (var file in new[] { Database, Path.Combine(folder.Archive, "closeout-log.db") }.Where(File.Exists))
        {
            File.Move(file, file + ".damaged", overwrite: true);
        }
    }

    private static (int Number, int Day) State(LiteDatabase db) =>
        db.GetCollection("state").FindById(1) is { } state ? (state["number"].AsInt32, state["day"].AsInt32) : (0, 0);

    private static BsonDocument Document(DateOnly date, Recorded e) => new()
    {
        ["_id"] = e.Number,
        ["date"] = Day(date),
        ["at"] = e.At.ToString("O", CultureInfo.InvariantCulture),
        ["kind"] = EntryCodec.KindOf(e.Entry).Name,
        ["van"] = (e.Entry as VanEntry)?.Van.Text,
        ["person"] = e.Entry switch
        {
            VanCameIn c => c.Technician.Text,
            MileageLogged m => m.Technician.Text,
            Signed s => s.Technician.Text,
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
