using System.Security.Cryptography;
using System.Text.RegularExpressions;

namespace Closeout.Store;

/// <summary>Files kept beside the pages. Each is named by the SHA-256 of its content, in lower-case hex, with or without an ending. What takes them in and gives them out is <see cref="Attachments"/>; here they are only looked after.</summary>
internal static partial class AttachedFiles
{
    public static bool IsName(string name) => Name().IsMatch(name);

    /// <summary>The paths of all attachments, by name.</summary>
    public static IReadOnlyList<string> Of(BookFolder folder) => [.. All(folder).Where(IsKept)];

    /// <summary>Files among them that are no attachments: they are neither checked nor backed up.</summary>
    public static IEnumerable<string> Odd(BookFolder folder) =>
        All(folder).Where(f => !IsKept(f)).Select(f => Disk.IsLeftover(f) ? Disk.Leftover(f) : $"{f} has not the name of an attachment and is not kept.");

    /// <summary>The first attachment whose content is not what its name says; null: all are whole.</summary>
    public static string? FirstFault(BookFolder folder) =>
        Of(folder).FirstOrDefault(f => !IsWhole(f)) is { } bad ? Fault(bad) : null;

    public static string Fault(string path) =>
        $"{path}: the attachment is not as it was, or cannot be read: its content does not have the checksum that its name says. {BookException.Remedy}";

    /// <summary>Whether a file of that name may have content of that SHA-256; one that is no attachment may have any.</summary>
    public static bool Fits(string name, string sha) => !IsName(Path.GetFileName(name)) || Path.GetFileName(name).StartsWith(sha, StringComparison.Ordinal);

    public static bool IsWhole(string path)
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            return Fits(path, Convert.ToHexStringLower(SHA256.HashData(file)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static bool IsKept(string path) => IsName(Path.GetFileName(path)) && !Disk.IsLeftover(path);

    private static IReadOnlyList<string> All(BookFolder folder)
    {
        try
        {
            return Directory.Exists(folder.Files) ? [.. Directory.EnumerateFiles(folder.Files).Order(StringComparer.Ordinal)] : [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The attachments at {folder.Files} cannot be listed: {e.Message} Make the folder readable and try again.", e);
        }
    }

    [GeneratedRegex("^[0-9a-f]{64}(\\.[a-z0-9]{1,8})?$")]
    private static partial Regex Name();
}
