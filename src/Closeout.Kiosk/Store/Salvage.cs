namespace Closeout.Store;

/// <summary>What was saved of a damaged book.</summary>
/// <param name="Said">Every loss and every oddity, a line each.</param>
public sealed record Salvaged(int Kept, int Lost, int Pages, IReadOnlyList<string> Said);

/// <summary>Saves every good entry of a damaged book into a new one. The old one is only read.</summary>
public static class Salvage
{
    /// <param name="from">The damaged book.</param>
    /// <param name="to">Where nothing is.</param>
    /// <exception cref="BookException">Nothing can be saved, or the new book cannot be written; nothing is left behind.</exception>
    public static Salvaged Into(BookFolder from, BookFolder to, DateTimeOffset now)
    {
        try
        {
            var attachments = AttachedFiles.Of(from).ToLookup(f => AttachedFiles.Fault(f) is null);
            var (good, bad) = SalvagedLines.Gather(from);
            var last = LastEntry.Read(from);
            var (seen, unasked) = new Archive(from).Witness();
            var chain = SalvagedChain.Of(good, bad, last, seen is null ? (0, "") : (seen.Number, seen.Sha));
            var book = SalvagedBook.Of(chain, now, attachments[true].Select(f => Path.GetFileName(f)).ToHashSet().Contains);
            if (good.Count == 0 && bad.Count == 0)
                throw new BookException(T($"There is no book at {from.Path}."));

            if (book.Pages.Count == 0)
            {
                throw new BookException(
                    T(
                        $"Nothing of the book at {from.Path} can be saved: no line that opens a page is whole. Bring back the newest "
                            + $"backup with: closeout restore FILE --book NEWFOLDER"));
            }

            using var fresh = new FreshBook(to);
            fresh.Make();
            Write(fresh.Folder, book);
            var left = Copy(from, attachments[true], fresh.Folder);
            if (BookCheck.Of(fresh.Folder).Fault is { } fault)
                throw new InvalidOperationException($"the saved book is not good: {fault}");

            fresh.Keep();
            return new(book.Kept, chain.Entries - book.Kept, book.Pages.Count,
            [
                .. new[] { unasked }.Where(s => s.Length > 0), .. bad.Select(b => b.ToString()), .. chain.Left, .. book.Said,
                .. attachments[false].Select(f => T($"{f}: the attachment is not as it was; left out")), .. left,
            ]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            var then = T("Nothing was written there; name a folder with --out that can be made and has room.");
            throw new BookException(T($"The book at {from.Path} cannot be saved to {to.Path}: {e.Message} {then}"), e);
        }
    }

    private static void Write(BookFolder folder, SalvagedBook book)
    {
        DurableFolder.Make(folder.Pages);
        var (prev, first) = (PageLine.Nothing, (string?)null);
        LastEntry? last = null;
        foreach (var page in book.Pages)
        {
            using var lines = new MemoryStream();
            var date = ((PageOpened)page[0].Entry).Date;
            foreach (var recorded in page)
            {
                var (bytes, sha) = PageLine.Write(recorded, prev, recorded == page[0] ? first : null);
                lines.Write(bytes);
                (prev, first) = (sha, first ?? sha);
                last = new(recorded.Number, date, sha, first);
            }

            Disk.WriteWhole(folder.Page(date), lines.ToArray(), own: true);
        }

        last!.Write(folder);
    }

    /// <summary>Copies the attachments that are whole, the lines set aside and the mark of a rehearsal.</summary>
    /// <returns>What is no plain file, and was left out.</returns>
    private static List<string> Copy(BookFolder from, IEnumerable<string> attachments, BookFolder to)
    {
        var said = new List<string>();
        foreach (var (file, name) in from.Kept(attachments))
        {
            try
            {
                using var source = PlainFile.Open(file, PageFile.MostBytes);
                DurableFolder.Make(Path.GetDirectoryName(Path.Combine(to.Path, name))!);
                Disk.WriteNew(Path.Combine(to.Path, name), source.CopyTo);
            }
            catch (NoPlainFileException e)
            {
                said.Add(T($"{file}: left out: {e.Message}"));
            }
        }

        return said;
    }
}
