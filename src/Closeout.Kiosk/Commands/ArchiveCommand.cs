using System.Diagnostics;
using System.Globalization;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>archive</c>: throws the archive away and makes it from the pages.</summary>
public static class ArchiveCommand
{
    /// <summary>How long people wait without being told what for.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(1);

    private const int Few = 10;

    public static int Run(BookFolder folder)
    {
        var found = BookCheck.Of(folder);
        if (found.Fault is { } fault)
        {
            // The old archive may know what the pages lost: it stays.
            throw new BookException($"The archive was left as it is: {fault}");
        }

        var taken = Stopwatch.StartNew();
        new Archive(folder, Progress()).MakeAnew();
        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Made the archive anew from {found.Pages} {(found.Pages == 1 ? "page" : "pages")}, {found.Entries} entries, in {taken.Elapsed.TotalSeconds:0.0} s."));
        return ExitCode.Done;
    }

    /// <summary>Says how far the archive is, on standard error and once a second, when it takes longer than one. A few pages take that long only on a busy machine.</summary>
    public static Action<int, int> Progress()
    {
        var (waited, said) = (Stopwatch.StartNew(), Quiet);
        return (done, all) =>
        {
            if (all < Few || waited.Elapsed < said)
            {
                return;
            }

            said = waited.Elapsed + Quiet;
            Console.Error.WriteLine($"Bringing the archive up to the pages: {done} of {all} {(all == 1 ? "page" : "pages")} done.");
        };
    }
}
