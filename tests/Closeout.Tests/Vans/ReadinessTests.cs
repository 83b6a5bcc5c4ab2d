using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

public class ReadinessTests
{
    private static VanState B1(Depot depot) => Readiness.Of(depot).Single(v => v.Van.Code == Tiny.B1);

    private static Depot Closed(params ICommand[] before) => Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.SignOff).Did(before).Did(new Sign(Tiny.B1, Tiny.T1));

    [Fact]
    public void A_van_closed_without_a_word_is_ready()
    {
        var state = B1(Closed());
        state.Morning.Should().Be(Morning.Ready);
        (state.Holds.Count, state.Notes.Count).Should().Be((0, 0));
    }

    [Fact]
    public void Vans_stand_in_bay_order_with_whoever_closes_them_out_or_is_rostered()
    {
        var states = Readiness.Of(Tiny.Opened().Did(new ComeIn(Tiny.B1, Tiny.T2)));
        states.Select(s => (s.Van.Code.Text, s.With?.Text, s.Morning)).Should().Equal(
            ("B1", "T2", Morning.NotClosed), ("B2", "T2", Morning.NotClosed), ("B3", "T3", Morning.NotClosed));
    }

    [Fact]
    public void A_hold_speaks_louder_than_an_open_close_out()
    {
        var state = B1(Tiny.Opened().At(Tiny.B1, Step.Damage).Did(new ReportDamage(Tiny.B1, "brakes", Severity.Unsafe, "soft pedal")));
        state.Morning.Should().Be(Morning.Held);
        state.Holds.Should().Equal("brakes, unsafe: soft pedal (incident 1)");
    }

    [Fact]
    public void A_critical_piece_missing_holds_and_another_is_a_note()
    {
        var state = B1(Closed(new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 0), new CountKit(Tiny.B1, Tiny.Cones.Code, 2)));
        state.Holds.Should().Equal("fire extinguisher: 0 of 1");
        state.Notes.Should().Equal("traffic cones: 2 of 3");
    }

    [Fact]
    public void A_hold_of_an_earlier_evening_stands_and_is_not_said_twice()
    {
        var depot = Tiny.Opened(carried: v => v with { Holds = [new(Tiny.Monday, "fire extinguisher: 0 of 1")] }).At(Tiny.B1, Step.Kit);
        B1(depot.At(Tiny.B1, Step.Closed)).Holds.Should().Equal("fire extinguisher: 0 of 1");
        B1(depot.Did(new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 0))).Holds.Should().Equal("fire extinguisher: 0 of 1");
    }

    [Fact]
    public void Whoever_takes_the_van_is_told_everything_in_one_order()
    {
        var state = B1(Tiny.Opened("B1: 2+5 LAMP, 1+0 SHOWER", carried: v => v with
        {
            Incidents = [new(1, Tiny.Monday, Tiny.FiveOClock, Tiny.T2, "left mirror", Severity.Repair, "cracked", true, "", null, false)],
            WeeklyCheckedOn = Tiny.Monday.AddDays(-14),
            OdometerMi = 4250,
        }).At(Tiny.B1, Step.Leftovers).Did(
            new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 1, 0, 3, Installed: 10),
            new ConfirmLeftovers(Tiny.B1),
            new CountBoxes(Tiny.B1, Tiny.Lamp.Code, 0),
            new ConfirmCardboard(Tiny.B1),
            new LogMileage(Tiny.B1, 5700, Sure: true),
            new ReportDamage(Tiny.B1, "rear door", Severity.Note, "scratch"),
            new ConfirmDamage(Tiny.B1, false),
            new CountKit(Tiny.B1, Tiny.Cones.Code, 1),
            new CountKit(Tiny.B1, Tiny.FirstAid.Code, 1, Tiny.Monday),
            new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 1, Tiny.Friday),
            new ConfirmKit(Tiny.B1)));

        state.Notes.Should().Equal(
            "left mirror, to repair: cracked (incident 1) since 2026-11-16",
            "rear door, note: scratch (incident 2)",
            "traffic cones: 1 of 3",
            "fire extinguisher expires 2026-11-20",
            "first aid kit expired 2026-11-16",
            "odometer 4250 mi to 5700 mi, confirmed as read",
            "service in 300 mi",
            "weekly check overdue, last 2026-11-02",
            "gap 2 LAMP",
            "1 box missing");
    }

    [Fact]
    public void A_weekly_check_of_tonight_is_no_longer_overdue_and_may_leave_a_van_to_clean()
    {
        var depot = Tiny.Opened(carried: v => v with { WeeklyCheckedOn = Tiny.Monday.AddDays(-14) }).At(Tiny.B1, Step.Weekly);
        B1(depot).Notes.Should().Equal("weekly check overdue, last 2026-11-02");
        B1(depot.Did(new CheckWeekly(Tiny.B1, null, 0, false))).Notes.Should().Equal("to be cleaned");
    }

    [Fact]
    public void A_closed_van_with_a_note_is_ready_with_notes() =>
        B1(Closed(new ReportDamage(Tiny.B1, "rear door", Severity.Note, "scratch"))).Morning.Should().Be(Morning.ReadyWithNotes);

    [Fact]
    public void Every_readiness_and_severity_has_words_of_its_own()
    {
        Enum.GetValues<Morning>().Select(Readiness.Words).Should().Equal("ready", "ready with notes", "held", "not closed");
        Enum.GetValues<Severity>().Select(Readiness.SeverityWords).Should().OnlyHaveUniqueItems();
    }
}
