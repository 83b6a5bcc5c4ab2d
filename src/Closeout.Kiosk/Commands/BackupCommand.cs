using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>backup --out FILE</c> and <c>restore FILE</c>: a book into one file, and back.</summary>
public static class BackupCommand
{
    public static int Write(BookFolder folder, string file, TimeProvider clock)
    {
        if (Path.GetDirectoryName(RealPath.Of(file)) != RealPath.Of(folder.Backups))
            Output.RefuseInBook(file);

        if (Path.Exists(file))
        {
            var why = T("is there already, and a backup is never written over anything. Name another file with --out.");
            throw new UsageException($"{file} {why}");
        }

        var made = Backup.Write(folder, file, clock.GetLocalNow());
        return Say.Done(T($"Wrote {file}, {Size(new FileInfo(file).Length)}, and read it back: {Holds(made)}."));
    }

    public static int Restore(BookFolder folder, string file)
    {
        RefuseOther(folder, "--book");
        var made = Store.Restore.Into(folder, file);
        var (day, time) = (DateOnly.FromDateTime(made.Made.DateTime), TimeOnly.FromDateTime(made.Made.DateTime));
        return Say.Done(T($"Restored {folder.Path} as it was on {day:O} at {time:HH:mm}: {Holds(made)}."));
    }

    /// <summary>A book is never made over anything, nor inside another.</summary>
    public static void RefuseOther(BookFolder folder, string option)
    {
        Output.RefuseInBook(folder.Path, option);
        if (!FreshBook.HasRoom(folder))
        {
            var why = T("is there already, and a book is never written over anything. Name a folder that does not exist with");
            throw new UsageException($"{folder.Path} {why} {option}.");
        }
    }

    private static string Holds(BackupManifest made) => T($"{Say.Count(made.Entries, T("entry"), T("entries"))} on "
        + $"{Say.Count(made.Pages.Count, T("page"), T("pages"))}, {made.Pages[0]:O} to {made.Pages[^1]:O}, {Size(made.Bytes)} when "
        + $"unpacked");

    private static string Size(long bytes) => T($"{bytes:N0} bytes");
}
