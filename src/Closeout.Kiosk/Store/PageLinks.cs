namespace Closeout.Store;

/// <summary>Whether a page fits its neighbours and what the book remembers of its last entry. Each answer is a fault, or null.</summary>
internal static class PageLinks
{
    /// <summary>A page against the ends of those beside it, the newest against what the book remembers: no other page is read.</summary>
    public static string? Fault(BookFolder folder, IReadOnlyList<DateOnly> dates, DateOnly date, PageRead page, LastEntry? last)
    {
        var at = dates.ToList().IndexOf(date);
        var path = folder.Page(date);
        var prev = at == 0 ? null : folder.Page(dates[at - 1]);
        if ((prev is null ? First(path, page) : After(path, page, prev, PageEnds.LastSha(prev))) is { } before)
            return before;

        if (at == dates.Count - 1)
            return last is null ? null : Remembered(path, page, last.Number, last.Sha, T("the book has had them"));

        var next = folder.Page(dates[at + 1]);
        return PageEnds.FirstPrev(next) == page.Mark.Sha
            ? null
            : T(
                $"{path}: the page after it, {next}, does not follow the last line here: lines are missing at the end, a page between is "
                    + $"missing, or one of the two belongs to another book.");
    }

    /// <summary>A page begins by opening its date.</summary>
    public static string? Opens(string path, DateOnly date, PageRead page) => page.Entries[0].Entry is PageOpened o && o.Date == date
        ? null
        : T($"{path}:1: entry {page.Entries[0].Number} does not open the page of {date:O}.");

    /// <summary>The first page of a book.</summary>
    public static string? First(string path, PageRead page) => page.First!.Prev == PageLine.Nothing && page.Entries[0].Number == 1
        ? null
        : T(
            $"{path}:1: entry {page.Entries[0].Number} is not the first of a book: the pages before it are missing, or it belongs to "
                + $"another book.");

    /// <summary>A page after another.</summary>
    /// <param name="lastSha">The last sha of the page before.</param>
    public static string? After(string path, PageRead page, string before, string? lastSha) => page.First!.Prev == lastSha
        ? null
        : T(
            $"{path}:1: entry {page.Entries[0].Number} does not follow the last line of {before}: lines are missing there, a page was "
                + $"changed, or is missing, or this page belongs to another book.");

    /// <summary>A page names the first line of its own book.</summary>
    public static string? Foreign(string path, PageRead page, string book) => page.First!.BookNamed is var named && named == book
        ? null
        : T(
            $"{path}:1: the page belongs to another book: it names {Short(named)} as the checksum of its book's first line, and this "
                + $"book has {Short(book)}.");

    /// <summary>A page against an entry that something beside the pages has seen.</summary>
    /// <param name="who">Who has seen it, for the case that it is missing at the end.</param>
    public static string? Remembered(string path, PageRead page, int number, string sha, string who)
    {
        var (first, last) = (page.Entries[0].Number, page.Mark.Number);
        if (number > last)
        {
            var gone = number == last + 1 ? T($"entry {number} is") : T($"entries {last + 1} to {number} are");
            return T($"{path}: {gone} missing at the end: {who}.");
        }

        return number < first || page.Shas[number - first] == sha
            ? null
            : T(
                $"{path}:{number - first + 1}: entry {number} is not the one that it was: the page was cut and written on, or put in "
                    + $"another's place.");
    }

    private static string Short(string? sha) => sha is { Length: > 8 } ? sha[..8] + "..." : T("nothing");
}
