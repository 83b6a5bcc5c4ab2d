using Closeout.Facts;
using Closeout.Store;
using Closeout.Turning;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>Pages that are whole, with every checksum fitting, and still cannot be.</summary>
public sealed class CheckTests
{
    private static readonly Item Lamp = SmallDay.Given().Setup.Items[0];

    [Fact]
    public void A_signature_of_a_van_that_never_came_in_is_named() =>
        CheckOf(First(), new Signed(SmallBook.B1, new("T1"), Proof.Pin)).Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("entry 2, Signed: it cannot stand here"));

    [Fact]
    public void A_van_that_comes_in_twice_is_named() =>
        CheckOf(First(), In(), In()).Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("entry 3"));

    [Fact]
    public void A_second_opening_within_a_page_is_named() =>
        CheckOf(First(), First()).Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("entry 2, PageOpened"));

    [Fact]
    public void A_page_in_the_wrong_file_is_named() =>
        CheckOf(First() with { Date = SmallDay.Date.AddDays(3) }).Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains(":1: entry 1 does not open the page of 2026-03-04"));

    [Fact]
    public void A_step_too_early_is_named() =>
        CheckOf(First(), In(), new KitConfirmed(SmallBook.B1)).Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("Kit"));

    [Fact]
    public void Stock_below_nothing_is_named() =>
        CheckOf(First(), In(), Counted(new Move(Lamp.Code, 99, Place.Bin, Place.Homes)))
            .Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("bin holds -92 of LAMP"));

    [Fact]
    public void Balances_that_do_not_sum_to_zero_are_named()
    {
        var first = First();
        CheckOf(first with { Carried = first.Carried with { Balances = [new(Place.Shelf, Lamp.Code, 10), new(Place.Supplier, Lamp.Code, -9)] } })
            .Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("the units of LAMP over all places sum to 1, not 0"));
    }

    [Fact]
    public void A_count_of_an_item_that_the_set_up_does_not_have_is_named() =>
        CheckOf(First(), In(), new LeftoverCounted(SmallBook.B1, new("GHOST"), new(0, 0, 0), 0, 0, 0, 0, [])).Code.Should().Be(1);

    [Fact]
    public void Two_vans_of_one_code_are_an_answer_and_no_crash()
    {
        var first = First();
        var checking = () => CheckOf(first with { Carried = first.Carried with { Vans = [.. first.Carried.Vans, .. first.Carried.Vans] } });

        checking.Should().NotThrow().Which.Code.Should().Be(1);
    }

    [Fact]
    public void Balances_changed_between_two_pages_are_named()
    {
        using var book = new SmallBook();
        var next = NextPage.After(book.Book.Depot, SmallDay.Date.AddDays(1));
        book.Book.Turned(next with { Carried = next.Carried with { Balances = [] } }, SmallBook.At(5));

        book.Check().Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("2026-03-05.jsonl:1: the balances carried forward"));
    }

    [Fact]
    public void A_missing_page_is_named_at_the_page_after_it()
    {
        using var book = new SmallBook();
        var second = book.NextDay();
        second.Turned(NextPage.After(second.Depot, SmallDay.Date.AddDays(2)), SmallBook.At(5));
        File.Delete(book.Folder.Page(SmallDay.Date.AddDays(1)));

        book.Check().Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("2026-03-06.jsonl:1:") && s.Err.Contains("is missing"));
    }

    private static PageOpened First() => SmallDay.Given().FirstPage(false);

    private static VanCameIn In() => new(SmallBook.B1, new("T1"), false, []);

    private static LeftoverCounted Counted(Move move) => new(SmallBook.B1, Lamp.Code, new(2, 0, 3), null, 0, 0, 0, [move]);

    private static Spoken CheckOf(params Entry[] entries)
    {
        using var temp = new TempFolder();
        var folder = new BookFolder(temp["book"]);
        Directory.CreateDirectory(folder.Pages);
        var (page, prev) = (new List<byte>(), PageLine.Nothing);
        foreach (var (i, entry) in entries.Index())
        {
            var (bytes, sha) = PageLine.Write(new Recorded(i + 1, SmallBook.At(i), entry), prev);
            page.AddRange(bytes);
            prev = sha;
        }

        File.WriteAllBytes(folder.Page(SmallDay.Date), [.. page]);
        return Spoken.By(() => Closeout.Commands.CheckCommand.Run(folder));
    }
}
