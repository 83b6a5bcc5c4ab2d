using System.Globalization;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>archive</c>: throws the archive away and makes it from the pages.</summary>
public static class ArchiveCommand
{
    public static int Run(BookFolder folder, TimeProvider clock)
    {
        var found = BookCheck.Of(folder);
        if (found.Fault is { } fault)
        {
            // The old archive may know what the pages lost: it stays.
            throw new BookException($"The archive was left as it is: {fault}");
        }

        var begun = clock.GetTimestamp();
        Of(folder, clock).MakeAnew();
        Say.Done(string.Create(CultureInfo.InvariantCulture, $"Made the archive anew from {found.Pages} {(found.Pages == 1 ? "page" : "pages")}, {found.Entries} entries, in {clock.GetElapsedTime(begun).TotalSeconds:0.0} s."));
        return ExitCode.Done;
    }

    /// <summary>The archive for a command: it tells on standard error when bringing it up to the pages takes long.</summary>
    public static Archive Of(BookFolder folder, TimeProvider clock) => new(folder, new ArchiveProgress(clock, Say.Wrong).Told);
}
