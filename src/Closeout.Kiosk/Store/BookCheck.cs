using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Store;

/// <summary>What a check of a whole book found.</summary>
/// <param name="Fault">The first thing that is wrong, and what to do; null: the book is good.</param>
/// <param name="BookSha">The sha of its first line.</param>
/// <param name="Last">The end of its last page.</param>
/// <param name="Notes">What is odd and no fault.</param>
public sealed record BookChecked(string? Fault, int Pages, int Entries, string BookSha, PageMark Last, IReadOnlyList<string> Notes);

/// <summary>An entry that something beside the pages has seen.</summary>
/// <param name="Who">Who has seen it, for the case that it is missing.</param>
internal sealed record Witness(int Number, string Sha, string Who);

/// <summary>Every page of a book read line by line, folded, and compared with the page before and with what bears witness beside the pages.</summary>
public static class BookCheck
{
    /// <summary>The whole book in a folder, its attachments too. Takes no lock: what others append meanwhile is read or not, and no fault.</summary>
    public static BookChecked Of(BookFolder folder)
    {
        // Before the pages: they may only be behind.
        var last = LastEntry.Read(folder);
        var witnesses = new List<Witness>();
        if (last is not null)
        {
            witnesses.Add(new(last.Number, last.Sha, "the book has had them"));
        }

        var (seen, unasked) = new Archive(folder).Witness();
        if (seen is not null)
        {
            witnesses.Add(new(seen.Number, seen.Sha, "the archive has seen them"));
        }

        var dates = folder.Dates;
        if (dates.Count == 0)
        {
            throw new BookException(last is null ? $"There is no book at {folder.Path}." : $"The pages of the book at {folder.Path} are gone: it has had entries up to {last.Number}. {BookException.Remedy}");
        }

        var found = Pages(dates.Select(d => (d, folder.Page(d), PageReader.Read(folder.Page(d), default))), witnesses, last?.BookSha, sha => File.Exists(Path.Combine(folder.Files, sha)));
        return found with
        {
            Fault = found.Fault ?? AttachedFiles.FirstFault(folder),
            Notes = [.. found.Notes, .. unasked.Length > 0 ? new[] { unasked } : [], .. AttachedFiles.Odd(folder), .. folder.OddPages.Select(p => Disk.IsLeftover(p) ? Disk.Leftover(p) : $"{p} has not the name of a page and is not read.")],
        };
    }

    /// <summary>Pages in the order of their dates, from wherever they are read.</summary>
    /// <param name="book">The sha of the book's first line, where it is known; null: the first page says it.</param>
    /// <param name="isThere">Whether there is an attachment of that SHA-256.</param>
    internal static BookChecked Pages(IEnumerable<(DateOnly Date, string Path, PageRead Page)> pages, IReadOnlyList<Witness> witnesses, string? book, Func<string, bool> isThere)
    {
        var (count, entries, notes, mark) = (0, 0, new List<string>(), default(PageMark));
        (string Path, Depot Depot, PageRead Page)? before = null;
        string? Next(DateOnly date, string path, PageRead page)
        {
            if (page.Entries.Count == 0)
            {
                return $"{path}:1: the page has no whole line.";
            }

            book ??= page.Shas[0];
            if (Faults(path, date, page, before, book, witnesses) is { } fault)
            {
                return fault;
            }

            var depot = page.Fold(path);
            if (page.Torn.Length > 0)
            {
                notes.Add($"{path}: a line begun after entry {page.Mark.Number} was never confirmed; the next entry sets it aside.");
            }

            (before, mark, count, entries) = ((path, depot, page), page.Mark, count + 1, page.Mark.Number);
            return Ledger(path, depot) ?? Pictures(path, page, isThere);
        }

        string? said = null;
        try
        {
            foreach (var (date, path, page) in pages)
            {
                if (Next(date, path, page) is { } fault)
                {
                    said = $"{fault} {BookException.Remedy}";
                    break;
                }
            }

            if (said is null && before is { } newest)
            {
                said = witnesses.Where(w => w.Number > entries).Select(w => PageLinks.Remembered(newest.Path, newest.Page, w.Number, w.Sha, w.Who) + " " + BookException.Remedy).FirstOrDefault();
            }
        }
        catch (BookException e) when (e is not BackupException)
        {
            said = e.Message;
        }

        return new(said, count, entries, book ?? "", mark, notes);
    }

    private static string? Faults(string path, DateOnly date, PageRead page, (string Path, Depot Depot, PageRead Page)? before, string book, IReadOnlyList<Witness> witnesses) =>
        PageLinks.Foreign(path, page, book)
        ?? PageLinks.Opens(path, date, page)
        ?? (before is { } b ? PageLinks.After(path, page, b.Path, b.Page.Mark.Sha) ?? Follows(path, page, b.Depot) : PageLinks.First(path, page))
        ?? witnesses.Where(w => w.Number <= page.Mark.Number).Select(w => PageLinks.Remembered(path, page, w.Number, w.Sha, w.Who)).FirstOrDefault(f => f is not null);

    private static string? Follows(string path, PageRead page, Depot before)
    {
        if (page.Entries[0].Number != before.Number + 1)
        {
            return $"{path}:1: entry {page.Entries[0].Number} follows entry {before.Number} of the page before: there is a hole.";
        }

        return before.Ledger.Balances.ToHashSet().SetEquals(((PageOpened)page.Entries[0].Entry).Carried.Balances)
            ? null
            : $"{path}:1: the balances carried forward are not those that the page before ended with.";
    }

    private static string? Pictures(string path, PageRead page, Func<string, bool> isThere) =>
        page.Entries.Index().FirstOrDefault(e => e.Item.Entry is PhotoAttached p && !isThere(p.Sha256)) is { Item: { Entry: PhotoAttached photo } recorded } gone
            ? $"{path}:{gone.Index + 1}: entry {recorded.Number} attached {photo.Sha256}, and there is no such file."
            : null;

    private static string? Ledger(string path, Depot depot)
    {
        foreach (var (item, sum) in depot.Ledger.Unbalanced)
        {
            return $"{path}: the ledger does not balance: the units of {item} over all places sum to {sum}, not 0.";
        }

        foreach (var below in depot.Ledger.BelowZero)
        {
            return $"{path}: {below.Place} holds {below.Units} of {below.Item}: less than nothing.";
        }

        return null;
    }
}
