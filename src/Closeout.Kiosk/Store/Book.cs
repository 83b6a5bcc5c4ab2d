using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>The open page of a book: what it folds to, and the way to append to it.</summary>
/// <remarks>Append first, fold second: what the screen shows is on disk. One book object is used by one thread at a time.</remarks>
public sealed class Book
{
    private readonly BookFolder folder;
    private readonly string first;
    private PageMark mark;
    private byte[] torn;

    /// <param name="first">The sha of the book's first line: what makes it this book.</param>
    private Book(BookFolder folder, DateOnly date, Depot depot, PageRead read, string first)
    {
        (this.folder, Date, Depot, mark, torn, this.first) = (folder, date, depot, read.Mark, read.Torn, first);
    }

    /// <summary>The business date of the page.</summary>
    public DateOnly Date { get; private set; }

    /// <summary>The depot by all entries read so far.</summary>
    public Depot Depot { get; private set; }

    /// <summary>What was found torn and set aside since the book was opened; empty: nothing.</summary>
    public string Said { get; private set; } = "";

    /// <summary>The same, told once.</summary>
    public string TakeSaid()
    {
        var told = Said;
        Said = "";
        return told;
    }

    /// <summary>Opens the newest page, or the page of a date, for reading and appending.</summary>
    /// <exception cref="BookException">There is no such page, it cannot be read, or it does not fit the pages beside it.</exception>
    public static Book Open(BookFolder folder, DateOnly? date = null)
    {
        // Before the pages: what other programs append meanwhile is not missing.
        var last = new Archive(folder).LastKnown();
        var dates = folder.Dates;
        if (dates.Count == 0)
        {
            folder.MustBeReadable();
            throw new BookException(last is null
                ? $"There is no book at {folder.Path}. Set one up with: closeout --book {folder.Path} load FOLDER"
                : Gone(folder, last));
        }

        if (last is not null && last.Date > dates[^1])
        {
            throw new BookException($"{folder.Page(last.Date)} is gone: the book has had entry {last.Number} there. {BookException.Remedy}");
        }

        if (date is { } wanted && !dates.Contains(wanted))
        {
            throw new BookException($"The book has no page for {wanted:O}; it has {dates[0]:O} to {dates[^1]:O}. Name one of those dates.");
        }

        var day = date ?? dates[^1];
        var path = folder.Page(day);
        var read = PageReader.Read(path, default);
        if (read.Entries.Count == 0)
        {
            throw new BookException($"{path}:1: the page has no whole line. {BookException.Remedy}");
        }

        var first = read.First!.BookNamed ?? "";
        var fault = PageLinks.Opens(path, day, read) ?? PageLinks.Foreign(path, read, last?.BookSha ?? first) ?? PageLinks.Fault(folder, dates, day, read, last);
        if (fault is not null)
        {
            throw new BookException($"{fault} {BookException.Remedy}");
        }

        return new(folder, day, Folding(path, () => Depot.Fold(read.Entries)), read, first);
    }

    /// <summary>Reads what other programs appended since. True when there was anything.</summary>
    public bool Refresh()
    {
        if (folder.Newest is not { } newest)
        {
            throw new BookException($"The book at {folder.Path} is gone: somebody moved or removed its folder. Put it back, or quit and open another.");
        }

        if (newest > Date)
        {
            var next = Open(folder);
            if (next.first != first)
            {
                throw new BookException($"Another book lies at {folder.Path} now: its first line is not the one that was opened here. Quit and start again; what was confirmed before is in the book that lay there.");
            }

            (Date, Depot, mark, torn) = (next.Date, next.Depot, next.mark, next.torn);
            return true;
        }

        return TakeIn(PageReader.Read(folder.Page(Date), mark));
    }

    private bool TakeIn(PageRead read)
    {
        Depot = Folding(folder.Page(Date), () => read.Entries.Aggregate(Depot, (depot, e) => depot.Apply(e)));
        (mark, torn) = (read.Mark, read.Torn);
        return read.Entries.Count > 0;
    }

    /// <summary>Takes the lock, reads what others wrote, decides on that, appends, flushes, and only then folds.</summary>
    /// <returns>The refusal, or null: it is recorded and on disk.</returns>
    /// <exception cref="BookException">It could not be written: nothing was recorded.</exception>
    public Refusal? Record(Func<Depot, Decision> decide, DateTimeOffset at)
    {
        using var held = BookLock.Take(folder.Lock);
        using var page = ToNewest(held);
        SetTornAside();
        var decision = decide(Depot);
        if (decision.Refusal is { } refusal)
        {
            return refusal;
        }

        var recorded = new Recorded(Depot.Number + 1, at, decision.Entry!);
        var next = Depot.Apply(recorded);
        var (bytes, sha) = PageLine.Write(recorded, mark.Sha!);
        PageReader.MustFit(folder.Page(Date), mark.Offset + bytes.Length);
        Append(page, bytes);
        new LastEntry(recorded.Number, Date, sha, first).Write(folder);
        Depot = next;
        mark = new(mark.Offset + bytes.Length, mark.Lines + 1, recorded.Number, sha);
        return null;
    }

    /// <summary>All entries of the page, as they stand on disk.</summary>
    /// <exception cref="BookException">It cannot be read.</exception>
    public IReadOnlyList<Recorded> Entries() => PageReader.Read(folder.Page(Date), default).Entries;

