using System.Globalization;
using System.IO.Enumeration;

namespace Closeout.Store;

/// <summary>Where the parts of a book lie in its folder.</summary>
public sealed record BookFolder(string Path)
{
    /// <summary>The book used when none is named: <c>closeout</c> in the user's application-data folder.</summary>
    public static string Default =>
        System.IO.Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify), "closeout");

    /// <summary>The book in a folder as somebody names it.</summary>
    public static BookFolder At(string path) => new(System.IO.Path.TrimEndingDirectorySeparator(path));

    public string Pages => System.IO.Path.Combine(Path, "pages");

    /// <summary>Stands in a rehearsal's book, whatever else can be read of it.</summary>
    public string RehearsalMark => System.IO.Path.Combine(Path, "rehearsal.txt");

    public string Lock => System.IO.Path.Combine(Path, "lock");

    public string TornLines => System.IO.Path.Combine(Path, "torn");

    public string Archive => System.IO.Path.Combine(Path, "archive");

    public string Page(DateOnly date) => System.IO.Path.Combine(Pages, date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + ".jsonl");

    public bool HasPages => Newest is not null;

    /// <summary>The business date of the newest page; null: there is none. It is asked before each entry, so no list is made of years of pages.</summary>
    public DateOnly? Newest
    {
        get
        {
            DateOnly? newest = null;
            foreach (var date in Found)
            {
                newest = newest > date ? newest : date;
            }

            return newest;
        }
    }

    /// <summary>The business dates of all pages, the oldest first.</summary>
    public IReadOnlyList<DateOnly> Dates => [.. Found.Order()];

    /// <summary>Without these a folder that may not be read counts as an empty one.</summary>
    private static readonly EnumerationOptions Everything = new() { AttributesToSkip = FileAttributes.None, IgnoreInaccessible = false };

    private IEnumerable<DateOnly> Found => Directory.Exists(Pages)
        ? new FileSystemEnumerable<DateOnly>(Pages, (ref FileSystemEntry file) => IsPage(file.FileName, out var date) ? date : default, Everything)
        {
            ShouldIncludePredicate = (ref FileSystemEntry file) => !file.IsDirectory && IsPage(file.FileName, out _),
        }
        : [];

    private static bool IsPage(ReadOnlySpan<char> name, out DateOnly date)
    {
        date = default;
        return name.EndsWith(".jsonl", StringComparison.Ordinal)
            && DateOnly.TryParseExact(name[..^".jsonl".Length], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date);
    }
}

/// <summary>The book cannot be used now: in use, unreadable, not writable, or damaged. Nothing was written. The message says what to do.</summary>
public sealed class BookException(string message, Exception? inner = null) : Exception(message, inner);
