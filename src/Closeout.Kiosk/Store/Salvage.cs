using Closeout.Facts;

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
            var whole = AttachedFiles.Of(from).Where(AttachedFiles.IsWhole).Select(f => Path.GetFileName(f)).ToHashSet();
            var (good, bad) = SalvagedLines.Gather(from);
            var (seen, unasked) = new Archive(from).Witness();
            var chain = SalvagedChain.Of(good, bad, LastEntry.Read(from), seen is null ? (0, "") : (seen.Number, seen.Sha));
            var book = SalvagedBook.Of(chain, now, whole.Contains);
            if (good.Count == 0 && bad.Count == 0)
            {
                throw new BookException($"There is no book at {from.Path}.");
            }

            if (book.Pages.Count == 0)
            {
                throw new BookException($"Nothing of the book at {from.Path} can be saved: no line that opens a page is whole. Bring back the newest backup with: closeout restore FILE --book NEWFOLDER");
            }

            using var fresh = new FreshBook(to);
            fresh.Make();
            Write(fresh.Folder, book);
            var attachments = Copy(from, fresh.Folder);
            if (BookCheck.Of(fresh.Folder).Fault is { } fault)
            {
                throw new InvalidOperationException($"the saved book is not good: {fault}");
            }

            fresh.Keep();
            return new(book.Kept, chain.Entries - book.Kept, book.Pages.Count, [.. unasked.Length > 0 ? new[] { unasked } : [], .. bad.Select(b => b.ToString()), .. chain.Left, .. book.Said, .. attachments]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The book at {from.Path} cannot be saved to {to.Path}: {e.Message} Nothing was written there; name a folder with --out that can be made and has room.", e);
        }
    }

    private static void Write(BookFolder folder, SalvagedBook book)
    {
        Disk.MakeFolder(folder.Pages);
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
    /// <returns>What was not whole.</returns>
    private static List<string> Copy(BookFolder from, BookFolder to)
    {
        var said = new List<string>();
        foreach (var file in AttachedFiles.Of(from))
        {
            if (AttachedFiles.IsWhole(file))
            {
                CopyInto(file, to.Files);
            }
            else
            {
                said.Add($"{file}: the attachment is not as it was; left out");
            }
        }

        foreach (var torn in Directory.Exists(from.TornLines) ? Directory.EnumerateFiles(from.TornLines) : [])
        {
            CopyInto(torn, to.TornLines);
        }

        if (File.Exists(from.RehearsalMark))
        {
            CopyInto(from.RehearsalMark, to.Path);
        }

        return said;
    }

    private static void CopyInto(string file, string folder)
    {
        Disk.MakeFolder(folder);
        using var source = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read);
        using var target = Disk.Own(Path.Combine(folder, Path.GetFileName(file)), FileMode.CreateNew, FileAccess.Write, FileShare.None);
        Disk.Writing(() =>
        {
            source.CopyTo(target);
            target.Flush(flushToDisk: true);
        });
    }
}
