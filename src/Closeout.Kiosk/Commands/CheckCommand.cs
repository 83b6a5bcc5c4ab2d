using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>check</c>: every page read line by line, folded, and compared with the page before and the archive.</summary>
public static class CheckCommand
{
    public static int Run(BookFolder folder)
    {
        var found = BookCheck.Of(folder);
        foreach (var note in found.Notes)
        {
            Console.Out.WriteLine(note);
        }

        if (found.Fault is { } fault)
        {
            Console.Error.WriteLine(fault);
            return ExitCode.No;
        }

        Console.Out.WriteLine($"The book is good: {found.Pages} {(found.Pages == 1 ? "page" : "pages")}, {found.Entries} entries, numbered without a hole, every checksum fits, the ledger balances.");
        return ExitCode.Done;
    }
}
