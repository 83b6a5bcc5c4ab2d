using System.IO.Compression;
using System.Security.Cryptography;

namespace Closeout.Store;

/// <summary>A backup opened for reading: its seal fits, and every name, number and size in it is one that a backup may have.</summary>
public sealed class BackupFile : IDisposable
{
    /// <summary>The most bytes of a backup, which is read whole for its checksum.</summary>
    private const long MostBytes = 1L << 40;

    private readonly string path;
    private readonly ZipArchive zip;
    private readonly IReadOnlyDictionary<string, ZipArchiveEntry> entries;

    private BackupFile(string path, ZipArchive zip, long size)
    {
        (this.path, this.zip) = (path, zip);
        (Manifest, entries) = BackupParts.Of(zip, size);
    }

    public BackupManifest Manifest { get; }

    /// <exception cref="BackupException">It is no whole backup; the message says what to do.</exception>
    public static BackupFile Open(string path)
    {
        FileStream? file = null;
        try
        {
            file = PlainFile.Open(path, MostBytes);
            return BackupSeal.Fits(file)
                ? new(path, new ZipArchive(file, ZipArchiveMode.Read), file.Length)
                : throw Damaged(path, T("the checksum at its end does not fit: it was damaged or cut, or is no backup of this program"));
        }
        catch (Exception e) when (e is BackupException or IOException or UnauthorizedAccessException || IsForeign(e))
        {
            file?.Dispose();
            throw e switch
            {
                FileNotFoundException or DirectoryNotFoundException => new BackupException(T($"There is no backup {path}."), e),
                IOException or UnauthorizedAccessException => new BackupException(T($"The backup {path} cannot be read: {e.Message}"), e),
                BackupException refused => refused,
                _ => new BackupException(
                    T($"The backup {path} is refused: {e.Message.TrimEnd('.')}. Nothing was written. Use another backup."), e),
            };
        }
    }

    /// <summary>What it says of itself, no checksum compared: enough to tell whose it is and how much it holds. Null: nothing.</summary>
    public static BackupManifest? Told(string path)
    {
        try
        {
            using var file = PlainFile.Open(path, MostBytes);
            using var zip = new ZipArchive(file, ZipArchiveMode.Read);
            return BackupParts.ManifestIn(zip);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException || IsForeign(e))
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
            var whole = BackupParts.Unpack(entries[part.Name], part.Bytes, piece =>
            {
                hash.AppendData(piece);
                to.Write(piece);
            });
            if (!whole || Convert.ToHexStringLower(hash.GetHashAndReset()) != part.Sha)
                throw Damaged(path, T($"{part.Name} in it is not as it was: its checksum does not fit"));
        }
        catch (Exception e) when (e is InvalidDataException or NotSupportedException)
        {
            throw Damaged(path, T($"{part.Name} in it cannot be unpacked: {e.Message.TrimEnd('.')}"), e);
        }
    }

    public void Dispose() => zip.Dispose();

    /// <summary>What a file that is no backup makes the readers of zips and of JSON say.</summary>
    private static bool IsForeign(Exception e) =>
        e is InvalidDataException or FormatException or NotSupportedException or ArgumentException or OverflowException;

    private static BackupException Damaged(string path, string what, Exception? inner = null) => new(
        T(
            $"The backup {path} is refused: {what}. Nothing was written. Use an older backup. If there is none, and you know that this "
                + $"one is yours, unpack it into a folder with any zip program, and save what is good with: closeout --book THATFOLDER "
                + $"check --repair --out NEWFOLDER"),
        inner);
}
