namespace Closeout.Store;

/// <summary>Says how far the archive is with being brought up to the pages, once a second, when it takes longer than one.</summary>
/// <param name="say">Takes the sentence; while it does, the archive waits.</param>
public sealed class ArchiveProgress(TimeProvider clock, Action<string> say)
{
    /// <summary>How long people wait without being told what for.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(1);

    private long begun;
    private TimeSpan next;

    /// <summary>To be told before each page.</summary>
    /// <param name="done">Pages taken in; 0: it begins.</param>
    public void Told(int done, int all)
    {
        if (done == 0)
            (begun, next) = (clock.GetTimestamp(), Quiet);

        var waited = clock.GetElapsedTime(begun);
        if (waited >= next)
        {
            next = waited + Quiet;
            say(T($"Bringing the archive up to the pages: {done} of {all} {(all == 1 ? T("page") : T("pages"))} done."));
        }
    }
}
