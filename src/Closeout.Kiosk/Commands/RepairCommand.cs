using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>check --repair --out NEWBOOK</c>: saves every good entry into a new book, and says what was lost.</summary>
public static class RepairCommand
{
    public static int Run(BookFolder folder, string outDir, TimeProvider clock)
    {
        var target = BookFolder.At(outDir);
        BackupCommand.RefuseOther(target, "--out");
        var saved = Salvage.Into(folder, target, clock.GetLocalNow());
        foreach (var line in saved.Said)
            Say.Done(line);

        Say.Done(T($"Wrote {target.Path}: {saved.Kept} of {saved.Kept + saved.Lost} entries kept, {saved.Lost} lost, "
            + $"{Say.Count(saved.Pages, T("page"), T("pages"))}. The old book was only read."));
        if (saved.Lost == 0)
            return ExitCode.Done;

        Say.Done(
            T(
                $"Keep the old book. See what is missing (closeout --book {target.Path} wall), record it again, and count what it "
                    + $"concerns; a backup may still hold it."));
        return ExitCode.No;
    }
}
