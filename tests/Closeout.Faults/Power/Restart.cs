using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Faults.Machine;
using Closeout.Rules;
using Closeout.Store;

namespace Closeout.Faults.Power;

/// <summary>How archives answered after power losses.</summary>
internal sealed class ArchiveTally
{
    public int Asked { get; set; }

    public int Wrong { get; set; }

    public int Refused { get; set; }
}

/// <summary>What a look at a book after a power loss found.</summary>
internal sealed record Outcome(string? Fault, int Found, bool WasTorn);

/// <summary>The program started again on what a power loss left.</summary>
/// <param name="asked">All entries of the evening, in order.</param>
internal sealed class Restart(BookFolder folder, IReadOnlyList<string> asked, int acknowledged)
{
    private const string NotOpen = "NOT OPENABLE: ";

    public static (int Lost, int Wrong, int NotOpenable) Kinds(IReadOnlyList<string> faults) =>
        (faults.Count(f => f.Contains("LOST: ")), faults.Count(f => f.Contains("WRONG: ")), faults.Count(f => f.Contains(NotOpen)));

    public Outcome Look(ArchiveTally archives)
    {
        if (acknowledged == 0 && !folder.HasPages)
        {
            return new(null, 0, false);
        }

        try
        {
            return Opened(archives);
        }
        catch (BookException e)
        {
            return new(NotOpen + e.Message, 0, false);
        }
    }

    private Outcome Opened(ArchiveTally archives)
    {
        if (!folder.HasPages)
        {
            return new($"LOST: {acknowledged} entries were acknowledged, and there is no book", 0, false);
        }

        if (Books.WhyNotGood(folder) is { } bad)
        {
            return new(NotOpen + bad, 0, false);
        }

        var found = Books.Entries(folder);
        var wasTorn = PageReader.Read(folder.Page(folder.Dates[^1]), default).Torn.Length > 0;
        if (Books.WhyNotKept(found, asked, acknowledged) is { } gone)
        {
            return new(gone, found.Count, wasTorn);
        }

        Ask(archives);
        return new(WhyNotOn(found.Count), found.Count, wasTorn);
    }

    /// <summary>Work goes on: one more entry is taken, and the book is good with it.</summary>
    private string? WhyNotOn(int before)
    {
        var book = Book.Open(folder);
        var decided = book.Record(depot => (Decision)Books.Day.Loaded(depot), TimeProvider.System.GetLocalNow());
        return decided is not null || Books.WhyNotGood(folder) is not null || Books.Entries(folder).Count != before + 1
            ? $"{NotOpen}it takes no more entries: {decided?.Text ?? Books.WhyNotGood(folder)}"
            : null;
    }

    /// <summary>The archive is derived; it must not be in the way, and it should be right.</summary>
    private void Ask(ArchiveTally archives)
    {
        if (!Directory.Exists(folder.Archive))
        {
            return;
        }

        archives.Asked++;
        try
        {
            var (from, to) = (folder.Dates[0], folder.Dates[^1]);
            var told = new Archive(folder).Boxes(from, to);
            var true_ = folder.Dates.Select(d => (Date: d, Rows: CardboardTotals.Rows(Depot.Fold(PageReader.Read(folder.Page(d), default).Entries)).ToList()))
                .Where(d => d.Rows.Count > 0)
                .Select(d => (d.Date, Expected: d.Rows.Sum(r => r.Expected), Flattened: d.Rows.Sum(r => r.Flattened)));
            archives.Wrong += told.GroupBy(b => b.Date).Select(g => (g.Key, g.Sum(b => b.Row.Expected), g.Sum(b => b.Row.Flattened))).SequenceEqual(true_) ? 0 : 1;
        }
        catch (BookException)
        {
            archives.Refused++;
        }
    }
}
