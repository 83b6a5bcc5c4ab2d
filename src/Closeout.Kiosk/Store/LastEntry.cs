using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using static System.FormattableString;

namespace Closeout.Store;

/// <summary>
/// What the last entry was, told beside the pages in <c>last.txt</c>. A page that lost whole lines at its end, or a newest
/// page that is gone, looks like a shorter book: only something beside it can say that there was more.
/// </summary>
/// <param name="BookSha">The sha of the book's first line.</param>
internal sealed record LastEntry(int Number, DateOnly Date, string Sha, string BookSha)
{
    /// <summary>Characters of it, always as many, so that one is written over the other.</summary>
    private const int Length = 196;

    /// <summary>What the book last said; null: nothing, or the file was damaged. It may lag behind the pages, never run ahead.</summary>
    /// <exception cref="BookException">In its place is no plain file, or one that is too long.</exception>
    public static LastEntry? Read(BookFolder folder)
    {
        try
        {
            return Parse(Encoding.ASCII.GetString(PlainFile.Read(folder.Last, BookFolder.MostText)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            var then = T("There the book says what its last entry was. Take it away and try again: the next entry writes it again.");
            return e is NoPlainFileException ? throw new BookException($"{e.Message} {then}", e) : null;
        }
    }

    /// <summary>Tells it, under the book's lock and after the entry is on disk: what only bears witness must not undo that.</summary>
    public void Write(BookFolder folder) => Disk.Try(() => Disk.Writing(() =>
    {
        // Not flushed: after a power cut it may be older than the pages, and that says nothing wrong.
        using var file = Disk.Own(folder.Last, FileMode.OpenOrCreate, FileAccess.Write, FileShare.ReadWrite);
        var text = Encoding.ASCII.GetBytes(Text);
        RandomAccess.Write(file.SafeFileHandle, text, 0);
        if (RandomAccess.GetLength(file.SafeFileHandle) != text.Length)
        {
            // Asked first: cutting a file to the length it has costs the file system as much as a line.
            RandomAccess.SetLength(file.SafeFileHandle, text.Length);
        }
    }));

    private string Text => Checked(Invariant($"entry {Number:D10} of {Date:O}, sha {Sha}, book {BookSha}"));

    /// <summary>What is not written again as it stands is damaged.</summary>
    private static LastEntry? Parse(string text) => text.Length == Length
        && int.TryParse(text.AsSpan(6, 10), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && IsoDate.Parse(text.AsSpan(20, IsoDate.Length)) is { } date
        && new LastEntry(number, date, text.Substring(36, PageLine.ShaLength), text.Substring(107, PageLine.ShaLength)) is var told
        && told.Text == text
            ? told
            : null;

    private static string Checked(string told) =>
        Invariant($"{told}, check {Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(told)))[..16]}\n");
}
