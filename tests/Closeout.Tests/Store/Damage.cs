using Closeout.Store;

namespace Closeout.Tests.Store;

/// <summary>A way in which a copy of the long book goes bad.</summary>
internal sealed record Damage(string Name, Action<BookFolder, Random> Do)
{
    /// <param name="other">A book whose pages may stand in the place of this one's.</param>
    public static IReadOnlyList<Damage> All(BookFolder other) =>
    [
        new("a bit of a page flipped", (book, r) => Change(AnyPage(book, r), b => b[r.Next(b.Length)] ^= (byte)(1 << r.Next(8)))),
        new("up to eight bytes of a page changed", (book, r) => Change(AnyPage(book, r), b => Some(r, 8, () => b[r.Next(b.Length)] = (byte)r.Next(256)))),
        new("a sector of a page zero", (book, r) => Change(AnyPage(book, r), b => b.AsSpan(Sector(b, r)).Clear())),
        new("a page cut anywhere", (book, r) => Cut(AnyPage(book, r), r)),
        new("a page cut between two lines", (book, r) => Lines(AnyPage(book, r), l => Shorten(l, r.Next(1, l.Count)))),
        new("two lines of a page swapped", (book, r) => Lines(AnyPage(book, r), l => Swap(l, r))),
        new("a line taken out", (book, r) => Lines(AnyPage(book, r), l => l.RemoveAt(r.Next(l.Count)))),
        new("a line said twice", (book, r) => Lines(AnyPage(book, r), l => l.Insert(r.Next(1, l.Count + 1), l[r.Next(l.Count)]))),
        new("a page gone", (book, r) => File.Delete(AnyPage(book, r))),
        new("two pages swapped", (book, _) => SwapFiles(book.Page(LongBook.First), book.Page(LongBook.Third))),
        new("another book's page in the place of one", (book, r) => Put(other, book, LongBook.Dates[r.Next(3)])),
        new("bytes of the archive changed", (book, r) => Change(Archive(book, "closeout.db"), b => Some(r, 50, () => b[r.Next(b.Length)] = (byte)r.Next(256)))),
        new("the archive cut or gone", (book, r) => CutOrDelete(Archive(book, "closeout.db"), r)),
        new("the memory of the last entry changed or gone", (book, r) => CutOrDelete(book.Last, r)),
        new("an attachment changed or cut", (book, r) => CutOrFlip(Directory.GetFiles(book.Files).Order(StringComparer.Ordinal).First(), r)),
    ];

    private static string AnyPage(BookFolder book, Random r) => book.Page(book.Dates[r.Next(book.Dates.Count)]);

    private static string Archive(BookFolder book, string file) => Path.Combine(book.Archive, file);

    private static void Change(string file, Action<byte[]> change)
    {
        var bytes = File.Exists(file) ? File.ReadAllBytes(file) : [];
        if (bytes.Length > 0)
        {
            change(bytes);
            File.WriteAllBytes(file, bytes);
        }
    }

    private static void Some(Random r, int most, Action act)
    {
        for (var left = r.Next(1, most + 1); left > 0; left--)
        {
            act();
        }
    }

    private static Range Sector(byte[] bytes, Random r)
    {
        var from = r.Next(bytes.Length) / 512 * 512;
        return from..Math.Min(from + 512, bytes.Length);
    }

    private static void Cut(string file, Random r)
    {
        var bytes = File.ReadAllBytes(file);
        File.WriteAllBytes(file, bytes[..r.Next(bytes.Length)]);
    }

    private static void Lines(string page, Action<List<byte[]>> change)
    {
        var lines = LongBook.Lines(page);
        if (lines.Count > 1)
        {
            change(lines);
            LongBook.Write(page, lines);
        }
    }

    private static void Shorten(List<byte[]> lines, int by) => lines.RemoveRange(lines.Count - by, by);

    private static void Swap(List<byte[]> lines, Random r)
    {
        var one = r.Next(lines.Count);
        var two = (one + r.Next(1, lines.Count)) % lines.Count;
        (lines[one], lines[two]) = (lines[two], lines[one]);
    }

    private static void SwapFiles(string one, string two)
    {
        if (File.Exists(one) && File.Exists(two))
        {
            File.Move(one, one + ".swap");
            File.Move(two, one);
            File.Move(one + ".swap", two);
        }
    }

    private static void Put(BookFolder other, BookFolder book, DateOnly date) => File.Copy(other.Page(date), book.Page(date), overwrite: true);

    private static void CutOrDelete(string file, Random r)
    {
        if (File.Exists(file) && r.Next(2) == 0)
        {
            Cut(file, r);
        }
        else
        {
            File.Delete(file);
        }
    }

    private static void CutOrFlip(string file, Random r)
    {
        if (r.Next(2) == 0)
        {
            Cut(file, r);
        }
        else
        {
            Change(file, b => b[r.Next(b.Length)] ^= (byte)(1 << r.Next(8)));
        }
    }
}
