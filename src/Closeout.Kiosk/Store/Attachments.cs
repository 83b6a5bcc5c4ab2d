using System.Security.Cryptography;

namespace Closeout.Store;

/// <summary>Pictures beside the entries: plain files in the book's <c>files</c> folder, each named by the SHA-256 of its bytes.</summary>
/// <remarks>
/// The file is written and flushed before the entry that names it: a crash between the two leaves a file that nobody names, never
/// an entry without its file.
/// </remarks>
public sealed class Attachments(BookFolder folder)
{
    /// <summary>The largest picture, in bytes.</summary>
    public const long MostBytes = AttachedFiles.MostBytes;

    /// <summary>The longest name kept of a picture, in characters.</summary>
    private const int MostName = 80;

    /// <summary>A picture taken in.</summary>
    /// <param name="Sha256">Lower-case hex.</param>
    public sealed record Taken(string Sha256, string Name, long Bytes);

    /// <summary>Where pictures may be put for the kiosk.</summary>
    public string Inbox => folder.Inbox;

    /// <summary>The pictures at a path: the file itself, or those of a folder, by name.</summary>
    /// <exception cref="BookException">There is nothing, or it cannot be read.</exception>
    public static IReadOnlyList<string> At(string path)
    {
        var found = BookException.Telling<IReadOnlyList<string>>(
            () => !Directory.Exists(path) ? File.Exists(path) ? [path] : []
                : [.. Directory.EnumerateFiles(path).Where(IsPicture).Order(StringComparer.Ordinal)],
            e => T($"{path} cannot be read: {e.Message} Nothing was attached; try another file."));
        return found.Count > 0
            ? found
            : throw new BookException(
                T(
                    $"There is no photo at {path}: 0 files found, allowed are JPEG, PNG, WebP and HEIC. Type the name of a photo, or of "
                        + $"a folder with photos."));
    }

    /// <summary>Copies a picture into the book, byte for byte. The same bytes again are the same file.</summary>
    /// <exception cref="BookException">It is none, too large, or cannot be read or written. Nothing was attached.</exception>
    public Taken Take(string path) => BookException.Telling(
        () =>
        {
            using var file = PlainFile.Open(path);
            var length = file.Length;
            if (length is 0 or > MostBytes)
            {
                throw new BookException(T($"{path} has {length} bytes") + (length == 0
                    ? T(": it is empty, or still being copied. Nothing was attached; wait, or take the photo again.")
                    : T($", and {MostBytes} are the most. Nothing was attached; make the photo smaller.")));
            }

            var bytes = new byte[length];
            file.ReadExactly(bytes);
            if (!IsPicture(bytes))
                throw new BookException(T($"{path} is not a photo: allowed are JPEG, PNG, WebP and HEIC. Nothing was attached."));

            var sha = Convert.ToHexStringLower(SHA256.HashData(bytes));
            if (AttachedFiles.Fault(Place(sha)) is not null)
            {
                DurableFolder.Make(folder.Files);
                Disk.WriteWhole(Place(sha), bytes, own: true);
            }

            return new Taken(sha, Kept(Path.GetFileName(path)), bytes.Length);
        },
        e => T($"{path} cannot be attached: {e.Message} Nothing was recorded; try again."));

    /// <summary>The bytes of a picture.</summary>
    /// <exception cref="BookException">The file is missing, or is not as it was taken.</exception>
    public byte[] Read(string sha)
    {
        var bytes = BookException.Telling(
            () => PlainFile.Read(Place(sha), MostBytes), e => T($"{Place(sha)} cannot be read: {e.Message} Restore it from a backup."));
        return Convert.ToHexStringLower(SHA256.HashData(bytes)) == sha
            ? bytes
            : throw new BookException(
                T($"{Place(sha)} is not as it was attached: its checksum does not fit its name. Restore it from a backup."));
    }

    /// <summary>Takes a picture out of the inbox once it is recorded: the next van must not get it too. Elsewhere it stays.</summary>
    /// <returns>Why it could not be taken out, and what to do; empty: it was, or it was none of the inbox.</returns>
    public string Done(string path)
    {
        try
        {
            if (string.Equals(Path.GetDirectoryName(Path.GetFullPath(path)), Path.GetFullPath(folder.Inbox), StringComparison.Ordinal))
                File.Delete(path);

            return "";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A card that is write-protected: the picture is safe in the book all the same.
            return T($"{path} cannot be taken out of the inbox: {e.Message} Take it out by hand, or the next van gets it too.");
        }
    }

    /// <summary>The end of a name, where pictures are told apart; whole characters, and none that would steer a terminal.</summary>
    private static string Kept(string name)
    {
        var end = name.Length > MostName ? name[^MostName..] : name;
        return Harmless.Line(char.IsLowSurrogate(end, 0) ? end[1..] : end);
    }

    private string Place(string sha) => Path.Combine(folder.Files, sha);

    /// <summary>In a folder what is no picture, or no file at all, is passed over.</summary>
    private static bool IsPicture(string path)
    {
        try
        {
            using var file = PlainFile.Open(path);
            var head = new byte[Math.Min(16, file.Length)];
            file.ReadExactly(head);
            return IsPicture(head);
        }
        catch (NoPlainFileException)
        {
            return false;
        }
    }

    /// <summary>Whether the first bytes are those of JPEG, PNG, WebP, HEIC or HEIF. A name proves nothing.</summary>
    private static bool IsPicture(ReadOnlySpan<byte> bytes) => bytes is
        [0xFF, 0xD8, 0xFF, ..]
        or [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A, ..]
        or [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..]
        or [_, _, _, _, (byte)'f', (byte)'t', (byte)'y', (byte)'p', (byte)'h', (byte)'e', (byte)'i' or (byte)'v', ..]
        or [_, _, _, _, (byte)'f', (byte)'t', (byte)'y', (byte)'p', (byte)'m', (byte)'i' or (byte)'s', (byte)'f', (byte)'1', ..];
}
