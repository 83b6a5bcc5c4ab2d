using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Vans;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>Laws of decide and evolve over random evenings.</summary>
public class DecideLaws
{
    [Fact]
    public void What_is_accepted_the_fold_takes_and_stock_stays_lawful() => AnyEvening.Whole.Holds(acts =>
    {
        var depot = AnyEvening.Afternoon();
        foreach (var act in acts)
        {
            var decision = act.On(depot);
            (decision.Entry is null).Should().Be(decision.Refusal is not null, "a command comes to one of the two");
            if (decision.Entry is { } entry)
            {
                depot = depot.Take(entry);
                depot.Stock.Ledger.Unbalanced.Should().BeEmpty();
                depot.Stock.Ledger.BelowZero.Should().BeEmpty();
            }
        }
    });

    [Fact]
    public void Every_evening_can_be_folded_again_from_its_entries() => AnyEvening.Whole.Holds(acts =>
    {
        var (depot, story) = Story(acts);
        var again = story.Aggregate(AnyEvening.Afternoon(), (d, e) => d.Take(e));
        again.Number.Should().Be(depot.Number);
        again.Whole(Tiny.B1).Should().Be(depot.Whole(Tiny.B1));
        again.Whole(Tiny.B2).Should().Be(depot.Whole(Tiny.B2));
        again.Yard.Should().BeEquivalentTo(depot.Yard);
        again.Planning.Bookings.Should().Equal(depot.Planning.Bookings);
        again.Vans.Explained.Should().BeEquivalentTo(depot.Vans.Explained);
        IncidentLog.Of(again).Should().Equal(IncidentLog.Of(depot));
        Readiness.Of(again).SelectMany(v => v.Holds.Concat(v.Notes)).Should().Equal(Readiness.Of(depot).SelectMany(v => v.Holds.Concat(v.Notes)));
    });

    [Fact]
    public void What_is_asked_again_is_recorded_when_the_answer_is_sure() => AnyEvening.Acts.Holds(acts =>
    {
        var depot = AnyEvening.Afternoon();
        foreach (var act in acts)
        {
            var command = act.Asked(depot);
            var decision = command.Decide(depot);
            if (decision.Refusal is { AskAgain: true })
            {
                decision = ((IAskedAgain)command).Surely().Decide(depot);
                decision.Refusal.Should().BeNull($"{command} was only asked again");
            }

            depot = decision.Entry is { } entry ? depot.Take(entry) : depot;
        }
    });

    [Fact]
    public void Two_vans_half_way_at_once_do_not_disturb_each_other() => AnyEvening.ActAt(Tiny.B1, Tiny.B2).Array[0, 60].Holds(acts =>
    {
        var both = Story(acts).Depot;
        foreach (var van in new[] { Tiny.B1, Tiny.B2 })
        {
            Story(acts.Where(a => a.Van == van)).Depot.Whole(van).Should().Be(both.Whole(van));
        }
    });

    [Fact]
    public void The_random_evenings_reach_every_step_and_record_every_kind_of_entry()
    {
        var (steps, kinds) = (new HashSet<Step>(), new HashSet<Type>());
        AnyEvening.Whole.Holds(acts =>
        {
            var (depot, story) = Story(acts);
            steps.UnionWith(depot.Shifts.Values.Select(s => s.Step));
            kinds.UnionWith(story.Select(e => e.GetType()));
        });

        steps.Should().BeEquivalentTo(Enum.GetValues<Step>().Where(s => s is not (Step.OnTheRoad or Step.Weekly or Step.Handover)));
        kinds.Should().BeEquivalentTo(typeof(Entry).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Entry)) && !t.IsAbstract && !Elsewhere.Contains(t)));
    }

    /// <summary>Entries that open and mend pages, those of PINs, those of the stock desk and the corrected odometer: PinTriesTests, StockDeskLaws, OdometerStories, MoveStockStories and TrapsByKeys reach them.</summary>
    private static readonly Type[] Elsewhere =
    [
        typeof(PageOpened), typeof(DayFolderLoaded), typeof(BookSalvaged), typeof(PinSet), typeof(PinReset), typeof(PinFailed), typeof(PinPassed),
        typeof(PlanOverridden), typeof(OverrideWithdrawn), typeof(VanLoaded), typeof(DeliveryReceived), typeof(CountCorrected), typeof(OdometerCorrected), typeof(VanSentBack), typeof(StockTakenBack), typeof(HandoverAnswered),
        typeof(StockMoved), typeof(StockGiven), typeof(GiftAnswered),
    ];

    private static (Depot Depot, List<Entry> Story) Story(IEnumerable<Asking> acts)
    {
        var (depot, story) = (AnyEvening.Afternoon(), new List<Entry>());
        foreach (var act in acts)
        {
            if (act.On(depot).Entry is { } entry)
            {
                depot = depot.Take(entry);
                story.Add(entry);
            }
        }

        return (depot, story);
    }
}
