using System.IO.Compression;
using System.Security.Cryptography;

namespace Closeout.Store;

/// <summary>Adds files to a zip and keeps their checksums.</summary>
internal sealed class BackupPacking(ZipArchive zip, DateTimeOffset made)
{
    private readonly List<BackupPart> parts = [];

    public IReadOnlyList<BackupPart> Parts => parts;

    /// <returns>The SHA-256 of what was read.</returns>
    public string Add(string name, Stream from)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = Stamp;

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
    private DateTimeOffset Stamp => made.Year < 1980 ? new(1980, 1, 1, 0, 0, 0, made.Offset)
        : made.Year > 2107 ? new(2107, 12, 31, 0, 0, 0, made.Offset)
        : made;
}
