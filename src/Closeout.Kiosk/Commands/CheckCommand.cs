using Closeout.DayBook;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>check</c>: every page read line by line, folded, and compared with the page before and the archive.</summary>
public static class CheckCommand
{
    public static int Run(BookFolder folder)
    {
        if (!folder.HasPages)
        {
            throw new BookException($"There is no book at {folder.Path}.");
        }

        var fault = FirstFault(folder, out var entries);
        if (fault is not null)
        {
            Console.Error.WriteLine(fault);
            return ExitCode.No;
        }

        Console.Out.WriteLine($"The book is good: {folder.Dates.Count} {(folder.Dates.Count == 1 ? "page" : "pages")}, {entries} entries, numbered without a hole, every checksum fits, the ledger balances.");
        return ExitCode.Done;
    }

    private static string? FirstFault(BookFolder folder, out int entries)
    {
        entries = 0;
        var archived = new Archive(folder).Seen();
        (Depot Depot, PageMark Mark)? before = null;
        foreach (var date in folder.Dates)
        {
            var path = folder.Page(date);
            try
            {
                var page = PageReader.Read(path, default);
                if (Faults(path, date, page, before) is { } fault)
                {
                    return fault;
                }

                if (archived.Number >= page.Entries[0].Number && archived.Number <= page.Mark.Number && page.Shas[archived.Number - page.Entries[0].Number] != archived.Sha)
                {
                    return $"{path}: entry {archived.Number} is not the one that the archive has seen: the page was cut and written on. Copy the book's folder away before anything else.";
                }

                var depot = Fold(path, page);
                if (Ledger(path, depot) is { } unbalanced)
                {
                    return unbalanced;
                }

                if (page.Torn.Length > 0)
                {
                    Console.Out.WriteLine($"{path}: a line begun after entry {page.Mark.Number} was never confirmed; the next entry sets it aside.");
                }

                before = (depot, page.Mark);
                entries = page.Mark.Number;
            }
            catch (BookException e)
            {
                return e.Message;
            }
        }

        return archived.Number > entries
            ? $"{folder.Page(folder.Dates[^1])}: entries {entries + 1} to {archived.Number} are missing at the end: the archive has seen them. Copy the book's folder away before anything else."
            : null;
    }

    private static string? Faults(string path, DateOnly date, PageRead page, (Depot Depot, PageMark Mark)? before)
    {
        if (page.Entries.Count == 0)
        {
            return $"{path}:1: the page has no whole line.";
        }

        if (page.Entries[0].Entry is not PageOpened opened || opened.Date != date)
        {
            return $"{path}:1: entry {page.Entries[0].Number} does not open the page of {date:yyyy-MM-dd}.";
        }

        var (number, sha) = before is { } b ? (b.Mark.Number, b.Mark.Sha) : (0, PageLine.Nothing);
        if (page.Entries[0].Number != number + 1 || page.Prev != sha)
        {
            return $"{path}:1: entry {page.Entries[0].Number} does not follow entry {number} of the page before: a page was changed, or is missing.";
        }

        if (before is { } prior && !prior.Depot.Ledger.Balances.ToHashSet().SetEquals(opened.Carried.Balances))
        {
            return $"{path}:1: the balances carried forward are not those that the page before ended with.";
        }

        return null;
    }

    private static Depot Fold(string path, PageRead page)
    {
        try
        {
            return Depot.Fold(page.Entries);
        }
        catch (Exception e) when (e is InvalidOperationException or OverflowException or ArgumentException)
        {
            throw new BookException($"{path}: {e.Message}", e);
        }
    }

    private static string? Ledger(string path, Depot depot)
    {
        foreach (var (item, sum) in depot.Ledger.Unbalanced)
        {
            return $"{path}: the ledger does not balance: the units of {item} over all places sum to {sum}, not 0.";
        }

        foreach (var below in depot.Ledger.BelowZero)
        {
            return $"{path}: {below.Place} holds {below.Units} of {below.Item}: less than nothing.";
        }

        return null;
    }
}
