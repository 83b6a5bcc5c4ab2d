using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>The column replaces of items.csv: use and rates of a code that is no item any more count as another's.</summary>
public class ReplacedItemsTests
{
    private const string Usage = "date,van,visit,visit_kind,item,units\n";

    [Fact]
    public void Use_of_both_codes_in_a_visit_is_added_up_before_it_is_squared()
    {
        var given = SmallDay.Given(Items(("LAMP", "OLD")), ("usage.csv", Usage + "2026-03-03,B1,1,install,OLD,3\n2026-03-03,B1,1,install,LAMP,2\n"));
        given.Used.Use.Single().Items.Should().Equal(new ItemUse(new("LAMP"), 5, 25));
    }

    [Fact]
    public void A_rate_of_the_old_code_counts_only_where_the_new_one_has_none()
    {
        var given = SmallDay.Given(Items(("LAMP", "OLD")),
            ("visits.csv", "visit_kind,item,units_per_visit,weight_visits\ninstall,LAMP,6,10\ninstall,OLD,9,9\ncheck,OLD,2,5\n"));
        given.Setup.Rates.Should().BeEquivalentTo([new PlanningRate(new("install"), new("LAMP"), 6, 10), new PlanningRate(new("check"), new("LAMP"), 2, 5)]);
    }

    [Theory]
    [InlineData("LAMP", "HEAD", "is still in items.csv")]
    [InlineData("LAMP", "LAMP", "leads back to the item itself")]
    public void A_code_that_is_an_item_is_a_fault(string item, string replaces, string told) => Told(Items((item, replaces))).Should().ContainSingle().Which.Should().Contain(told);

    [Fact]
    public void A_circle_is_a_fault_and_so_are_two_that_replace_one()
    {
        Told(Items(("LAMP", "HEAD"), ("HEAD", "LAMP"))).Should().HaveCount(2).And.OnlyContain(t => t.Contains("leads back"));
        Told(Items(("LAMP", "OLD"), ("HEAD", "OLD"))).Should().ContainSingle().Which.Should().Contain("is replaced by LAMP already");
    }

    [Fact]
    public void A_book_remembers_what_was_replaced_before()
    {
        var before = Tiny.Setup with { Items = [Tiny.Lamp with { Replaces = new("OLD") }, Tiny.Shower] };
        var now = Tiny.Setup with { Items = [Tiny.Wrap with { Replaces = Tiny.Lamp.Code }] };
        var kept = now with { Replaced = Replacement.Kept(before, now) };
        kept.Now(new("OLD")).Should().Be(Tiny.Wrap.Code);
        (before with { Items = [Tiny.Lamp] }).Now(Tiny.Lamp.Code).Should().Be(Tiny.Lamp.Code);
    }

    [Fact]
    public void An_item_of_which_nobody_knows_what_a_visit_needs_is_named_until_somebody_does()
    {
        var bookings = ("bookings.csv", "date,van,visit_kind,visits\n2026-03-05,B1,install,2\n");
        Unknown(bookings).Should().Equal("HEAD");
        Unknown(bookings, ("usage.csv", Usage + "2026-03-03,B1,1,install,HEAD,1\n")).Should().BeEmpty();
        Unknown(bookings, Items(("HEAD", "OLD")), ("usage.csv", Usage + "2026-03-03,B1,1,install,OLD,1\n")).Should().BeEmpty();
        Unknown().Should().BeEmpty("nothing is booked");
    }

    private static IEnumerable<string> Unknown(params (string, string?)[] files)
    {
        var depot = Closeout.DayBook.Depot.Open(new(1, Tiny.FiveOClock, SmallDay.Given(files).FirstPage(rehearsal: false)));
        return RestockPlan.For(depot).Unknown.Select(i => i.Code.Text);
    }

    private static (string File, string? Text) Items(params (string Item, string Replaces)[] replaced)
    {
        var rows = SmallDay.Text("items.csv").TrimEnd('\n').Split('\n');
        return ("items.csv", string.Join('\n', rows.Select((r, i) =>
            i == 0 ? r + ",replaces" : $"{r},{replaced.FirstOrDefault(p => r.StartsWith(p.Item + ",", StringComparison.Ordinal)).Replaces}")) + "\n");
    }

    private static IEnumerable<string> Told(params (string, string?)[] files) => ReadDay.With(files).Findings.Problems.Select(p => p.ToString());
}
