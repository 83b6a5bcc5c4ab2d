namespace Closeout.Store;

/// <summary>A page as far as it was read.</summary>
/// <param name="First">The sha of the book's first line: what makes it this book.</param>
internal sealed record OpenedPage(DateOnly Date, Depot Depot, PageMark Mark, byte[] Torn, string First)
{
    /// <summary>Reads the newest page, or the page of a date, and holds it to the pages beside it.</summary>
    /// <exception cref="BookException">There is no such page, it cannot be read, or it does not fit the pages beside it.</exception>
    public static OpenedPage Of(BookFolder folder, DateOnly? date)
    {
        // Before the pages: what other programs append meanwhile is not missing.
        var last = new Archive(folder).LastKnown();
        var dates = folder.Dates;
        if (dates.Count == 0)
        {
            folder.MustBeReadable();
            throw last is not null ? Gone(folder, last)
                : new BookException(T($"There is no book at {folder.Path}. Set one up with: closeout --book {folder.Path} load FOLDER"));
        }

        if (last is not null && last.Date > dates[^1])
            throw BookException.Damaged(T($"{folder.Page(last.Date)} is gone: the book has had entry {last.Number} there."));

        var day = date ?? dates[^1];
        if (!dates.Contains(day))
            throw new BookException(T($"The book has no page for {day:O}; it has {dates[0]:O} to {dates[^1]:O}. Name one of those dates."));

        var path = folder.Page(day);
        var read = PageReader.Read(path, default);
        if (read.Entries.Count == 0)
            throw BookException.Damaged(T($"{path}:1: the page has no whole line."));

        var first = read.First!.BookNamed ?? "";
        var fault = PageLinks.Opens(path, day, read) ?? PageLinks.Foreign(path, read, last?.BookSha ?? first);
        return (fault ?? PageLinks.Fault(folder, dates, day, read, last)) is { } said
            ? throw BookException.Damaged(said)
            : new(day, read.Fold(path), read.Mark, read.Torn, first);
    }

    /// <summary>With what was read since.</summary>
    public OpenedPage With(string path, PageRead read) => this with { Depot = read.Fold(path, Depot), Mark = read.Mark, Torn = read.Torn };

    /// <summary>Writes a page whole. Under the book's lock.</summary>
    /// <param name="prev">The page before; null: this is the first of the book.</param>
    /// <returns>The mark behind its only line.</returns>
    public static PageMark Write(BookFolder folder, BookLock held, PageOpened opening, DateTimeOffset at, OpenedPage? prev)
    {
        var recorded = new Recorded((prev?.Depot.Number ?? 0) + 1, at, opening);
        var (bytes, sha) = PageLine.Write(recorded, prev?.Mark.Sha ?? PageLine.Nothing, prev?.First);
        PageFile.MustFit(folder.Page(opening.Date), bytes.Length);
        held.Tell(opening.Date);
        Disk.WriteWhole(folder.Page(opening.Date), bytes, own: true);
        new LastEntry(recorded.Number, opening.Date, sha, prev?.First ?? sha).Write(folder);
        return new(bytes.Length, 1, recorded.Number, sha);
    }

    /// <summary>What is told when all pages are gone.</summary>
    public static BookException Gone(BookFolder folder, LastEntry last) => BookException.Damaged(
        T($"The pages of the book at {folder.Path} are gone: it has had entries up to {last.Number}, of {last.Date:O}."));
}
