namespace Closeout.Store;

/// <summary>Makes a book from a backup, in a folder where nothing is.</summary>
public static class Restore
{
    /// <summary>Unpacks beside the folder's place, checks the whole book there, and only then gives it its name.</summary>
    /// <param name="folder">Where nothing is, or an empty folder.</param>
    /// <exception cref="BookException">The backup is not good, or the folder cannot be written; nothing is left behind.</exception>
    public static BackupManifest Into(BookFolder folder, string path)
    {
        using var backup = BackupFile.Open(path);
        using var fresh = new FreshBook(folder);
        try
        {
            fresh.Make();
            foreach (var part in backup.Manifest.Parts)
            {
                Disk.Writing(() => Unpack(backup, part, Path.Combine([fresh.Folder.Path, .. part.Name.Split('/')])));
            }

            var found = BookCheck.Of(fresh.Folder);
            if (found.Fault is { } fault)
            {
                throw new BackupException($"The backup {path} is refused: what is in it is no good book: {fault.Replace(fresh.Folder.Path, folder.Path, StringComparison.Ordinal)}");
            }

            if (found.BookSha != backup.Manifest.BookSha || found.Entries != backup.Manifest.Entries)
            {
                throw new BackupException($"The backup {path} is refused: it says {backup.Manifest.Entries} entries and holds {found.Entries}, or those of another book. Use another backup.");
            }

            new LastEntry(found.Entries, backup.Manifest.Pages[^1], found.Last.Sha!, found.BookSha).Write(fresh.Folder);
            fresh.Keep();
            return backup.Manifest;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{folder.Path} cannot be written: {e.Message} Nothing was restored; name a folder with --book that can be made and has room.", e);
        }
    }

    private static void Unpack(BackupFile backup, BackupPart part, string to)
    {
        Disk.MakeFolder(Path.GetDirectoryName(to)!);
        using var file = Disk.Own(to, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        backup.CopyTo(part, file);
        file.Flush(flushToDisk: true);
    }
}
