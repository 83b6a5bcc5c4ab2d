using System.IO.Compression;

namespace Closeout.Store;

/// <summary>What lies in the zip of a backup, held to what a backup may hold before anything is unpacked.</summary>
internal static class BackupParts
{
    /// <summary>More than a page a day for five centuries.</summary>
    private const int MostParts = 200_000;

    /// <summary>How many times its own size a backup may be when unpacked, beyond <see cref="AnySize"/>. Pages come to about ten.</summary>
    private const long MostGrowth = 200;

    private const long AnySize = 16L << 20;

    /// <summary>Of the list for each part, in bytes: its name and its checksum have 64 characters each.</summary>
    private const long LineBytes = 300;

    /// <param name="size">Bytes of the backup.</param>
    /// <exception cref="InvalidDataException">It holds something else, or too much.</exception>
    public static (BackupManifest Manifest, IReadOnlyDictionary<string, ZipArchiveEntry> Entries) Of(ZipArchive zip, long size)
    {
        if (zip.Entries.Count > MostParts)
            throw new InvalidDataException($"it has {zip.Entries.Count} files, and {MostParts} are allowed");

        var manifest = ManifestIn(zip);
        var entries = new Dictionary<string, ZipArchiveEntry>(StringComparer.Ordinal);
        foreach (var entry in zip.Entries)
        {
            if (entry.FullName != BackupManifest.Name && !BackupManifest.IsPart(entry.FullName))
                throw new InvalidDataException($"it holds \"{Harmless.Line(entry.FullName)}\", which is no part of a book");

            if (!entries.TryAdd(entry.FullName, entry))
                throw new InvalidDataException($"it holds {entry.FullName} twice");
        }

        entries.Remove(BackupManifest.Name);
        if (!manifest.Parts.Select(p => p.Name).ToHashSet().SetEquals(entries.Keys) || manifest.Parts.Count != entries.Count)
            throw new InvalidDataException($"its files are not those that {BackupManifest.Name} lists");

        foreach (var part in manifest.Parts)
        {
            var (length, most) = (entries[part.Name].Length, BackupManifest.MostBytes(part.Name));
            if (part.Bytes > most || length != part.Bytes)
            {
                throw new InvalidDataException(
                    $"{part.Name} has {length} bytes; {BackupManifest.Name} says {part.Bytes}, and {most} are allowed");
            }
        }

        return manifest.Bytes <= AnySize + (size * MostGrowth)
            ? (manifest, entries)
            : throw new InvalidDataException($"it would unpack to {manifest.Bytes} bytes, and has {size}: no book does that");
    }

    public static BackupManifest ManifestIn(ZipArchive zip)
    {
        if (zip.GetEntry(BackupManifest.Name) is not { } told || told.Length > MostParts * LineBytes)
            throw new InvalidDataException($"it has no {BackupManifest.Name} of a backup");

        using var text = new MemoryStream();
        return Unpack(told, told.Length, piece => text.Write(piece))
            ? BackupManifest.Parse(text.ToArray())
            : throw new InvalidDataException($"{BackupManifest.Name} is not as long as it says");
    }

    /// <summary>Unpacks so many bytes and no more, whatever the zip says of itself. False: there were more, or fewer.</summary>
    public static bool Unpack(ZipArchiveEntry entry, long bytes, Action<ReadOnlySpan<byte>> take)
    {
        using var from = entry.Open();
        var piece = new byte[1 << 16];
        while (bytes >= 0 && from.Read(piece) is var count and > 0)
        {
            bytes -= count;
            take(piece.AsSpan(0, bytes < 0 ? 0 : count));
        }

        return bytes == 0;
    }
}
