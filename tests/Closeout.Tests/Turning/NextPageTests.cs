using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Turning;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Turning;

/// <summary>What one page hands to the next, read back from the next page's own depot.</summary>
public class NextPageTests
{
    private static readonly DateOnly Thursday = Tiny.Wednesday.AddDays(1);

    private static Depot Next(Depot depot, DateOnly? date = null) =>
        Depot.Open(new Recorded(depot.Number + 1, Tiny.FiveOClock, NextPage.After(depot, date ?? Thursday)));

    private static Depot Leftovers => Tiny.Opened("shelf: 5 LAMP; bin: 7 LAMP; B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers);

    [Fact]
    public void Balances_are_what_the_page_before_ended_with()
    {
        var depot = Leftovers.Did(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 1, 4, 3));
        Next(depot).Stock.Ledger.Balances.Should().BeEquivalentTo(depot.Stock.Ledger.Balances).And.HaveCount(6);
    }

    [Fact]
    public void A_close_out_is_of_its_evening_and_the_book_of_the_next_begins_without()
    {
        var next = Next(Leftovers.At(Tiny.B1, Step.Closed));
        next.Shifts.Should().BeEmpty();
        (next.Date, next.Number).Should().Be((Thursday, 9));
    }

    [Fact]
    public void The_odometer_last_read_is_the_next_start()
    {
        var next = Next(Leftovers.At(Tiny.B1, Step.Mileage).Did(new LogMileage(Tiny.B1, 1044.5m)));
        next.Van(Tiny.B1).OdometerMi.Should().Be(1044.5m);
        next.Van(Tiny.B2).OdometerMi.Should().Be(2000, "it was not read");
    }

    [Fact]
    public void The_weekly_check_carries_its_date_and_the_oil_change()
    {
        var oil = new DateOnly(2026, 9, 1);
        var next = Next(Leftovers.At(Tiny.B1, Step.SignOff).Did(new CheckWeekly(Tiny.B1, oil, 4, true)));
        (next.Van(Tiny.B1).WeeklyCheckedOn, next.Van(Tiny.B1).OilChangedOn).Should().Be((Tiny.Wednesday, oil));

        var later = Next(next.At(Tiny.B1, Step.SignOff).Did(new CheckWeekly(Tiny.B1, null, 4, true)), Tiny.Friday);
        (later.Van(Tiny.B1).WeeklyCheckedOn, later.Van(Tiny.B1).OilChangedOn).Should().Be((Thursday, oil), "the sticker was not read again");
    }

    [Fact]
    public void Boxes_not_found_are_carried_until_they_are()
    {
        var short2 = Leftovers.Did(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 0, 0, 0), new ConfirmLeftovers(Tiny.B1), new CountBoxes(Tiny.B1, Tiny.Lamp.Code, 0), new ConfirmCardboard(Tiny.B1));
        var next = Next(short2);
        next.Van(Tiny.B1).MissingBoxes.Should().Equal(new MissingBoxes(Tiny.Lamp.Code, 2, Tiny.Wednesday));

        var found = next.At(Tiny.B1, Step.Cardboard).Did(new CountBoxes(Tiny.B1, Tiny.Lamp.Code, 2), new ConfirmCardboard(Tiny.B1));
        Next(found, Tiny.Friday).Van(Tiny.B1).MissingBoxes.Should().BeEmpty();
    }

    [Fact]
    public void Damage_to_note_or_repair_is_carried_with_its_date_and_unsafe_as_a_hold()
    {
        var next = Next(Leftovers.At(Tiny.B1, Step.Damage).Did(
            new ReportDamage(Tiny.B1, "rear door", Severity.Note, "scratch"),
            new ReportDamage(Tiny.B1, "left mirror", Severity.Repair, "cracked"),
            new ReportDamage(Tiny.B1, "brakes", Severity.Unsafe, "soft pedal"),
            new ConfirmDamage(Tiny.B1, false)));

        next.Van(Tiny.B1).Incidents.Select(i => (i.Number, i.Since, i.Zone, i.Severity, i.Holds)).Should().Equal(
            (1, Tiny.Wednesday, "rear door", Severity.Note, false),
            (2, Tiny.Wednesday, "left mirror", Severity.Repair, false),
            (3, Tiny.Wednesday, "brakes", Severity.Unsafe, true));
        Readiness.Standing(next, Tiny.B1).Should().Equal(new Hold(Tiny.Wednesday, "brakes, unsafe: soft pedal (incident 3)"));

        Next(next, Tiny.Friday).Van(Tiny.B1).Should().BeEquivalentTo(next.Van(Tiny.B1), "an evening without a word changes nothing");
    }

    [Fact]
    public void A_kit_shortage_is_carried_until_the_kit_is_confirmed_whole_and_its_hold_until_it_is_lifted()
    {
        var next = Next(Leftovers.At(Tiny.B1, Step.Kit).Did(
            new CountKit(Tiny.B1, Tiny.Cones.Code, 1), new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 0), new ConfirmKit(Tiny.B1)));
        next.Van(Tiny.B1).KitShort.Should().Equal(new KitThere(Tiny.Cones.Code, 1), new KitThere(Tiny.Extinguisher.Code, 0));
        next.Van(Tiny.B1).Holds.Should().Equal(new Hold(Tiny.Wednesday, "fire extinguisher: 0 of 1"));

        var whole = Next(next.At(Tiny.B1, Step.Kit).Did(new ConfirmKit(Tiny.B1)), Tiny.Friday);
        whole.Van(Tiny.B1).KitShort.Should().BeEmpty();
        whole.Van(Tiny.B1).Holds.Should().ContainSingle("only a lead lifts a hold").Which.Since.Should().Be(Tiny.Wednesday);
    }

    [Fact]
    public void Dates_read_on_kit_pieces_are_carried()
    {
        var expires = new DateOnly(2027, 3, 31);
        var next = Next(Leftovers.At(Tiny.B1, Step.Kit).Did(new CountKit(Tiny.B1, Tiny.Extinguisher.Code, null, expires), new ConfirmKit(Tiny.B1)));
        next.Van(Tiny.B1).KitDates.Should().Equal(new KitDate(Tiny.Extinguisher.Code, expires, null));
    }

    [Fact]
    public void Bookings_behind_are_dropped_and_history_reaches_back_sixty_days()
    {
        var kind = new Code<VisitKind>("HOME");
        var edge = Thursday.AddDays(-PlanningWindow.Days);
        var depot = Leftovers.Planned(p => p with { Bookings = [new(Tiny.Wednesday, Tiny.B1, kind, 4), new(Thursday, Tiny.B1, kind, 5)], Use = [new(edge, kind, 1, []), new(edge.AddDays(1), kind, 1, []), new(Tiny.Wednesday, kind, 1, [])] });

        var next = Next(depot);
        next.Planning.Bookings.Select(b => b.Date).Should().Equal(Thursday);
        next.Planning.Use.Select(u => u.Date).Should().Equal(edge.AddDays(1), Tiny.Wednesday);
    }
}
