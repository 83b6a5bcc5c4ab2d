using System.IO.Compression;

namespace Closeout.Store;

/// <summary>Writes a book into one file, while others may go on writing to it.</summary>
/// <remarks>Not copied: the archive, which is made from the pages; the locks; what the last entry was; other backups.</remarks>
public static class Backup
{
    /// <summary>Writes beside the file's place, flushes, reads all of it back, and only then gives it its name.</summary>
    /// <returns>What is in it.</returns>
    /// <exception cref="BookException">The book is not good, the file is there already or cannot be written; nothing is left.</exception>
    public static BackupManifest Write(BookFolder folder, string path, DateTimeOffset made)
    {
        var beside = Disk.Beside(path);
        try
        {
            var (dates, newest, last) = Snapshot(folder);
            Disk.WriteNew(beside, file => Fill(file, folder, dates, newest, made));
            var manifest = Verified(beside, folder.Page, last);
            File.Move(beside, path, overwrite: false);
            DurableFolder.Flush(Path.GetDirectoryName(Path.GetFullPath(path))!);
            return manifest;
        }
        catch (NoPlainFileException e)
        {
            var then = T("None was written; put the file back, or take away what is there.");
            throw new BookException(T($"The book at {folder.Path} cannot be backed up: {e.Message} {then}"), e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            var why = e.Message.Replace(Path.GetFullPath(beside), path, StringComparison.Ordinal);
            var then = T("Name a file that does not exist, in a folder that does and has room.");
            throw new BookException(T($"The backup {path} cannot be written: {why} {then}"), e);
        }
        finally
        {
            Disk.Try(() => File.Delete(beside));
        }
    }

    /// <summary>Reads a whole backup back, as <c>check</c> reads a book.</summary>
    /// <param name="name">What to call a page in messages.</param>
    /// <param name="last">The last entry that must be in it; null: not known.</param>
    private static BackupManifest Verified(string path, Func<DateOnly, string> name, LastEntry? last)
    {
        using var backup = BackupFile.Open(path);
        var (told, parts) = (backup.Manifest, backup.Manifest.Parts.ToDictionary(p => p.Name));
        var found = BookCheck.Pages(
            told.Pages.Select(d => (d, name(d), PageReader.Of(name(d), backup.Read(parts[PartOf(d)]), default))),
            [.. Witness.Of(last, T("the book has had them"))],
            last?.BookSha,
            sha => parts.ContainsKey("files/" + sha));
        if (found.Fault is { } fault)
            throw Damaged(fault);

        foreach (var part in told.Parts.Where(p => !p.Name.StartsWith("pages/", StringComparison.Ordinal)))
            backup.CopyTo(part, Stream.Null);

        return found.BookSha == told.BookSha && found.Entries == told.Entries ? told : throw new BackupException(
            T($"The backup {path} is refused: it says {told.Entries} entries and holds {found.Entries}, or those of another book."));
    }

    private static BookException Damaged(string fault) =>
        new(T($"The book is damaged, and a backup of it would be too, so none was written. {fault}"));

    private static string PartOf(DateOnly date) => $"pages/{date:O}.jsonl";

    /// <summary>
    /// The pages that there are, and the newest one's whole lines: the only things that another program may be changing. The lock is
    /// held for this alone.
    /// </summary>
    private static (IReadOnlyList<DateOnly> Dates, byte[] Newest, LastEntry? Last) Snapshot(BookFolder folder)
    {
        if (!folder.HasPages)
            throw new BookException(T($"There is no book at {folder.Path}."));

        var known = new Archive(folder).LastKnown();
        using var held = BookLock.Take(folder.Lock);
        var dates = folder.Dates;
        return (dates, WholeLines(folder.Page(dates[^1])), LastEntry.Read(folder) ?? known);
    }

    private static void Fill(Stream file, BookFolder folder, IReadOnlyList<DateOnly> dates, byte[] newest, DateTimeOffset made)
    {
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Fill(new BackupPacking(zip, made), folder, dates, newest, made);
            zip.Comment = BackupSeal.Room;
        }

        BackupSeal.Set(file);
    }

    private static void Fill(BackupPacking packing, BookFolder folder, IReadOnlyList<DateOnly> dates, byte[] newest, DateTimeOffset made)
    {
        foreach (var date in dates)
            packing.Add(PartOf(date), new MemoryStream(date == dates[^1] ? newest : WholeLines(folder.Page(date))));

        foreach (var (path, name) in folder.Kept(AttachedFiles.Of(folder)).Where(k => BackupManifest.IsPart(k.Name)))
        {
            using var file = PlainFile.Open(path, BackupManifest.MostBytes(name));
            if (!AttachedFiles.Fits(name, packing.Add(name, file)))
                throw Damaged(AttachedFiles.Fault(path) ?? T($"{path} was changed while it was read."));
        }

        packing.Add(BackupManifest.Name, new MemoryStream(Manifest(folder, dates, newest, made, packing.Parts).ToJson()));
    }

    private static BackupManifest Manifest(
        BookFolder folder, IReadOnlyList<DateOnly> dates, byte[] newest, DateTimeOffset made, IReadOnlyList<BackupPart> parts)
    {
        try
        {
            var last = PageReader.Of(folder.Page(dates[^1]), newest, default).Mark;
            return new(BackupManifest.Known, made, PageEnds.BookSha(folder)!, last.Number, parts);
        }
        catch (BookException e)
        {
            throw Damaged(e.Message);
        }
    }

    private static byte[] WholeLines(string page) => PageFile.Read(page, (file, length) =>
    {
        var bytes = PageFile.Bytes(file, 0, length);
        return bytes[..(bytes.AsSpan().LastIndexOf((byte)'\n') + 1)];
    });
}
