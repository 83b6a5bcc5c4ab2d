using System.Globalization;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>backup --out FILE</c> and <c>restore FILE</c>: a book into one file, and back.</summary>
public static class BackupCommand
{
    public static int Write(BookFolder folder, string file, TimeProvider clock)
    {
        if (Path.GetDirectoryName(RealPath.Of(file)) != RealPath.Of(folder.Backups))
        {
            Output.RefuseInBook(file);
        }

        if (File.Exists(file) || Directory.Exists(file))
        {
            throw new UsageException($"{file} is there already, and a backup is never written over anything. Name another file with --out.");
        }

        var made = Backup.Write(folder, file, clock.GetLocalNow());
        Say.Done($"Wrote {file}, {Size(new FileInfo(file).Length)}, and read it back: {Holds(made)}.");
        return ExitCode.Done;
    }

    public static int Restore(BookFolder folder, string file)
    {
        RefuseOther(folder, "--book");
        var made = Store.Restore.Into(folder, file);
        Say.Done(string.Create(CultureInfo.InvariantCulture, $"Restored {folder.Path} as it was on {DateOnly.FromDateTime(made.Made.DateTime):O} at {made.Made:HH:mm}: {Holds(made)}."));
        return ExitCode.Done;
    }

    /// <summary>A book is never made over anything, nor inside another.</summary>
    public static void RefuseOther(BookFolder folder, string option)
    {
        Output.RefuseInBook(folder.Path, option);
        if (!FreshBook.HasRoom(folder))
        {
            throw new UsageException($"{folder.Path} is there already, and a book is never written over anything. Name a folder that does not exist with {option}.");
        }
    }

    private static string Holds(BackupManifest made) => string.Create(
        CultureInfo.InvariantCulture,
        $"{made.Entries} {(made.Entries == 1 ? "entry" : "entries")} on {made.Pages.Count} {(made.Pages.Count == 1 ? "page" : "pages")}, {made.Pages[0]:O} to {made.Pages[^1]:O}, {Size(made.Bytes)} when unpacked");

    private static string Size(long bytes) => string.Create(CultureInfo.InvariantCulture, $"{bytes:N0} bytes");
}
