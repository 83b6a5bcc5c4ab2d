using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Closeout.Words;

namespace Closeout.Store;

/// <summary>Writes a book into one file, while others may go on writing to it.</summary>
/// <remarks>Not copied: the archive, which is made from the pages; the locks; what the last entry was; other backups.</remarks>
public static class Backup
{
    /// <summary>Writes beside the file's place, flushes, reads all of it back, and only then gives it its name.</summary>
    /// <returns>What is in it.</returns>
    /// <exception cref="BookException">The book is not good, the file is there already, or it cannot be written; nothing is left behind.</exception>
    public static BackupManifest Write(BookFolder folder, string path, DateTimeOffset made)
    {
        var beside = Disk.Beside(path);
        try
        {
            var (dates, newest, last) = Snapshot(folder);
            Disk.Writing(() => Fill(beside, folder, dates, newest, made));
            var manifest = Verified(beside, folder.Page, last);
            File.Move(beside, path, overwrite: false);
            Disk.FlushFolder(Path.GetDirectoryName(Path.GetFullPath(path))!);
            return manifest;
        }
        catch (NoPlainFileException e)
        {
            throw new BookException($"The book at {folder.Path} cannot be backed up: {e.Message} None was written; put the file back, or take away what is there.", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The backup {path} cannot be written: {e.Message.Replace(Path.GetFullPath(beside), path, StringComparison.Ordinal)} Name a file that does not exist, in a folder that does and has room.", e);
        }
        finally
        {
            Remove(beside);
        }
    }

    /// <summary>Reads a whole backup back, as <c>check</c> reads a book.</summary>
    /// <param name="name">What to call a page in messages.</param>
    /// <param name="last">The last entry that must be in it; null: not known.</param>
    private static BackupManifest Verified(string path, Func<DateOnly, string> name, LastEntry? last)
    {
        using var backup = BackupFile.Open(path);
        var parts = backup.Manifest.Parts.ToDictionary(p => p.Name);
        var found = BookCheck.Pages(
            backup.Manifest.Pages.Select(d => (d, name(d), PageReader.Of(name(d), backup.Read(parts[PartOf(d)]), default))),
            last is null ? [] : [new(last.Number, last.Sha, "the book has had them")],
            last?.BookSha,
            sha => parts.ContainsKey("files/" + sha));
        if (found.Fault is { } fault)
        {
            throw Damaged(fault);
        }

        foreach (var part in backup.Manifest.Parts.Where(p => !p.Name.StartsWith("pages/", StringComparison.Ordinal)))
        {
            backup.CopyTo(part, Stream.Null);
        }

        return found.BookSha == backup.Manifest.BookSha && found.Entries == backup.Manifest.Entries
            ? backup.Manifest
            : throw new BackupException($"The backup {path} is refused: it says {backup.Manifest.Entries} entries and holds {found.Entries}, or those of another book.");
    }

    private static BookException Damaged(string fault) => new($"The book is damaged, and a backup of it would be too, so none was written. {fault}");

    private static string PartOf(DateOnly date) => $"pages/{date:O}.jsonl";

    /// <summary>The pages that there are, and the newest one's whole lines: the only things that another program may be changing. The lock is held for this alone.</summary>
    private static (IReadOnlyList<DateOnly> Dates, byte[] Newest, LastEntry? Last) Snapshot(BookFolder folder)
    {
        if (!folder.HasPages)
        {
            throw new BookException($"There is no book at {folder.Path}.");
        }

        var known = new Archive(folder).LastKnown();
        using var held = BookLock.Take(folder.Lock);
        var dates = folder.Dates;
        return (dates, WholeLines(folder.Page(dates[^1])), LastEntry.Read(folder) ?? known);
    }

    private static void Fill(string beside, BookFolder folder, IReadOnlyList<DateOnly> dates, byte[] newest, DateTimeOffset made)
    {
        using var file = Disk.Own(beside, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Fill(new Packing(zip, made), folder, dates, newest, made);
            zip.Comment = BackupSeal.Room;
        }

        BackupSeal.Set(file);
        file.Flush(flushToDisk: true);
    }

    private static void Fill(Packing packing, BookFolder folder, IReadOnlyList<DateOnly> dates, byte[] newest, DateTimeOffset made)
    {
        foreach (var date in dates)
        {
            packing.Add(PartOf(date), new MemoryStream(date == dates[^1] ? newest : WholeLines(folder.Page(date))));
        }

        var torn = Directory.Exists(folder.TornLines) ? Directory.EnumerateFiles(folder.TornLines).Order(StringComparer.Ordinal).ToList() : [];
        foreach (var (path, name) in AttachedFiles.Of(folder).Select(f => (f, "files/" + Path.GetFileName(f)))
            .Concat(torn.Select(t => (t, "torn/" + Path.GetFileName(t))))
            .Append((folder.RehearsalMark, "rehearsal.txt"))
            .Where(p => BackupManifest.IsPart(p.Item2) && Path.Exists(p.Item1)))
        {
            using var file = PlainFile.Open(path, BackupManifest.MostBytes(name));
            if (!AttachedFiles.Fits(name, packing.Add(name, file)))
            {
                throw Damaged(AttachedFiles.Fault(path) ?? $"{path} was changed while it was read.");
            }
        }

        var manifest = new BackupManifest(BackupManifest.Known, made, FirstSha(folder.Page(dates[0])), LastNumber(folder.Page(dates[^1]), newest), packing.Parts);
        packing.Add(BackupManifest.Name, new MemoryStream(manifest.ToJson()));
    }

    private static string FirstSha(string page) => PageEnds.FirstSha(page) ?? throw Damaged($"{page}:1: the line does not end in its checksum. {BookException.Remedy}");

    private static int LastNumber(string page, byte[] bytes)
    {
        try
        {
            return PageReader.Of(page, bytes, default).Mark.Number;
        }
        catch (BookException e)
        {
            throw Damaged(e.Message);
        }
    }

    private static byte[] WholeLines(string page)
    {
        using var file = PageReader.Open(page, FileAccess.Read);
        var bytes = PageReader.Bytes(file, 0, RandomAccess.GetLength(file));
        return bytes[..(bytes.AsSpan().LastIndexOf((byte)'\n') + 1)];
    }

    private static void Remove(string beside)
    {
        try
        {
            File.Delete(beside);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Its folder is missing or cannot be written, and so it never was.
        }
    }

    /// <summary>Adds files to a zip and keeps their checksums.</summary>
    private sealed class Packing(ZipArchive zip, DateTimeOffset made)
    {
        private readonly List<BackupPart> parts = [];

        public IReadOnlyList<BackupPart> Parts => parts;

        /// <returns>The SHA-256 of what was read.</returns>
        public string Add(string name, Stream from)
        {
            var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
            entry.LastWriteTime = Stamp(made);

            // Whoever unpacks it by hand gets files for the owner alone, too: rw------- of a regular file.
            entry.ExternalAttributes = unchecked((int)0x81800000);
            using var to = entry.Open();
            using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
            var (piece, bytes) = (new byte[1 << 16], 0L);
            while (from.Read(piece) is var count and > 0)
            {
                hash.AppendData(piece, 0, count);
                to.Write(piece, 0, count);
                bytes += count;
            }

            parts.Add(new(name, bytes, Convert.ToHexStringLower(hash.GetHashAndReset())));
            return parts[^1].Sha;
        }

        /// <summary>A zip knows no time before 1980 or after 2107, and a clock may be wrong. What counts stands in the manifest.</summary>
        private static DateTimeOffset Stamp(DateTimeOffset made) =>
            made.Year < 1980 ? new(1980, 1, 1, 0, 0, 0, made.Offset) : made.Year > 2107 ? new(2107, 12, 31, 0, 0, 0, made.Offset) : made;
    }
}
