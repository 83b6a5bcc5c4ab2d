using System.IO.Enumeration;

namespace Closeout.Store;

/// <summary>Where the parts of a book lie in its folder.</summary>
public sealed record BookFolder(string Path)
{
    /// <summary>The most bytes of what the program notes about a book: last.txt, a seal, who has a seat, the mark of a rehearsal.</summary>
    public const long MostText = 4096;

    private const string PageEnding = ".jsonl";

    /// <summary>The book used when none is named: <c>closeout</c> in the user's application-data folder.</summary>
    public static string Default => System.IO.Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify), "closeout");

    /// <summary>The book in a folder as somebody names it.</summary>
    public static BookFolder At(string path) => new(System.IO.Path.TrimEndingDirectorySeparator(path));

    public string Pages => In("pages");
    public string Lock => In("lock");
    public string TornLines => In("torn");
    public string Archive => In("archive");

    /// <summary>Stands in a rehearsal's book, whatever else can be read of it.</summary>
    public string RehearsalMark => In("rehearsal.txt");

    /// <summary>What the last entry was; see <see cref="LastEntry"/>.</summary>
    public string Last => In("last.txt");

    /// <summary>Where attachments lie, each named by the SHA-256 of its bytes.</summary>
    public string Files => In("files");

    /// <summary>Where the daily backups go unless another folder is named.</summary>
    public string Backups => In("backups");

    /// <summary>Where kiosks say which van they walk.</summary>
    public string Seats => In("seats");

    /// <summary>Where pictures may be put for the kiosk to attach, from a card reader or a shared folder.</summary>
    public string Inbox => In("inbox");

    public string Page(DateOnly date) => System.IO.Path.Combine(Pages, IsoDate.Text(date) + PageEnding);

    public bool HasPages => Newest is not null;

    /// <summary>The business date of the newest page; null: there is none.</summary>
    /// <exception cref="BookException">The folder cannot be listed.</exception>
    public DateOnly? Newest => Found is { Count: > 0 } found ? found.Max() : null;

    /// <summary>The business dates of all pages, the oldest first.</summary>
    public IReadOnlyList<DateOnly> Dates => [.. Found.Order()];

    /// <summary>Files among the pages that are not named like one.</summary>
    public IReadOnlyList<string> OddPages => Directory.Exists(Pages)
        ? [.. Directory.EnumerateFiles(Pages).Where(f => DateOf(f) is null).Order(StringComparer.Ordinal)]
        : [];

    /// <summary>What is kept with the pages: attachments, lines set aside, the mark of a rehearsal; each with its name in a book.</summary>
    public IEnumerable<(string Path, string Name)> Kept(IEnumerable<string> attachments)
    {
        IEnumerable<string> torn = Directory.Exists(TornLines) ? Directory.EnumerateFiles(TornLines).Order(StringComparer.Ordinal) : [];
        return attachments.Concat(torn).Append(RehearsalMark).Where(System.IO.Path.Exists)
            .Select(f => (f, System.IO.Path.GetRelativePath(Path, f).Replace(System.IO.Path.DirectorySeparatorChar, '/')));
    }

    /// <summary>The business date in a page file's name; null: it is not the name of a page.</summary>
    public static DateOnly? DateOf(ReadOnlySpan<char> page) => System.IO.Path.GetFileName(page) is var name
        && name.EndsWith(PageEnding, StringComparison.Ordinal) && IsoDate.Parse(name[..^PageEnding.Length]) is { } date ? date : null;

    /// <summary>The folder of the book inside which a place lies, wherever links lead; null: it lies in none.</summary>
    public static string? Around(string path)
    {
        var at = System.IO.Path.GetDirectoryName(RealPath.Of(path));
        while (at is not null && !new BookFolder(at).HasPages)
            at = System.IO.Path.GetDirectoryName(at);

        return at;
    }

    /// <summary>A folder that may not be looked into seems to hold nothing.</summary>
    /// <exception cref="BookException">It may not be looked into.</exception>
    public void MustBeReadable()
    {
        try
        {
            _ = Directory.EnumerateFileSystemEntries(Path).Any();
        }
        catch (UnauthorizedAccessException e)
        {
            throw new BookException(T($"The book at {Path} cannot be read: {e.Message} Ask whoever owns it, or run this as its owner."), e);
        }
        catch (IOException)
        {
            // There is nothing of that name, which is said elsewhere.
        }
    }

    private string In(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Without these a folder that may not be read counts as an empty one.</summary>
    private static readonly EnumerationOptions Everything = new() { AttributesToSkip = FileAttributes.None, IgnoreInaccessible = false };

    private IReadOnlyList<DateOnly> Found => BookException.Telling<IReadOnlyList<DateOnly>>(
        () => !Directory.Exists(Pages) ? [] :
        [
            .. new FileSystemEnumerable<DateOnly?>(Pages, (ref file) => DateOf(file.FileName), Everything).OfType<DateOnly>(),
        ],
        e => T($"The pages at {Pages} cannot be listed: {e.Message} Make the folder readable and try again."));
}
