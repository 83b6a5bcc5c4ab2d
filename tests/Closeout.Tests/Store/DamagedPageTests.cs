using System.Text;
using Closeout.Facts;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class DamagedPageTests
{
    [Fact]
    public void Any_byte_that_flips_before_the_last_line_feed_is_found_and_its_line_named()
    {
        using var temp = new TempFolder();
        var path = temp["page.jsonl"];
        var good = ShortPage();
        var missed = new List<string>();
        for (var at = 0; at < good.Length - 1; at++)
        {
            var line = 1 + good.AsSpan(0, at).Count((byte)'\n');
            foreach (var flip in new byte[] { 0x01, 0x20, 0x80 })
            {
                var bad = (byte[])good.Clone();
                bad[at] ^= flip;
                File.WriteAllBytes(path, bad);
                if (Fault(path) is not { } told || !told.StartsWith($"{path}:{line}: ", StringComparison.Ordinal) || told.Contains($"Entries up to {line - 1} are good", StringComparison.Ordinal) != line > 1)
                {
                    missed.Add($"byte {at} by {flip:X2} of line {line}: {Fault(path) ?? "nothing told"}");
                }
            }
        }

        missed.Should().BeEmpty();
    }

    [Fact]
    public void A_bit_that_flips_in_the_last_line_feed_is_found()
    {
        using var book = new SmallBook().With(counts: 2);
        var bytes = book.Bytes;
        bytes[^1] ^= 1;
        File.WriteAllBytes(book.Page, bytes);

        var check = book.Check();

        check.Code.Should().Be(1, "the last line was confirmed: it is whole up to its line feed, so no write was cut there");
        check.Err.Should().Contain($"{book.Page}:5:");
    }

    [Fact]
    public void Lines_that_changed_places_are_found()
    {
        using var book = new SmallBook().With(counts: 3);
        var lines = Lines(book);
        (lines[3], lines[4]) = (lines[4], lines[3]);
        Write(book, lines);

        Fault(book.Page).Should().StartWith($"{book.Page}:4: it does not follow the line before");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void A_line_taken_out_is_found_where_it_is_missing(int line)
    {
        using var book = new SmallBook().With(counts: 3);
        var lines = Lines(book);
        lines.RemoveAt(line - 1);
        Write(book, lines);

        Fault(book.Page).Should().StartWith($"{book.Page}:{line}: ");
    }

    [Fact]
    public void A_line_said_twice_is_found()
    {
        using var book = new SmallBook().With(counts: 1);
        var lines = Lines(book);
        lines.Insert(3, lines[3]);
        Write(book, lines);

        Fault(book.Page).Should().StartWith($"{book.Page}:5: ");
    }

    [Fact]
    public void A_line_edited_with_its_checksum_made_to_fit_is_found_at_the_next_line()
    {
        using var book = new SmallBook().With(counts: 3);
        var lines = Lines(book);
        lines[3] = Forged(book, 3, "\"kept\":1", "\"kept\":9");
        Write(book, lines);

        Fault(book.Page).Should().StartWith($"{book.Page}:5: it does not follow the line before: a line was changed");
    }

    [Fact]
    public void The_last_line_of_a_page_edited_with_its_checksum_made_to_fit_is_found_by_check_at_the_next_page()
    {
        using var book = new SmallBook().Closed(SmallBook.B1);
        book.NextDay();
        var lines = Lines(book);
        lines[^1] = Forged(book, lines.Count - 1, "\"technician\":\"T1\"", "\"technician\":\"T2\"");
        Write(book, lines);

        var check = book.Check();

        check.Code.Should().Be(1);
        check.Err.Should().Contain("2026-03-05.jsonl:1: ").And.Contain("does not follow");
    }

    [Fact]
    public void A_number_left_out_is_found_although_all_checksums_fit()
    {
        using var book = new SmallBook().With(counts: 1);
        var lines = Lines(book);
        lines[^1] = Forged(book, lines.Count - 1, "{\"n\":4,", "{\"n\":5,");
        Write(book, lines);

        Fault(book.Page).Should().StartWith($"{book.Page}:4: entry 5 follows entry 3");
    }

    private static byte[] ShortPage()
    {
        var prev = PageLine.Nothing;
        return [.. EveryKind.Page.Skip(2).Take(5).Prepend(EveryKind.Page[0] with { Entry = Bare((PageOpened)EveryKind.Page[0].Entry) }).SelectMany((recorded, i) =>
        {
            var (bytes, sha) = PageLine.Write(recorded with { Number = i + 1 }, prev);
            prev = sha;
            return bytes;
        })];
    }

    private static PageOpened Bare(PageOpened page) => page with
    {
        Carried = page.Carried with { Setup = page.Carried.Setup with { Items = [], Crew = [], Vans = [], Kit = [], Limits = [], Rates = [], Boards = [] }, Vans = [], Use = [], ByVan = [], Orders = [], Balances = [] },
    };

    private static string? Fault(string path)
    {
        try
        {
            PageReader.Read(path, default);
            return null;
        }
        catch (BookException e)
        {
            return e.Message;
        }
    }

    private static List<byte[]> Lines(SmallBook book) => [.. Encoding.UTF8.GetString(book.Bytes).TrimEnd('\n').Split('\n').Select(Encoding.UTF8.GetBytes)];

    private static byte[] Forged(SmallBook book, int index, string was, string now)
    {
        var (entries, line) = (PageReader.Read(book.Page, default).Entries, Encoding.UTF8.GetString(Lines(book)[index - 1]));
        return ForgedLine.Of(entries[index], was, now, line[^66..^2]);
    }

    private static void Write(SmallBook book, IEnumerable<byte[]> lines) => File.WriteAllBytes(book.Page, [.. lines.SelectMany(l => l.Append((byte)'\n'))]);
}
