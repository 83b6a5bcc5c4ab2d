using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Closeout.Facts;
using Closeout.Words;

namespace Closeout.Store;

/// <summary>
/// What the last entry was, told beside the pages in <c>last.txt</c>. A page that lost whole lines at its end, or a newest
/// page that is gone, looks like a shorter book: only something beside it can say that there was more.
/// </summary>
/// <param name="BookSha">The sha of the book's first line.</param>
internal sealed partial record LastEntry(int Number, DateOnly Date, string Sha, string BookSha)
{
    /// <summary>What the book last said; null: nothing, or the file was damaged. It may lag behind the pages, never run ahead of them.</summary>
    /// <exception cref="BookException">In its place is no plain file, or one that is too long.</exception>
    public static LastEntry? Read(BookFolder folder)
    {
        try
        {
            return Parse(Encoding.ASCII.GetString(PlainFile.Read(folder.Last, BookFolder.MostText)));
        }
        catch (NoPlainFileException e)
        {
            throw new BookException($"{e.Message} There the book says what its last entry was. Take it away and try again: the next entry writes it anew.", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Tells it, under the book's lock and after the entry is on disk.</summary>
    public void Write(BookFolder folder)
    {
        try
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
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentOutOfRangeException)
        {
            // The entry itself is on disk and confirmed: a file that only bears witness must not undo that.
        }
    }

    private string Text => Checked(string.Create(CultureInfo.InvariantCulture, $"entry {Number:D10} of {Date:O}, sha {Sha}, book {BookSha}"));

    private static LastEntry? Parse(string text) =>
        Line().Match(text) is { Success: true } m && Checked(m.Groups["told"].Value) == text
        && IsoDate.TryParse(m.Groups["date"].Value, out var date)
            ? new(int.Parse(m.Groups["number"].Value, CultureInfo.InvariantCulture), date, m.Groups["sha"].Value, m.Groups["book"].Value)
            : null;

    private static string Checked(string told) => $"{told}, check {Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(told)))[..16]}\n";

    [GeneratedRegex("^(?<told>entry (?<number>[0-9]{10}) of (?<date>[0-9-]{10}), sha (?<sha>[0-9a-f]{64}), book (?<book>[0-9a-f]{64})), check ")]
    private static partial Regex Line();
}
