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
        return BookException.Telling(
            () =>
            {
                fresh.Make();
                var told = backup.Manifest;
                foreach (var part in told.Parts)
                {
                    DurableFolder.Make(Path.GetDirectoryName(Path.Combine(fresh.Folder.Path, part.Name))!);
                    Disk.WriteNew(Path.Combine(fresh.Folder.Path, part.Name), file => backup.CopyTo(part, file));
                }

                var found = BookCheck.Of(fresh.Folder);
                if (found.Fault?.Replace(fresh.Folder.Path, folder.Path, StringComparison.Ordinal) is { } fault)
                    throw new BackupException(T($"The backup {path} is refused: what is in it is no good book: {fault}"));

                if (found.BookSha != told.BookSha || found.Entries != told.Entries)
                {
                    var what = T($"it says {told.Entries} entries and holds {found.Entries}, or those of another book");
                    throw new BackupException(T($"The backup {path} is refused: {what}. Use another backup."));
                }

                new LastEntry(found.Entries, told.Pages[^1], found.Last.Sha!, found.BookSha).Write(fresh.Folder);
                fresh.Keep();
                return told;
            },
            e =>
                T(
                    $"{folder.Path} cannot be written: {e.Message} Nothing was restored; name a folder with --book that can be made and "
                        + $"has room."));
    }
}
