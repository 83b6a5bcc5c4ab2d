using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>An earlier step changed keeps the later answers, except that a changed number of emptied cartons asks cardboard again.</summary>
public class SteppingBackLaws
{
    [Theory]
    [InlineData(2)]   // Wednesday: no weekly check
    [InlineData(4)]   // Friday: due for T1's van
    public void The_step_is_the_first_that_has_no_answer(int weekday) => AnyEvening.Whole.Holds(acts => Watch(acts, weekday, (_, after, _) =>
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
        AnyEvening.Whole.Holds(acts => Watch(acts, weekday, (before, after, entry) =>
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
            else if (entry is CloseoutReopened)
            {
                (before.Step, after.Step).Should().Be((Step.Closed, Step.SignOff));
                after.Answered.Should().BeEquivalentTo(before.Answered, "every answer stands, and may be changed");
            }
            else
            {
                after.Step.Should().BeOneOf(Enum.GetValues<Step>().Where(s => s >= before.Step));
                before.Answered.IsSubsetOf(after.Answered).Should().BeTrue();
            }
        }));

    /// <summary>The step that an entry answers; null: none, it stands beside them.</summary>
    private static Step? StepOf(Entry entry) => entry switch
    {
        LeftoverCounted or LeftoversConfirmed => Step.Leftovers,
        BoxesCounted or StreamCounted or CardboardConfirmed => Step.Cardboard,
        MileageLogged => Step.Mileage,
        DamageFound or DamageConfirmed => Step.Damage,
        KitCounted or KitConfirmed => Step.Kit,
        WeeklyChecked => Step.Weekly,
        Signed or SignedFor or CloseoutReopened or CloseoutChecked => Step.SignOff,
        PhotoAttached => null,
        _ => throw new InvalidOperationException($"{entry} answers no step"),
    };

    /// <summary>Plays the acts and looks at every entry of a close-out that had begun.</summary>
    private static void Watch(IEnumerable<Asking> acts, int weekday, Action<Shift, Shift, VanEntry> look)
    {
        var depot = AnyEvening.Afternoon(Tiny.Monday.AddDays(weekday));
        foreach (var act in acts)
        {
            if (act.On(depot).Entry is { } taken)
            {
                var now = depot.Take(taken);
                if (taken is VanEntry entry && depot.Shift(entry.Van) is { } before)
                {
                    look(before, now.Shift(entry.Van)!, entry);
                }

                depot = now;
            }
        }
    }
}
