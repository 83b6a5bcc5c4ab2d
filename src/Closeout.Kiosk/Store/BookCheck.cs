namespace Closeout.Store;

/// <summary>What a check of a whole book found.</summary>
/// <param name="Fault">The first thing that is wrong, and what to do; null: the book is good.</param>
/// <param name="BookSha">The sha of its first line.</param>
/// <param name="Last">The end of its last page.</param>
/// <param name="Notes">What is odd and no fault.</param>
public sealed record BookChecked(string? Fault, int Pages, int Entries, string BookSha, PageMark Last, IReadOnlyList<string> Notes);

/// <summary>An entry that something beside the pages has seen.</summary>
/// <param name="Who">Who has seen it, for the case that it is missing.</param>
internal sealed record Witness(int Number, string Sha, string Who)
{
    public static IEnumerable<Witness> Of(LastEntry? entry, string who) => entry is null ? [] : [new(entry.Number, entry.Sha, who)];
}

/// <summary>Every page of a book read line by line, folded, and held to the page before and to what bears witness.</summary>
public static class BookCheck
{
    /// <summary>The whole book in a folder, its attachments too. Takes no lock: what others append meanwhile is no fault.</summary>
    /// <param name="told">Is told before each page how many were read, and of how many.</param>
    public static BookChecked Of(BookFolder folder, Action<int, int>? told = null)
    {
        // Before the pages: they may only be behind.
        var last = LastEntry.Read(folder);
        var (seen, unasked) = new Archive(folder).Witness();
        var dates = folder.Dates;
        if (dates.Count == 0)
        {
            throw last is null
                ? new BookException(T($"There is no book at {folder.Path}."))
                : BookException.Damaged(T($"The pages of the book at {folder.Path} are gone: it has had entries up to {last.Number}."));
        }

        var found = Pages(
            dates.Select((date, done) =>
            {
                told?.Invoke(done, dates.Count);
                return (date, folder.Page(date), PageReader.Read(folder.Page(date), default));
            }),
            [.. Witness.Of(last, T("the book has had them")), .. Witness.Of(seen, T("the archive has seen them"))],
            last?.BookSha,
            sha => File.Exists(Path.Combine(folder.Files, sha)));
        var odd = AttachedFiles.Odd(folder).Concat(folder.OddPages.Select(p => Disk.Odd(p, T("a page and is not read"))));
        return found with
        {
            Fault = found.Fault ?? AttachedFiles.FirstFault(folder),
            Notes = [.. found.Notes, .. new[] { unasked }.Where(u => u.Length > 0), .. odd],
        };
    }

    /// <summary>Pages in the order of their dates, from wherever they are read.</summary>
    /// <param name="book">The sha of the book's first line, where it is known; null: the first page says it.</param>
    /// <param name="isThere">Whether there is an attachment of that SHA-256.</param>
    internal static BookChecked Pages(
        IEnumerable<(DateOnly Date, string Path, PageRead Page)> all, IReadOnlyList<Witness> seen, string? book, Func<string, bool> isThere)
    {
        var (count, notes, fault) = (0, new List<string>(), (string?)null);
        (string Path, PageRead Page, Depot Depot)? before = null;
        string? Next(DateOnly date, string path, PageRead page)
        {
            if (page.Entries.Count == 0)
                return T($"{path}:1: the page has no whole line.");

            book ??= page.Shas[0];
            var odd = PageLinks.Foreign(path, page, book)
                ?? PageLinks.Opens(path, date, page)
                ?? (before is { } b
                    ? PageLinks.After(path, page, b.Path, b.Page.Mark.Sha) ?? Follows(path, page, b.Depot)
                    : PageLinks.First(path, page))
                ?? Remembered(path, page, seen.Where(w => w.Number <= page.Mark.Number));
            if (odd is not null)
                return odd;

            before = (path, page, page.Fold(path));
            count++;
            if (page.Torn.Length > 0)
                notes.Add(T($"{path}: a line begun after entry {page.Mark.Number} was never confirmed; the next entry sets it aside."));

            return Ledger(path, before.Value.Depot) ?? Pictures(path, page, isThere);
        }

        try
        {
            fault = all.Select(p => Next(p.Date, p.Path, p.Page)).FirstOrDefault(f => f is not null);
            fault ??= before is { } last ? Remembered(last.Path, last.Page, seen.Where(w => w.Number > last.Page.Mark.Number)) : null;
            fault = fault is null ? null : BookException.Damaged(fault).Message;
        }
        catch (BookException e) when (e is not BackupException)
        {
            fault = e.Message;
        }

        var mark = before?.Page.Mark ?? default;
        return new(fault, count, mark.Number, book ?? "", mark, notes);
    }

    private static string? Remembered(string path, PageRead page, IEnumerable<Witness> seen) =>
        seen.Select(w => PageLinks.Remembered(path, page, w.Number, w.Sha, w.Who)).FirstOrDefault(f => f is not null);

    private static string? Follows(string path, PageRead page, Depot before)
    {
        var (number, opened) = (page.Entries[0].Number, (PageOpened)page.Entries[0].Entry);
        return number != before.Number + 1
            ? T($"{path}:1: entry {number} follows entry {before.Number} of the page before: there is a hole.")
            : before.Stock.Ledger.Balances.ToHashSet().SetEquals(opened.Carried.Balances) ? null
            : T($"{path}:1: the balances carried forward are not those that the page before ended with.");
    }

    private static string? Pictures(string path, PageRead page, Func<string, bool> isThere) => page.Entries.Index()
        .Select(e => e.Item.Entry is PhotoAttached photo && !isThere(photo.Sha256)
            ? T($"{path}:{e.Index + 1}: entry {e.Item.Number} attached {photo.Sha256}, and there is no such file.")
            : null)
        .FirstOrDefault(f => f is not null);

    private static string? Ledger(string path, Depot depot)
    {
        var unbalanced = depot.Stock.Ledger.Unbalanced
            .Select(u => T($"{path}: the ledger does not balance: the units of {u.Item} over all places sum to {u.Sum}, not 0."));
        var below = depot.Stock.Ledger.BelowZero.Select(b => T($"{path}: {b.Place} holds {b.Units} of {b.Item}: less than nothing."));
        return unbalanced.Concat(below).FirstOrDefault();
    }
}