    /// <summary>Takes the lock, reads what others wrote, and opens the page that follows from it.</summary>
    /// <returns>The refusal; null: this book stands at the new page.</returns>
    /// <exception cref="BookException">It could not be written: nothing was.</exception>
    public Refusal? Turn(Func<Depot, (PageOpened? Page, Refusal? Refusal)> decide, DateTimeOffset at)
    {
        using (var held = BookLock.Take(folder.Lock))
        {
            Refresh();
            SetTornAside();
            var (page, refusal) = decide(Depot);
            if (refusal is not null)
            {
                return refusal;
            }

            try
            {
                WritePage(folder, held, new Recorded(Depot.Number + 1, at, page!), mark.Sha!, first);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new BookException($"The next page cannot be written: {e.Message} The day is not ended; make the folder writable and try again.", e);
            }
        }

        Refresh();
        return null;
    }

    /// <summary>Opens the first page of a new book, or the next page of this one.</summary>
    /// <param name="prev">The book so far; null: a new book.</param>
    public static Book OpenPage(BookFolder folder, Book? prev, PageOpened page, DateTimeOffset at)
    {
        try
        {
            Disk.MakeFolder(folder.Path);
            Disk.MakeFolder(folder.Pages);
            using var held = BookLock.Take(folder.Lock);
            if (prev is null && !folder.HasPages && new Archive(folder).LastKnown() is { } last)
            {
                throw new BookException(Gone(folder, last));
            }

            if (prev is null ? folder.HasPages : prev.Refresh())
            {
                throw new BookException($"The book at {folder.Path} was written by another program meanwhile. Nothing was written; run the same command again.");
            }

            WritePage(folder, held, new Recorded((prev?.Depot.Number ?? 0) + 1, at, page), prev?.mark.Sha ?? PageLine.Nothing, prev?.first);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The book at {folder.Path} cannot be written: {e.Message} Nothing was recorded; make the folder writable and try again.", e);
        }

        return Open(folder);
    }

    /// <param name="first">The sha of the book's first line; null: this is it.</param>
    private static void WritePage(BookFolder folder, BookLock held, Recorded opening, string prev, string? first)
    {
        var date = ((PageOpened)opening.Entry).Date;
        var (bytes, sha) = PageLine.Write(opening, prev, first);
        PageReader.MustFit(folder.Page(date), bytes.Length);
        held.Tell(date);
        Disk.WriteWhole(folder.Page(date), bytes, own: true);
        new LastEntry(opening.Number, date, sha, first ?? sha).Write(folder);
    }

    private static string Gone(BookFolder folder, LastEntry last) =>
        $"The pages of the book at {folder.Path} are gone: it has had entries up to {last.Number}, of {last.Date:O}. {BookException.Remedy}";

    /// <summary>Under the lock: the newest page open for appending, and what others wrote there taken in.</summary>
    private SafeFileHandle ToNewest(BookLock held)
    {
        try
        {
            if (held.Newest != Date)
            {
                Refresh();
                held.Tell(Date);
            }

            var page = PageReader.Open(folder.Page(Date), FileAccess.ReadWrite);
            try
            {
                TakeIn(PageReader.Read(folder.Page(Date), page, mark));
                return page;
            }
            catch
            {
                page.Dispose();
                throw;
            }
        }
        catch (BookException e)
        {
            throw new BookException($"NOT recorded. {e.Message}", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw NotRecorded(e);
        }
    }

    private void Append(SafeFileHandle page, byte[] bytes)
    {
        try
        {
            Disk.Append(page, mark.Offset, bytes);
        }
        catch (HalfWrittenException e)
        {
            throw new BookException($"It is NOT KNOWN whether this was recorded: the disk fails. {e.Message} Quit, start again and look whether it is there before you give it once more.", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw NotRecorded(e);
        }
    }

    private static BookException NotRecorded(Exception e) =>
        new($"NOT recorded, the book cannot be written: {e.Message} Free some room or make the folder writable, then give the answer again.", e);

    /// <summary>A line begun and never ended was never confirmed to anybody. Under the lock nobody is writing it: keep it aside and cut it off.</summary>
    private void SetTornAside()
    {
        if (torn.Length == 0)
        {
            return;
        }

        try
        {
            Disk.MakeFolder(folder.TornLines);
            var name = $"{Date:O}-after-{mark.Number}";
            var aside = Path.Combine(folder.TornLines, name + ".txt");
            for (var more = 2; Path.Exists(aside); more++)
            {
                aside = Path.Combine(folder.TornLines, $"{name}-{more}.txt");
            }

            Disk.WriteWhole(aside, torn, own: true);
            using var file = PageReader.Open(folder.Page(Date), FileAccess.ReadWrite);
            RandomAccess.SetLength(file, mark.Offset);
            RandomAccess.FlushToDisk(file);
            Said = $"A line begun after entry {mark.Number} was never confirmed; it was set aside in {aside}.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"NOT recorded, the book cannot be written: {e.Message}", e);
        }
    }

    private static Depot Folding(string path, Func<Depot> fold)
    {
        try
        {
            return fold();
        }
        catch (Exception e) when (e is InvalidOperationException or OverflowException or ArgumentException)
        {
            throw new BookException($"{path}: an entry is whole but cannot stand in this book: {e.Message}. {BookException.Remedy}", e);
        }
    }
}
