using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class VisitHistoryTests
{
    private static readonly Code<VisitKind> Home = new("HOME");
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly Code<Item> Wrap = Tiny.Wrap.Code;

    [Theory]
    [InlineData(0, true)]
    [InlineData(-1, true)]
    [InlineData(-59, true)]     // sixty days with today
    [InlineData(-60, false)]
    [InlineData(1, false)]      // a visit reported ahead of its date
    public void Visits_of_the_last_sixty_days_count_and_no_others(int day, bool counts)
    {
        var depot = Tiny.Opened().Planned(p => p with { Use = [On(day, 2, (Lamp, 10, 52))] });
        VisitHistory.Of(depot).UseOf(Home, Lamp).Should().Be(counts ? new VisitUse(2, 5, 1) : default);   // 4 and 6: m 5, s2 (52 - 50) / 2
        WorkingDays.Of(depot).Count.Should().Be(counts ? 1 : 0);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(-59, true)]
    [InlineData(-60, false)]
    public void So_do_days_that_were_counted_without_reports(int day, bool counts)
    {
        var depot = Tiny.Opened().Planned(p => p with { Counted = [new(Tiny.Wednesday.AddDays(day), Tiny.B1, [new(Lamp, 7)])] });
        VisitHistory.Of(depot).UseOf(CountedDay.Kind, Lamp).Should().Be(counts ? new VisitUse(1, 7, 0) : default);
    }

    // HOME on two days: 3 visits used 4, 5, 0 lamps, 2 visits none. N = 5, S1 = 9, S2 = 41: m = 1.8, s2 = 41/5 - 1.8^2 = 4.96.
    [Fact]
    public void Visits_that_used_nothing_of_an_item_count()
    {
        var history = VisitHistory.Of(Tiny.Opened().Planned(p => p with { Use = [On(-1, 3, (Lamp, 9, 41)), On(-2, 2)] }));
        var use = history.UseOf(Home, Lamp);
        (use.Weight, use.Mean).Should().Be((5, 1.8));
        use.Variance.Should().BeApproximately(4.96, 1e-12);
        history.UseOf(Home, Wrap).Should().Be(new VisitUse(5, 0, 0), "five visits, none of which used any");
        history.UseOf(new("OTHER"), Lamp).Should().Be(default(VisitUse), "nobody knows such visits");
    }

    [Fact]
    public void Kinds_are_kept_apart_and_codes_differ_by_more_than_case()
    {
        var history = VisitHistory.Of(Tiny.Opened().Planned(p => p with { Use = [On(-1, 1, (Lamp, 4, 16)), On(-1, 1, (Lamp, 2, 4)) with { Kind = new("home") }, On(-1, 1, (Lamp, 9, 81)) with { Kind = new("CHECK") }] }));
        history.UseOf(Home, new("lamp")).Should().Be(new VisitUse(2, 3, 1));
        history.UseOf(new("check"), Lamp).Should().Be(new VisitUse(1, 9, 0));
    }

    [Fact]
    public void The_planning_rate_is_the_one_of_kind_and_item()
    {
        var setup = Tiny.Setup with { Rates = [new(Home, Lamp, 6, 10), new(Home, Wrap, 1, 4), new(new("CHECK"), Lamp, 2, 3)] };
        var history = VisitHistory.Of(Tiny.Opened(setup: setup).Planned(p => p with { Use = [On(-1, 5, (Lamp, 25, 165))] }));
        history.UseOf(Home, Lamp).Should().Be(VisitUse.Of(6, 10, 5, 25, 165));
        history.UseOf(Home, Wrap).Should().Be(VisitUse.Of(1, 4, 5, 0, 0));
        history.UseOf(new("CHECK"), Lamp).Should().Be(VisitUse.Of(2, 3, 0, 0, 0));
    }

    [Fact]
    public void The_visits_of_a_file_come_out_as_they_stand_there()
    {
        // install: 6 lamps in two rows of one visit, none in another; HEAD 1 in the first. m = 3, s2 = 18 - 9.
        const string usage = "date,van,visit,visit_kind,item,units\n2026-03-03,B1,v1,survey,LAMP,4\n2026-03-03,B1,v1,survey,LAMP,2\n"
            + "2026-03-03,B1,v1,survey,HEAD,1\n2026-03-03,B2,v1,survey,,0\n2026-01-03,B2,v9,survey,LAMP,40\n";
        var depot = Depot.Open(new(1, Tiny.FiveOClock, SmallDay.Given(("usage.csv", usage)).FirstPage(false)));
        VisitHistory.Of(depot).UseOf(new("survey"), Lamp).Should().Be(new VisitUse(2, 3, 9));
        VisitHistory.Of(depot).UseOf(new("survey"), new("HEAD")).Should().Be(new VisitUse(2, 0.5, 0.25));
        WorkingDays.Of(depot).Should().BeEquivalentTo(new { Count = 1 }, "3 January is 60 days before 4 March");
    }

    private static DailyUse On(int day, int visits, params (Code<Item> Item, long Sum, long Squares)[] items) =>
        new(Tiny.Wednesday.AddDays(day), Home, visits, [.. items.Select(i => new ItemUse(i.Item, i.Sum, i.Squares))]);
}
