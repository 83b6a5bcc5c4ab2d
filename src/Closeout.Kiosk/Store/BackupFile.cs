using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Closeout.Words;

namespace Closeout.Store;

/// <summary>A backup opened for reading: its seal fits, and every name, number and size in it is one that a backup may have.</summary>
public sealed class BackupFile : IDisposable
{
    /// <summary>More than a page a day for five centuries.</summary>
    private const int MostParts = 200_000;

    /// <summary>The most bytes of a backup, which is read whole for its checksum.</summary>
    private const long MostBytes = 1L << 40;

    /// <summary>How many times its own size a backup may be when unpacked, beyond <see cref="AnySize"/>. Pages come to about ten.</summary>
    private const long MostGrowth = 200;

    private const long AnySize = 16L << 20;

    private readonly string path;
    private readonly ZipArchive zip;
    private readonly Dictionary<string, ZipArchiveEntry> entries;

    private BackupFile(string path, ZipArchive zip, Dictionary<string, ZipArchiveEntry> entries, BackupManifest manifest) =>
        (this.path, this.zip, this.entries, Manifest) = (path, zip, entries, manifest);

    public BackupManifest Manifest { get; }

    /// <exception cref="BackupException">It is no whole backup; the message says what to do.</exception>
    public static BackupFile Open(string path)
    {
        FileStream? file = null;
        try
        {
            file = PlainFile.Open(path, MostBytes);
            if (!BackupSeal.Fits(file))
            {
                throw Damaged(path, "the checksum at its end does not fit: it was damaged or cut, or is no backup of this program");
            }

            var (size, zip) = (file.Length, new ZipArchive(file, ZipArchiveMode.Read));
            file = null;
            try
            {
                return Within(path, zip, size);
            }
            catch
            {
                zip.Dispose();
                throw;
            }
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new BackupException($"There is no backup {path}.", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BackupException($"The backup {path} cannot be read: {e.Message}", e);
        }
        catch (Exception e) when (e is InvalidDataException or FormatException or NotSupportedException or ArgumentException or OverflowException)
        {
            throw Foreign(path, e.Message.TrimEnd('.'), e);
        }
        finally
        {
            file?.Dispose();
        }
    }

    /// <summary>What a backup says of itself, its checksums not compared: enough to tell whose it is and how much it holds. Null: it says nothing.</summary>
    public static BackupManifest? Told(string path)
    {
        try
        {
            using var file = PlainFile.Open(path, MostBytes);
            using var zip = new ZipArchive(file, ZipArchiveMode.Read);
            return ManifestIn(zip);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or InvalidDataException or FormatException or NotSupportedException or ArgumentException or OverflowException)
        {
            return null;
        }
    }

    /// <summary>Unpacks a part into memory.</summary>
    /// <exception cref="BackupException">It is not what the manifest says.</exception>
    public byte[] Read(BackupPart part)
    {
        using var bytes = new MemoryStream();
        CopyTo(part, bytes);
        return bytes.ToArray();
    }

    /// <summary>Unpacks a part.</summary>
    /// <exception cref="BackupException">It is not what the manifest says, or cannot be written.</exception>
    public void CopyTo(BackupPart part, Stream to)
    {
        try
        {
            using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
            var whole = Unpack(entries[part.Name], part.Bytes, piece =>
            {
                hash.AppendData(piece);
                to.Write(piece);
            });
            if (!whole || Convert.ToHexStringLower(hash.GetHashAndReset()) != part.Sha)
            {
                throw Damaged(path, $"{part.Name} in it is not as it was: its checksum does not fit");
            }
        }
        catch (Exception e) when (e is InvalidDataException or NotSupportedException)
        {
            throw Damaged(path, $"{part.Name} in it cannot be unpacked: {e.Message.TrimEnd('.')}", e);
        }
    }

    public void Dispose() => zip.Dispose();

    private static BackupFile Within(string path, ZipArchive zip, long size)
    {
        if (zip.Entries.Count > MostParts)
        {
            throw new InvalidDataException($"it has {zip.Entries.Count} files, and {MostParts} are allowed");
        }

        var manifest = ManifestIn(zip);
        var entries = new Dictionary<string, ZipArchiveEntry>(StringComparer.Ordinal);
        foreach (var entry in zip.Entries)
        {
            if (entry.FullName != BackupManifest.Name && !BackupManifest.IsPart(entry.FullName))
            {
                throw new InvalidDataException($"it holds \"{Harmless.Line(entry.FullName)}\", which is no part of a book");
            }

            if (!entries.TryAdd(entry.FullName, entry))
            {
                throw new InvalidDataException($"it holds {entry.FullName} twice");
            }
        }

        entries.Remove(BackupManifest.Name);
        if (!manifest.Parts.Select(p => p.Name).ToHashSet().SetEquals(entries.Keys) || manifest.Parts.Count != entries.Count)
        {
            throw new InvalidDataException($"its files are not those that {BackupManifest.Name} lists");
        }

        foreach (var part in manifest.Parts)
        {
            var most = BackupManifest.MostBytes(part.Name);
            if (part.Bytes > most || entries[part.Name].Length != part.Bytes)
            {
                throw new InvalidDataException($"{part.Name} has {entries[part.Name].Length} bytes; {BackupManifest.Name} says {part.Bytes}, and {most} are allowed");
            }
        }

        if (manifest.Bytes > AnySize + (size * MostGrowth))
        {
            throw new InvalidDataException($"it would unpack to {manifest.Bytes} bytes, and has {size}: no book does that");
        }

        return new(path, zip, entries, manifest);
    }

    private static BackupManifest ManifestIn(ZipArchive zip)
    {
        if (zip.GetEntry(BackupManifest.Name) is not { } told || told.Length > MostParts * 300L)
        {
            throw new InvalidDataException($"it has no {BackupManifest.Name} of a backup");
        }

        using var text = new MemoryStream();
        return Unpack(told, told.Length, piece => text.Write(piece))
            ? BackupManifest.Parse(text.ToArray())
            : throw new InvalidDataException($"{BackupManifest.Name} is not as long as it says");
    }

    /// <summary>Unpacks so many bytes and no more, whatever the zip says of itself. False: there were more, or fewer.</summary>
    private static bool Unpack(ZipArchiveEntry entry, long bytes, Action<ReadOnlySpan<byte>> take)
    {
        using var from = entry.Open();
        var piece = new byte[1 << 16];
        while (from.Read(piece) is var count and > 0)
        {
            bytes -= count;
            if (bytes < 0)
            {
                return false;
            }

            take(piece.AsSpan(0, count));
        }

        return bytes == 0;
    }

    private static BackupException Damaged(string path, string what, Exception? inner = null) => new(
        $"The backup {path} is refused: {what}. Nothing was written. Use an older backup. If there is none, and you know that this one is yours, unpack it into a folder with any zip program, and save what is good with: closeout --book THATFOLDER check --repair --out NEWFOLDER",
        inner);

    private static BackupException Foreign(string path, string what, Exception inner) =>
        new($"The backup {path} is refused: {what}. Nothing was written. Use another backup.", inner);
}
