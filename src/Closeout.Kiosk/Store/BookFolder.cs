using System.Globalization;

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

    /// <summary>Where attachments lie, each named by the SHA-256 of its bytes.</summary>
    public string Files => System.IO.Path.Combine(Path, "files");

    /// <summary>Where kiosks say which van they walk.</summary>
    public string Seats => System.IO.Path.Combine(Path, "seats");

    /// <summary>Where pictures may be put for the kiosk to attach, from a card reader or a shared folder.</summary>
    public string Inbox => System.IO.Path.Combine(Path, "inbox");

    /// <summary>Makes a folder that only its owner may look into, where the system knows such folders.</summary>
    public static void MakePrivate(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
            return;
        }

        Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    public string Page(DateOnly date) => System.IO.Path.Combine(Pages, date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + ".jsonl");

    public bool HasPages => Dates.Count > 0;

    /// <summary>The business dates of all pages, the oldest first.</summary>
    public IReadOnlyList<DateOnly> Dates => Directory.Exists(Pages)
        ? [.. Directory.EnumerateFiles(Pages, "*.jsonl")
            .Select(f => DateOnly.TryParseExact(System.IO.Path.GetFileNameWithoutExtension(f), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : (DateOnly?)null)
            .OfType<DateOnly>()
            .Order()]
        : [];
}

/// <summary>The book cannot be used now: in use, unreadable, not writable, or damaged. Nothing was written. The message says what to do.</summary>
public sealed class BookException(string message, Exception? inner = null) : Exception(message, inner);
