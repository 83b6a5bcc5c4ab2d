using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>After an answer only what it touches is planned anew, and the numbers are those of a plan from scratch.</summary>
public class PlanAfterAnswerTests
{
    [Fact]
    public void After_every_answer_of_an_evening_the_plan_is_the_one_from_scratch()
    {
        foreach (var seed in Enumerable.Range(1, 40))
        {
            var lots = new Random(seed);
            var depot = SomeDepot.Number(seed);
            var plan = RestockPlan.For(depot);
            for (var step = 0; step < 25; step++)
            {
                depot = Next(depot, lots);
                plan = RestockPlan.For(depot, plan);
                SomeDepot.Text(plan).Should().Equal(SomeDepot.Text(RestockPlan.For(depot)), $"seed {seed}, step {step}");
                plan.Moves.Select(m => m.ToString()).Should().Equal(RestockPlan.For(depot).Moves.Select(m => m.ToString()));
            }
        }
    }

    [Fact]
    public void An_item_that_nobody_touched_keeps_its_very_lines()
    {
        var depot = SomeDepot.Number(3, vans: 3, items: 4).At(new("V1"), Step.Leftovers);
        var before = RestockPlan.For(depot);
        var item = depot.Setup.Items[0];
        var after = RestockPlan.For(depot.Did(new CountLeftover(new("V1"), item.Code, 0, 1, 0, Sure: true)), before);
        after.Shelf.Where(s => s.Item != item).Should().OnlyContain(s => before.Shelf.Any(b => ReferenceEquals(b, s)));
        after.Shelf.Where(s => s.Item == item).Should().OnlyContain(s => !before.Shelf.Any(b => ReferenceEquals(b, s)));
    }

    /// <summary>A count, a signed van, a delivery, a corrected count, a load or a change of the plan; a refused one leaves all as it is.</summary>
    private static Depot Next(Depot depot, Random lots)
    {
        var (van, item) = (depot.Setup.Vans[lots.Next(depot.Setup.Vans.Count)].Code, depot.Setup.Items[lots.Next(depot.Setup.Items.Count)].Code);
        ICommand command = lots.Next(8) switch
        {
            0 => new ReceiveDelivery(item, lots.Next(1, 4), Tiny.T1, lots.Next(2) == 0),
            1 => new CorrectCount(Place.Bin, item, lots.Next(0, 20), "counted", Tiny.T1),
            2 => new LoadVan(van, [new(item, 0, lots.Next(0, 3))], Tiny.T1),
            3 => new ChangePlan(OverrideKind.Extra, van, item, Tiny.Friday, 1, "open house", Tiny.Lead),
            4 or 5 when depot.Shift(van) is { Step: Step.Leftovers } => new CountLeftover(van, item, null, lots.Next(0, 4), lots.Next(0, 9), Sure: true),
            _ => depot.Answer(van),
        };
        return command.Decide(depot) is { Entry: { } entry } ? depot.Take(entry) : depot;
    }
}
