using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>check</c>: every page read line by line, folded, and compared with the page before and the archive.</summary>
public static class CheckCommand
{
    public static int Run(BookFolder folder)
    {
        var found = BookCheck.Of(folder);
        foreach (var note in found.Notes)
            Say.Done(note);

        return found.Fault is { } fault
            ? Say.Wrong(fault)
            : Say.Done(T($"The book is good: {Say.Count(found.Pages, T("page"), T("pages"))}, {found.Entries} entries, "
                + $"numbered without a hole, every checksum fits, the ledger balances."));
    }
}
