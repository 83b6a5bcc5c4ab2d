using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Evenings;

public sealed class StepStories
{
    [Fact]
    public void Signing_alone_confirms_everything_before_it_as_booked()
    {
        using var evening = Rehearsed.Evening("B1,T1,sign,,,");

        evening.Entries.First().Should().BeOfType<VanCameIn>();
        evening.Entries.Skip(1).Should().Equal(
            new LeftoversConfirmed(new("B1")), new CardboardConfirmed(new("B1")),
            new MileageLogged(new("B1"), new("T1"), 1000, 1000, null, null, Sure: false), new DamageConfirmed(new("B1"), None: false), new KitConfirmed(new("B1")), new Signed(new("B1"), new("T1"), Proof.Rehearsal));
        evening.Rows("mileage").Should().Equal("2026-03-04,B1,T1,1000,1000,0,,5500,2026-07-10,");
    }

    [Fact]
    public void A_later_answer_confirms_only_what_comes_before_it()
    {
        using var evening = Rehearsed.Evening("B1,T1,mileage,odometer,,1062");

        evening.Depot.Shift(new("B1"))!.Step.Should().Be(Step.Damage);
        evening.Rows("mileage").Should().ContainSingle().Which.Should().StartWith("2026-03-04,B1,T1,1000,1062,62,,");
    }

    [Fact]
    public void The_weekly_check_that_is_due_is_confirmed_by_signing()
    {
        using var evening = Rehearsed.Evening("B2,T2,sign,,,");

        evening.Entries.OfType<WeeklyChecked>().Single().Should().BeEquivalentTo(new WeeklyChecked(new("B2"), null, 0, Clean: true, []));
        evening.Depot.Shift(new("B2"))!.IsClosed.Should().BeTrue();
    }

    [Fact]
    public void The_weekly_check_answered_when_not_due_is_recorded_all_the_same()
    {
        using var evening = Rehearsed.Evening("B1,T1,weekly,photos,,3", "B1,T1,weekly,clean,,no", "B1,T1,sign,,,");

        evening.Entries.OfType<VanCameIn>().Single().WeeklyDue.Should().BeFalse();
        evening.Entries.OfType<WeeklyChecked>().Single().Should().BeEquivalentTo(new WeeklyChecked(new("B1"), null, 3, Clean: false, []));
        evening.Depot.Shift(new("B1"))!.IsClosed.Should().BeTrue();
    }

    [Fact]
    public void Parts_told_at_the_weekly_check_are_incidents_and_named_in_it()
    {
        using var evening = Rehearsed.Evening("B1,T1,damage,zone,,Doors", "B1,T1,damage,what,,squeaks", "B1,T1,weekly,part,wipers,torn", "B1,T1,weekly,photos,,3", "B1,T1,sign,,,");

        evening.Entries.OfType<WeeklyChecked>().Single().NotInOrder.Should().Equal("wipers", "doors");
        evening.Rows("incidents").Select(r => string.Join(",", r.Split(',')[5..9])).Should().Equal("Doors,note,yes,squeaks", "wipers,repair,yes,torn");
    }

    [Fact]
    public void Any_technician_may_sign_for_any_van()
    {
        using var evening = Rehearsed.Evening("B1,T1,mileage,odometer,,1010", "B1,T2,sign,,,");

        evening.Depot.Shift(new("B1"))!.Should().Match<Shift>(s => s.Signed!.Technician.Text == "T2" && s.Technician.Text == "T1");
    }

    [Fact]
    public void A_reading_below_the_start_given_in_the_file_is_recorded_as_confirmed()
    {
        using var evening = Rehearsed.Evening("B1,T1,mileage,odometer,,990");

        evening.Rows("mileage").Should().ContainSingle().Which.Should().StartWith("2026-03-04,B1,T1,1000,990,0,").And.Contain("confirmed");
    }

    [Fact]
    public void Fuel_without_an_odometer_is_not_dropped()
    {
        using var evening = Rehearsed.Evening("B1,T1,mileage,fuel_gal,,12.5", "B1,T1,sign,,,");

        if (evening.Said.Code == 0)
        {
            evening.Rows("mileage").Should().ContainSingle().Which.Should().Contain(",12.5,");
        }
        else
        {
            evening.Said.Err.Should().Contain("evening.csv:2:");
        }
    }

    [Fact]
    public void Vans_answer_side_by_side()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,kept,LAMP,1", "B2,T2,leftovers,kept,LAMP,2", "B1,T1,leftovers,sealed,LAMP,2", "B2,T2,sign,,,", "B1,T1,sign,,,");

        evening.Depot.Shifts.Values.Should().OnlyContain(s => s.IsClosed).And.HaveCount(2);
        evening.Depot.Shift(new("B1"))!.Counts[new("LAMP")].Count.Should().Be(new LeftoverCount(2, 0, 1));
    }

    [Fact]
    public void Without_an_evening_all_vans_are_on_the_road_and_the_plan_is_provisional()
    {
        using var evening = Rehearsed.With("");

        evening.Depot.Shifts.Should().BeEmpty();
        evening.Rows("mileage").Should().BeEmpty();
        evening.Rows("restock").Should().NotBeEmpty().And.OnlyContain(r => r.EndsWith(",yes", StringComparison.Ordinal));
        evening.Left.Should().Equal(
            "book", "cardboard.csv", "incidents.csv", "kit.csv", "mileage-log.csv", "mileage.csv", "morning", "moves.csv", "recycling-weeks.csv", "restock.csv", "shelf.csv", "wall.csv", "waste.csv");
    }
}
