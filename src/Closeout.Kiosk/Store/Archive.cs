using System.Globalization;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Vans;
using LiteDB;

namespace Closeout.Store;

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
    public (int Number, string Sha) Seen()
    {
        if (!File.Exists(Database))
        {
            return (0, "");
        }

        using var held = BookLock.Take(Path.Combine(folder.Archive, "lock"));
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

        db.BeginTrans();
        var entries = db.GetCollection("entries");
        entries.EnsureIndex("date");
        entries.EnsureIndex("van");
        entries.EnsureIndex("person");
        entries.EnsureIndex("kind");
        entries.Insert(page.Entries.Where(e => e.Number > known.Number).Select(e => Document(date, e)).ToList());

        var depot = Depot.Fold(page.Entries);
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
        new ArchiveState(page.Mark.Number, Day(date), page.Mark.Sha!, known.Number == 0 ? FirstSha() : known.Book).Write(db);
        db.Commit();
    }

    private static IReadOnlyList<BsonDocument> Between(LiteDatabase db, string collection, DateOnly from, DateOnly to) =>
        db.GetCollection(collection).Find(Query.Between("date", Day(from), Day(to))).ToList();

    /// <summary>The rows of a date, anew.</summary>
    private static void Replace(LiteDatabase db, string collection, DateOnly date, IEnumerable<BsonDocument> rows)
    {
        var all = db.GetCollection(collection);
        all.EnsureIndex("date");
        all.DeleteMany(Query.EQ("date", Day(date)));
        all.Insert(rows.ToList());
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

    private void PutAside()
    {
        foreach (var file in new[] { Database, Path.Combine(folder.Archive, "closeout-log.db") }.Where(File.Exists))
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
            HoldPlaced h => h.Van.Text,
            IncidentClosed c => c.Van.Text,
            BoxesWrittenOff { Van: { } van } => van.Text,
            CountCorrected { Place.Van.Text: { } van } => van,
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
            HoldPlaced h => h.Lead.Text,
            IncidentClosed c => c.Lead.Text,
            DamageFound d => d.By.Text,
            DepotBoxesCounted d => d.By.Text,
            BoxesWrittenOff w => w.Lead.Text,
            ContainerEmptied c => c.By.Text,
            CollectingBoxShipped c => c.By.Text,
            PinSet p => p.Person.Text,
            PinReset p => p.Person.Text,
            PinFailed p => p.Person.Text,
            PinPassed p => p.Person.Text,
            _ => null,
        },
    };

    private static int Day(DateOnly date) => ArchiveRows.Day(date);
}
