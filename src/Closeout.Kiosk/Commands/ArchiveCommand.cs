using System.Globalization;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>archive</c>: throws the archive away and makes it from the pages.</summary>
public static class ArchiveCommand
{
    public static int Run(BookFolder folder, TimeProvider clock)
    {
        using var progress = Progress.Of(clock);
        var found = CheckCommand.Found(folder, progress);
        if (found.Fault is { } fault)
        {
            // The old archive may know what the pages lost: it stays.
            throw new BookException(T($"The archive was left as it is: {fault}"));
        }

        var begun = clock.GetTimestamp();
        Of(folder, clock).MakeAnew();
        var seconds = clock.GetElapsedTime(begun).TotalSeconds.ToString("0.0", CultureInfo.InvariantCulture);
        return Say.Done(
            T($"Remade the archive from {Say.Count(found.Pages, T("page"), T("pages"))}, {found.Entries} entries, in {seconds} s."));
    }

    /// <summary>The archive for a command: it tells on standard error when bringing it up to the pages takes long.</summary>
    public static Archive Of(BookFolder folder, TimeProvider clock) => new(folder, new ArchiveProgress(clock, s => Say.Wrong(s)).Told);
}
