using System.Security.Cryptography;
using System.Text.RegularExpressions;

namespace Closeout.Store;

/// <summary>
/// Files kept beside the pages, each named by the SHA-256 of its content, in lower-case hex, with or without an ending. What takes
/// them in and gives them out is <see cref="Attachments"/>; here they are only looked after.
/// </summary>
internal static partial class AttachedFiles
{
    /// <summary>The most bytes of an attachment: more than any phone makes of a picture.</summary>
    public const long MostBytes = 20L * 1024 * 1024;

    public static bool IsName(string name) => Name().IsMatch(name);

    /// <summary>The paths of all attachments, by name.</summary>
    public static IReadOnlyList<string> Of(BookFolder folder) => [.. All(folder).Where(IsKept)];

    /// <summary>Files among them that are no attachments: they are neither checked nor backed up.</summary>
    public static IEnumerable<string> Odd(BookFolder folder) =>
        All(folder).Where(f => !IsKept(f)).Select(f => Disk.Odd(f, T("an attachment and is not kept")));

    /// <summary>The first attachment that is not as it was taken; null: all are.</summary>
    public static string? FirstFault(BookFolder folder) => Of(folder).Select(Fault).FirstOrDefault(f => f is not null);

    /// <summary>What is wrong with an attachment, and what to do; null: it is as it was.</summary>
    public static string? Fault(string path)
    {
        try
        {
            using var file = PlainFile.Open(path, MostBytes);
            return Fits(path, Convert.ToHexStringLower(SHA256.HashData(file))) ? null : BookException.Damaged(
                T($"{path}: the attachment is not as it was: its content does not have the checksum that its name says.")).Message;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return BookException.Damaged(T($"{path}: the attachment cannot be read: {e.Message}")).Message;
        }
    }

    /// <summary>Whether a file of that name may have content of that SHA-256; one that is no attachment may have any.</summary>
    public static bool Fits(string path, string sha) =>
        Path.GetFileName(path) is var name && (!IsName(name) || name.StartsWith(sha, StringComparison.Ordinal));

    private static bool IsKept(string path) => IsName(Path.GetFileName(path)) && !Disk.IsLeftover(path);

    private static IReadOnlyList<string> All(BookFolder folder) => BookException.Telling<IReadOnlyList<string>>(
        () => Directory.Exists(folder.Files) ? [.. Directory.EnumerateFiles(folder.Files).Order(StringComparer.Ordinal)] : [],
        e => T($"The attachments at {folder.Files} cannot be listed: {e.Message} Make the folder readable and try again."));

    [GeneratedRegex("\\A[0-9a-f]{64}(\\.[a-z0-9]{1,8})?\\z")]
    private static partial Regex Name();
}
