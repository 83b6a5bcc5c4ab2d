using Closeout.Cardboard;
using Closeout.Vans;
using LiteDB;

namespace Closeout.Store;

/// <summary>Takes into the archive what is new in the pages. Under the archive's lock.</summary>
/// <param name="progress">Told before each page: how many are done, and how many there are to do.</param>
internal sealed class ArchiveIntake(BookFolder folder, ArchiveFiles files, Action<int, int>? progress)
{
    /// <summary>Takes in what is new, asks, and seals what was written.</summary>
    public TResult Ask<TResult>(Func<LiteDatabase, TResult> read)
    {
        var taken = 0;
        try
        {
            var answer = Read(read, ref taken);
            if (taken > 0)
                files.SetSeal();

            return answer;
        }
        catch (BookException) when (taken > 0)
        {
            // A page is damaged: what was taken of those before it stands.
            files.SetSeal();
            throw;
        }
    }

    /// <param name="taken">Counts the pages that were written from.</param>
    private TResult Read<TResult>(Func<LiteDatabase, TResult> read, ref int taken)
    {
        // Before the pages: what other programs append meanwhile is not missing.
        var last = LastEntry.Read(folder);
        using var db = files.Connect();
        var known = ArchiveState.Of(db);
        if (known.Number > 0 && known.BookSha != PageEnds.BookSha(folder))
            throw new InvalidDataException("an archive of another book");

        var dates = folder.Dates.Where(d => ArchiveRows.Day(d) >= known.Day).ToList();
        for (var i = 0; i < dates.Count; i++)
        {
            progress?.Invoke(i, dates.Count);
            taken += Take(db, dates[i]);
        }

        return ArchiveState.Of(db) is var now && last is not null && last.BookSha == now.BookSha && last.Number > now.Number
            ? throw BookException.Damaged(
                T($"{folder.Page(last.Date)}: entries {now.Number + 1} to {last.Number} are missing at the end: the book has had them."))
            : read(db);
    }

    /// <returns>1: the page had something new; else 0.</returns>
    private int Take(LiteDatabase db, DateOnly date)
    {
        var (known, path) = (ArchiveState.Of(db), folder.Page(date));
        var page = PageReader.Read(path, default);
        if (page.Entries.Count == 0)
            return 0;

        var first = page.Entries[0].Number;
        if (known.Number > page.Mark.Number || (known.Number >= first && page.Shas[known.Number - first] != known.Sha))
        {
            throw BookException.Damaged(
                T($"{path}: the archive has seen entry {known.Number}, and the page does not have it so: entries were cut off."));
        }

        if (page.Mark.Number == known.Number)
            return 0;

        var fault = known.Number >= first ? null
            : known.Number == 0 ? PageLinks.First(path, page)
            : PageLinks.After(path, page, T("the page that the archive has before it"), known.Sha);
        if (fault is not null)
            throw BookException.Damaged(fault);

        db.BeginTrans();
        TakeEntries(db, date, page, known);
        TakeDay(db, date, page.Fold(path), page.Entries);
        var book = known.Number == 0 ? PageEnds.BookSha(folder)! : known.BookSha;
        new ArchiveState(page.Mark.Number, ArchiveRows.Day(date), page.Mark.Sha!, book).Write(db);
        db.Commit();
        return 1;
    }

    private static void TakeEntries(LiteDatabase db, DateOnly date, PageRead page, ArchiveState known)
    {
        var entries = db.GetCollection("entries");
        foreach (var field in new[] { "date", "van", "person", "kind" })
            entries.EnsureIndex(field);

        // All of the page are looked at: who is in charge of a van stands before its answers.
        entries.Insert(Concerned.Of(page.Entries).Where(e => e.Recorded.Number > known.Number)
            .Select(e => ArchiveRows.Of(date, e.Recorded, e.Concerned)).ToList());
        if (known.Number == 0 && page.Entries[0].Entry is PageOpened { Carried.Yard.BoxDays: var earlier })
        {
            // What older records told stands in no page of its own.
            db.GetCollection("boxes").Insert(earlier.Where(d => d.Date < date)
                .Select(d => ArchiveRows.Of(new DatedBoxes(d.Date, new(default, default, d.Expected, d.Flattened, d.WeightLb)))).ToList());
        }
    }

    /// <summary>What the date came to so far, in place of what stands there of it.</summary>
    private static void TakeDay(LiteDatabase db, DateOnly date, Depot depot, IReadOnlyList<Recorded> entries)
    {
        void Replace(string collection, IEnumerable<BsonDocument> rows)
        {
            var all = db.GetCollection(collection);
            all.EnsureIndex("date");
            all.DeleteMany(Query.EQ("date", ArchiveRows.Day(date)));
            all.Insert(rows.ToList());
        }

        Replace("boxes", RecyclingTotals.Tonight(depot).Select(ArchiveRows.Of));
        Replace("miles", English(() => MileageLog.Of(depot).ToList()).Select(ArchiveRows.Of));
        Replace("streams", depot.Shifts.Values.SelectMany(s => s.Streams.Where(a => a.Value > 0)
            .Select(a => ArchiveRows.Of(new StreamDay(date, s.Van, a.Key, a.Value)))));
        Replace("photos", entries.Where(e => e.Entry is PhotoAttached).Select(e => ArchiveRows.Of(date, e.Number, (PhotoAttached)e.Entry)));
        db.GetCollection("incidents").Upsert(IncidentLog.Of(depot).Select(ArchiveRows.Of).ToList());
    }
}
