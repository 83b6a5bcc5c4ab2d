using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>The open page of a book: what it folds to, and the way to append to it.</summary>
/// <remarks>Append first, fold second: what the screen shows is on disk. One book object is used by one thread at a time.</remarks>
public sealed class Book
{
    private readonly BookFolder folder;
    private OpenedPage page;

    private Book(BookFolder folder, OpenedPage page) => (this.folder, this.page) = (folder, page);

    /// <summary>The business date of the page.</summary>
    public DateOnly Date => page.Date;

    /// <summary>The depot by all entries read so far.</summary>
    public Depot Depot => page.Depot;

    /// <summary>What was found torn and set aside since the book was opened; empty: nothing.</summary>
    public string Said { get; private set; } = "";

    private string Path => folder.Page(Date);

    /// <summary>The same, told once.</summary>
    public string TakeSaid()
    {
        var told = Said;
        Said = "";
        return told;
    }

    /// <summary>Opens the newest page, or the page of a date, for reading and appending.</summary>
    /// <exception cref="BookException">There is no such page, it cannot be read, or it does not fit the pages beside it.</exception>
    public static Book Open(BookFolder folder, DateOnly? date = null) => new(folder, OpenedPage.Of(folder, date));

    /// <summary>Reads what other programs appended since. True when there was anything.</summary>
    public bool Refresh()
    {
        if (folder.Newest is not { } newest)
        {
            var then = T("somebody moved or removed its folder. Put it back, or quit and open another.");
            throw new BookException(T($"The book at {folder.Path} is gone: {then}"));
        }

        if (newest > Date)
        {
            var next = OpenedPage.Of(folder, null);
            page = next.First == page.First ? next : throw new BookException(
                T(
                    $"Another book lies at {folder.Path} now: its first line is not the one that was opened here. Quit and start again; "
                        + $"what was confirmed before is in the book that lay there."));
            return true;
        }

        return TakeIn(PageReader.Read(Path, page.Mark));
    }

    private bool TakeIn(PageRead read)
    {
        page = page.With(Path, read);
        return read.Entries.Count > 0;
    }

    /// <summary>
    /// Takes the lock, reads what others wrote, decides on that, writes, flushes, and only then folds. An entry that opens a page begins
    /// the next one.
    /// </summary>
    /// <returns>The refusal, or null: it is recorded and on disk.</returns>
    /// <exception cref="BookException">It could not be written: nothing was recorded.</exception>
    public Refusal? Record(Func<Depot, Decision> decide, DateTimeOffset at)
    {
        using var held = BookLock.Take(folder.Lock);
        using var file = ToNewest(held);
        SetTornAside();
        var (entry, refusal) = English(() => decide(Depot));
        if (refusal is not null)
        {
            // What is kept is in English; why nothing is kept is said in the language of whoever asked.
            refusal = decide(Depot).Refusal ?? refusal;
        }

        if (entry is PageOpened opened)
            Turn(held, opened, at);
        else if (entry is not null)
            Append(file, new Recorded(Depot.Number + 1, at, entry));

        return refusal;
    }

    /// <summary>All entries of the page, as they stand on disk.</summary>
    /// <exception cref="BookException">It cannot be read.</exception>
    public IReadOnlyList<Recorded> Entries() => PageReader.Read(Path, default).Entries;

    /// <summary>Opens the first page of a new book.</summary>
    public static Book New(BookFolder folder, PageOpened first, DateTimeOffset at) => BookException.Telling(
        () =>
        {
            DurableFolder.Make(folder.Path);
            DurableFolder.Make(folder.Pages);
            using var held = BookLock.Take(folder.Lock);
            if (folder.HasPages)
            {
                var then = T("Nothing was written; run the same command again.");
                throw new BookException(T($"The book at {folder.Path} was written by another program meanwhile. {then}"));
            }

            if (new Archive(folder).LastKnown() is { } last)
                throw OpenedPage.Gone(folder, last);

            // As with every entry: written first, folded second, and not read again.
            var mark = OpenedPage.Write(folder, held, first, at, prev: null);
            var depot = Depot.Fold([new(mark.Number, at, first)]);
            return new Book(folder, new(first.Date, depot, mark, [], mark.Sha!));
        },
        e => T($"The book at {folder.Path} cannot be written: {e.Message} Nothing was recorded; make the folder writable and try again."));

    /// <summary>Under the lock: the newest page open for appending, and what others wrote there taken in.</summary>
    private SafeFileHandle ToNewest(BookLock held)
    {
        SafeFileHandle? file = null;
        try
        {
            if (held.Newest != Date)
            {
                Refresh();
                held.Tell(Date);
            }

            file = PageFile.Open(Path, FileAccess.ReadWrite);
            TakeIn(PageReader.Read(Path, file, page.Mark));
            return file;
        }
        catch (Exception e) when (e is BookException or IOException or UnauthorizedAccessException)
        {
            file?.Dispose();
            throw e is BookException ? new BookException(T($"NOT recorded. {e.Message}"), e) : NotRecorded(e);
        }
    }

    /// <summary>Writes the next page whole: this one is never written again.</summary>
    private void Turn(BookLock held, PageOpened opened, DateTimeOffset at)
    {
        BookException.Telling(
            () => OpenedPage.Write(folder, held, opened, at, page),
            e => T($"The next page cannot be written: {e.Message} The day is not ended; make the folder writable and try again."));
        Refresh();
    }

    private void Append(SafeFileHandle file, Recorded recorded)
    {
        var next = Depot.Apply(recorded);
        var (bytes, sha) = PageLine.Write(recorded, page.Mark.Sha!);
        PageFile.MustFit(Path, page.Mark.Offset + bytes.Length);
        try
        {
            Disk.Append(file, page.Mark.Offset, bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw e is not HalfWrittenException ? NotRecorded(e) : new BookException(
                T(
                    $"It is NOT KNOWN whether this was recorded: the disk fails. {e.Message} Quit, start again and look whether it is "
                        + $"there before you give it once more."),
                e);
        }

        new LastEntry(recorded.Number, Date, sha, page.First).Write(folder);
        page = page with { Depot = next, Mark = new(page.Mark.Offset + bytes.Length, page.Mark.Lines + 1, recorded.Number, sha) };
    }

    private static BookException NotRecorded(Exception e) => new(
        T($"NOT recorded, the book cannot be written: {e.Message} Free some room or make the folder writable, then give the answer again."),
        e);

    private void SetTornAside()
    {
        if (page.Torn.Length > 0)
        {
            Said = TornLine.SetAside(folder, page);
            page = page with { Torn = [] };
        }
    }
}
