using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>check</c>: every page read line by line, folded, and compared with the page before and the archive.</summary>
public static class CheckCommand
{
    /// <param name="progress">Null: standard error's.</param>
    public static int Run(BookFolder folder, Progress? progress = null)
    {
        using var shown = progress ?? Progress.Of(TimeProvider.System);
        var found = Found(folder, shown);
        foreach (var note in found.Notes)
            Say.Done(note);

        return found.Fault is { } fault
            ? Say.Wrong(fault)
            : Say.Done(T($"The book is good: {Say.Count(found.Pages, T("page"), T("pages"))}, {found.Entries} entries, "
                + $"numbered without a hole, every checksum fits, the ledger balances."));
    }

    /// <summary>What a check finds; while it takes long, how far it is.</summary>
    public static BookChecked Found(BookFolder folder, Progress shown)
    {
        var found = BookCheck.Of(folder, (done, all) => shown.Tell((double)done / all, left =>
            T($"Checking the book: page {done + 1} of {all}, about {left} s left.")));
        shown.Erase();
        return found;
    }
}
