using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Closeout.Store;

/// <summary>One file of a backup, the bytes it has when unpacked, and their SHA-256.</summary>
public sealed record BackupPart(string Name, long Bytes, string Sha);

/// <summary>What a backup says it holds, in its <c>backup.txt</c>.</summary>
/// <param name="BookSha">The sha of the book's first line.</param>
/// <param name="Entries">The number of the last entry.</param>
public sealed partial record BackupManifest(DateTimeOffset Made, string BookSha, int Entries, IReadOnlyList<BackupPart> Parts)
{
    public const string Name = "backup.txt";

    /// <summary>Raised when a program that knows only the number before could not restore what is in it.</summary>
    private const int Version = 1;

    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fffzzz";

    /// <summary>Bytes of all parts together.</summary>
    public long Bytes => Parts.Sum(p => p.Bytes);

    /// <summary>Its business dates, the oldest first.</summary>
    public IReadOnlyList<DateOnly> Pages => [.. Parts.Where(p => p.Name.StartsWith("pages/", StringComparison.Ordinal)).Select(p => BookFolder.DateOf(p.Name)).OfType<DateOnly>().Order()];

    public string Text
    {
        get
        {
            var text = new StringBuilder();
            text.Append(CultureInfo.InvariantCulture, $"closeout backup {Version}\nmade {Made.ToString(TimeFormat, CultureInfo.InvariantCulture)}\nbook {BookSha}\nentries {Entries}\n");
            foreach (var part in Parts)
            {
                text.Append(CultureInfo.InvariantCulture, $"file {part.Bytes} {part.Sha} {part.Name}\n");
            }

            return text.ToString();
        }
    }

    /// <exception cref="FormatException">It is not such a text, or one of a newer version; the message says which.</exception>
    public static BackupManifest Parse(string text)
    {
        if (Begin().Match(text) is not { Success: true } begin)
        {
            throw new FormatException($"{Name} is not that of a backup");
        }

        if (begin.Groups["version"].Value != Version.ToString(CultureInfo.InvariantCulture))
        {
            throw new FormatException($"it is of version {begin.Groups["version"].Value}, and this program knows version {Version}: restore it with the version that made it, or a newer one");
        }

        if (Whole().Match(text) is not { Success: true } whole
            || !DateTimeOffset.TryParseExact(whole.Groups["made"].Value, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var made)
            || !int.TryParse(whole.Groups["entries"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var entries))
        {
            throw new FormatException($"{Name} is not as such a file is written");
        }

        return new(made, whole.Groups["book"].Value, entries, [.. File().Matches(whole.Groups["files"].Value).Select(f => new BackupPart(
            f.Groups["name"].Value,
            long.TryParse(f.Groups["bytes"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var bytes) ? bytes : long.MaxValue,
            f.Groups["sha"].Value))]);
    }

    /// <summary>The most bytes of a part.</summary>
    public static long MostBytes(string name) => name.Split('/') switch
    {
        ["files", _] => AttachedFiles.MostBytes,
        ["pages" or "torn", _] => PageReader.MostBytes,
        _ => BookFolder.MostText,
    };

    /// <summary>Whether a file of that name may be in a backup: nothing but a book's own parts, and never a path out of its folder.</summary>
    public static bool IsPart(string name) => name == "rehearsal.txt"
        || (name.StartsWith("pages/", StringComparison.Ordinal) && name == "pages/" + Path.GetFileName(name) && BookFolder.DateOf(name) is not null)
        || (name.StartsWith("files/", StringComparison.Ordinal) && AttachedFiles.IsName(name["files/".Length..]))
        || Torn().IsMatch(name);

    [GeneratedRegex("\\Acloseout backup (?<version>[0-9]{1,9})\n")]
    private static partial Regex Begin();

    [GeneratedRegex("\\Acloseout backup 1\nmade (?<made>[^\n]+)\nbook (?<book>[0-9a-f]{64})\nentries (?<entries>[0-9]{1,10})\n(?<files>(file [0-9]{1,19} [0-9a-f]{64} [^\n]+\n)*)\\z")]
    private static partial Regex Whole();

    [GeneratedRegex("^file (?<bytes>[0-9]+) (?<sha>[0-9a-f]{64}) (?<name>[^\n]+)$", RegexOptions.Multiline)]
    private static partial Regex File();

    [GeneratedRegex("\\Atorn/[0-9]{4}-[0-9]{2}-[0-9]{2}-after-[0-9]{1,10}(-[0-9]{1,9})?\\.txt\\z")]
    private static partial Regex Torn();
}
