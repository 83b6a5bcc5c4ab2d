using Closeout.DayBook;
using Closeout.Shifts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>An earlier step changed keeps the later answers, except that a changed number of emptied cartons asks cardboard again.</summary>
public class SteppingBackLaws
{
    [Theory]
    [InlineData(2)]   // Wednesday: no weekly check
    [InlineData(4)]   // Friday: due for T1's van
    public void The_step_is_the_first_that_has_no_answer(int weekday) => AnyEvening.Acts.Holds(acts => Watch(acts, weekday, (_, after, _) =>
    {
        if (!after.IsClosed)
        {
            var open = ShiftFlow.Asked(after.WeeklyDue).First(s => !after.Answered.Contains(s));
            after.Step.Should().Be(open);
        }
    }));

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void An_answer_changes_its_own_step_alone_and_cardboard_only_with_the_cartons_emptied(int weekday) =>
        AnyEvening.Acts.Holds(acts => Watch(acts, weekday, (before, after, entry) =>
        {
            var boxesChanged = entry is LeftoverCounted count && before.ExpectedOf(count.Item) != count.Emptied;
            foreach (var step in Enum.GetValues<Step>().Where(s => s != StepOf(entry) && !(boxesChanged && s == Step.Cardboard)))
            {
                after.Answers(step).Should().Be(before.Answers(step), $"{entry} says nothing of {step}");
            }

            if (boxesChanged && before.Step > Step.Cardboard)
            {
                after.Step.Should().Be(Step.Cardboard);
                after.Answered.Should().BeEquivalentTo(before.Answered.Remove(Step.Cardboard));
            }
            else
            {
                after.Step.Should().BeOneOf(Enum.GetValues<Step>().Where(s => s >= before.Step));
                before.Answered.IsSubsetOf(after.Answered).Should().BeTrue();
            }
        }));

    private static Step StepOf(Entry entry) => entry switch
    {
        LeftoverCounted or LeftoversConfirmed => Step.Leftovers,
        BoxesCounted or CardboardConfirmed => Step.Cardboard,
        MileageLogged => Step.Mileage,
        DamageFound or DamageConfirmed => Step.Damage,
        KitCounted or KitConfirmed => Step.Kit,
        WeeklyChecked => Step.Weekly,
        Signed => Step.SignOff,
        _ => throw new InvalidOperationException($"{entry} answers no step"),
    };

    /// <summary>Plays the acts and looks at every entry of a close-out that had begun.</summary>
    private static void Watch(IEnumerable<Act> acts, int weekday, Action<Shift, Shift, VanEntry> look)
    {
        var depot = AnyEvening.Afternoon(Tiny.Monday.AddDays(weekday));
        foreach (var act in acts)
        {
            if (Decider.Decide(depot, act.On(depot)).Entry is VanEntry entry)
            {
                var before = depot.Shift(entry.Van);
                depot = depot.Take(entry);
                if (before is not null)
                {
                    look(before, depot.Shift(entry.Van)!, entry);
                }
            }
        }
    }
}
