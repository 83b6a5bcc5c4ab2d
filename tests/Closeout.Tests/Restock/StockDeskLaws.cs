using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>Laws of the stock desk over random evenings.</summary>
public class StockDeskLaws
{
    [Fact]
    public void What_is_accepted_the_fold_takes_and_stock_stays_lawful() => AnyStockDesk.Doings.Holds(Lawful, 250);

    [Fact]
    public void The_same_holds_when_vans_are_corrected_at_any_moment() => AnyStockDesk.DoingsWithVansCorrected.Holds(Lawful, 250);

    [Fact]
    public void Every_evening_can_be_folded_again_from_its_entries_changes_of_the_plan_and_all() => AnyStockDesk.Doings.Holds(
        doings =>
        {
            var (depot, story) = Story(doings);
            var again = story.Aggregate(AnyStockDesk.Afternoon(), (d, e) => d.Take(e));
            again.Planning.Overrides.Should().Equal(depot.Planning.Overrides);
            again.Stock.Orders.Should().Equal(depot.Stock.Orders);
            again.Stock.Loaded.Should().BeEquivalentTo(depot.Stock.Loaded);
            again.Stock.Ledger.Balances.Should().BeEquivalentTo(depot.Stock.Ledger.Balances);
        },
        100);

    [Fact]
    public void Changes_of_the_plan_survive_a_day_folder_and_the_next_page_while_their_date_is_ahead()
    {
        var (kept, dropped) = (0, 0);
        AnyStockDesk.Doings.Holds(
            doings =>
            {
                var depot = Story(doings).Depot;
                var loaded = depot.Take(new DayFolderLoaded(depot.Setup, [Thursday, Tiny.Friday], [], [], [], [], [], []));
                loaded.Planning.Overrides.Should().Equal(depot.Planning.Overrides);

                var next = loaded.Next(Thursday);
                next.Planning.Overrides.Should().Equal(depot.Planning.Overrides.Where(o => o.Change.Date > Thursday), "with their numbers and reasons");
                next.Next(Tiny.Friday).Planning.Overrides.Should().Equal(depot.Planning.Overrides.Where(o => o.Change.Date > Tiny.Friday));
                kept += next.Planning.Overrides.Count;
                dropped += depot.Planning.Overrides.Count - next.Planning.Overrides.Count;
            },
            150);
        kept.Should().BeGreaterThan(20);
        dropped.Should().BeGreaterThan(20);
    }

    [Fact]
    public void No_plan_takes_a_van_above_its_high_gives_an_excluded_van_anything_or_loads_a_line_twice()
    {
        var (changed, excluded, loaded) = (0, 0, 0);
        AnyStockDesk.Doings.Holds(
            doings =>
            {
                var depot = Story(doings).Depot;
                var plan = RestockPlan.For(depot);
                foreach (var line in plan.Lines)
                {
                    line.Target.Units.Should().BeInRange(0, line.High);
                    (line.Units == 0 || line.Aboard + line.Units <= line.High).Should().BeTrue($"{line.Van.Code} {line.Item.Code} carries at most {line.High}");
                    (line.Target.Basis == Basis.Lead).Should().Be(line.Overrides.Count > 0);
                    changed += line.Overrides.Count;
                }

                foreach (var van in depot.Planning.Overrides.Where(o => o.Change.Date == plan.Date && o.Change.Kind == OverrideKind.Exclude).Select(o => o.Change.Van))
                {
                    plan.Lines.Where(l => l.Van.Code == van).Sum(l => l.Units).Should().Be(0);
                    excluded++;
                }

                foreach (var (van, item) in depot.Stock.Loaded.Keys)
                {
                    depot.Given(van, item).Should().Be(0, "it was loaded, with what was really taken");
                    loaded++;
                }
            },
            250);
        new[] { changed, excluded, loaded }.Should().OnlyContain(n => n > 20);
    }

    [Fact]
    public void What_an_excluded_van_leaves_is_the_others() => Gen.Select(Gen.Int[0, 6], Gen.Int[0, 30], Gen.Int[0, 2]).Holds((cartons, bin, which) =>
    {
        var depot = AnyStockDesk.Afternoon().Did(
            new CorrectCount(Place.Shelf, Lamp, cartons, "counted", Tiny.T1), new CorrectCount(Place.Bin, Lamp, bin, "counted", Tiny.T1));
        var van = depot.Setup.Vans[which].Code;
        var (with, without) = (Needed(depot), Needed(depot.Did(Change(OverrideKind.Exclude, van))));

        without.GetValueOrDefault(van).Should().Be(0);
        foreach (var other in with.Keys.Where(v => v != van))
        {
            without[other].Should().BeGreaterThanOrEqualTo(with[other]);
        }

        (depot.Line(van) is null || with.Values.Sum() - with.GetValueOrDefault(van) <= without.Values.Sum()).Should().BeTrue();
    });

    /// <summary>Needs that the plan fills, by van; without what is rounded up to whole cartons.</summary>
    private static Dictionary<Code<Van>, int> Needed(Depot depot) =>
        RestockPlan.For(depot).Lines.Where(l => l.Item.Code == Lamp).ToDictionary(l => l.Van.Code, l => l.Need - l.Short);

    private static void Lawful(Doing[] doings)
    {
        var depot = AnyStockDesk.Afternoon();
        foreach (var doing in doings)
        {
            var decision = doing.On(depot);
            (decision.Entry is null).Should().Be(decision.Refusal is not null, "a command comes to one of the two");
            if (decision.Entry is { } entry)
            {
                depot = depot.Take(entry);
                depot.Stock.Ledger.Unbalanced.Should().BeEmpty();
                depot.Stock.Ledger.BelowZero.Should().BeEmpty($"of {entry}");
            }
        }
    }

    private static (Depot Depot, List<Entry> Story) Story(IEnumerable<Doing> doings)
    {
        var (depot, story) = (AnyStockDesk.Afternoon(), new List<Entry>());
        foreach (var doing in doings)
        {
            if (doing.On(depot).Entry is { } entry)
            {
                depot = depot.Take(entry);
                story.Add(entry);
            }
        }

        return (depot, story);
    }
}
