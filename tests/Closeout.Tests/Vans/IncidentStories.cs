using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Vans;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Vans;

/// <summary>Damages and mishaps from the moment they are told until a lead closes them.</summary>
public sealed class IncidentStories
{
    private static readonly Depot Two = Tiny.Opened().At(Tiny.B1, Step.Damage).At(Tiny.B2, Step.Damage);

    [Fact]
    public void Incidents_are_numbered_over_all_vans_and_over_the_whole_book()
    {
        var tonight = Two.Did(Dent(Tiny.B2), Dent(Tiny.B1), Dent(Tiny.B2));
        Incidents.Open(tonight, Tiny.B2).Select(i => i.Number).Should().Equal(1, 3);
        Incidents.Open(tonight, Tiny.B1).Select(i => i.Number).Should().Equal(2);

        var next = tonight.Next(Tiny.Friday).At(Tiny.B1, Step.Damage).Did(Dent(Tiny.B1));
        Incidents.Open(next, Tiny.B1).Select(i => (i.Number, i.Since)).Should().Equal((2, Tiny.Wednesday), (4, Tiny.Friday));
    }

    [Fact]
    public void None_after_all_withdraws_what_was_told_tonight_and_nothing_older_and_its_number_is_not_given_again()
    {
        var before = Two.Did(Dent(Tiny.B1)).Next(Tiny.Friday).At(Tiny.B1, Step.Damage).Did(Dent(Tiny.B1));

        var none = before.Did(new ConfirmDamage(Tiny.B1, None: true));
        Incidents.Open(none, Tiny.B1).Select(i => i.Number).Should().Equal(1);
        IncidentLog.Of(none).Select(i => (i.Incident.Number, i.State)).Should().Equal((1, IncidentState.Open), (2, IncidentState.Withdrawn));

        var again = none.Did(Dent(Tiny.B1));
        Incidents.Open(again, Tiny.B1).Select(i => i.Number).Should().Equal(1, 3);
        again.Next(Tiny.Friday.AddDays(1)).Vans.Incidents.Should().Be(3);
    }

    [Theory]
    [InlineData(Severity.Note, null, false)]
    [InlineData(Severity.Repair, null, false)]
    [InlineData(Severity.Unsafe, null, true)]      // unsafe is not drivable, unless somebody says otherwise
    [InlineData(Severity.Unsafe, true, true)]      // and it holds all the same
    [InlineData(Severity.Repair, true, false)]
    [InlineData(Severity.Repair, false, true)]
    [InlineData(Severity.Note, false, true)]
    public void Unsafe_holds_the_van_and_so_does_what_nobody_would_drive(Severity severity, bool? drivable, bool holds)
    {
        var depot = Two.Did(new ReportDamage(Tiny.B1, "rear", severity, "door will not lock", drivable));

        Readiness.Standing(depot, Tiny.B1).Any().Should().Be(holds);
        Incidents.Open(depot, Tiny.B1).Should().ContainSingle().Which.Holds.Should().Be(holds);
    }

    [Theory]
    [InlineData(Severity.Repair, false, "rear, to repair, not drivable: door will not lock (incident 1)")]
    [InlineData(Severity.Repair, true, "rear, to repair: door will not lock (incident 1)")]
    [InlineData(Severity.Unsafe, false, "rear, unsafe: door will not lock (incident 1)")]
    public void The_wall_says_what_it_is_and_whether_it_drives(Severity severity, bool drivable, string words) =>
        Incidents.Words(Incidents.Open(Two.Did(new ReportDamage(Tiny.B1, " rear ", severity, " door will not lock ", drivable)), Tiny.B1)[0]).Should().Be(words);

    [Theory]
    [InlineData("", null, "nobody told yet")]
    [InlineData(" L1, by telephone ", null, "told L1, by telephone")]
    [InlineData("L1", "16:41", "told L1 at 16:41")]
    [InlineData("L1", "00:05", "told L1 at 00:05")]
    public void Who_was_told_and_when_is_kept_and_carried_on(string told, string? at, string words)
    {
        var depot = Two.Did(new ReportDamage(Tiny.B1, "rear", Severity.Repair, "dent", true, told, at is null ? null : TimeOnly.Parse(at)));
        Incidents.ToldWords(Incidents.Open(depot, Tiny.B1)[0]).Should().Be(words);

        var next = Incidents.Open(depot.Next(Tiny.Friday), Tiny.B1)[0];
        Incidents.ToldWords(next).Should().Be(words);
        (next.By, next.At).Should().Be((Tiny.T1, Incidents.Open(depot, Tiny.B1)[0].At), "whoever brought the van in told it, at that moment");
    }

    [Fact]
    public void Closed_it_holds_no_longer_the_wall_says_why_tonight_and_the_next_page_knows_nothing_of_it()
    {
        var closed = Two.Did(new ReportDamage(Tiny.B1, "windshield", Severity.Unsafe, "crack")).Did(new CloseIncident(Tiny.B1, 1, " replaced, slip 12 ", Tiny.Lead));

        var state = Readiness.Of(closed, closed.Setup.Van(Tiny.B1));
        (state.Holds.Count, string.Join("; ", state.Notes)).Should().Be((0, "incident 1 closed by L1: replaced, slip 12"));
        IncidentLog.Of(closed).Should().ContainSingle().Which.Should().Match<LoggedIncident>(
            i => i.State == IncidentState.Closed && i.ClosedOn == Tiny.Wednesday && i.ClosedBy == Tiny.Lead && i.Why == "replaced, slip 12");

        var next = closed.Next(Tiny.Friday);
        Incidents.Open(next, Tiny.B1).Should().BeEmpty();
        Readiness.Of(next, next.Setup.Van(Tiny.B1)).Notes.Should().BeEmpty();
    }

    [Fact]
    public void One_of_an_earlier_day_is_closed_while_the_van_is_on_the_road()
    {
        var next = Two.Did(Dent(Tiny.B1)).Next(Tiny.Friday);
        next.Shift(Tiny.B1).Should().BeNull();

        Incidents.Open(next.Did(new CloseIncident(Tiny.B1, 1, "beaten out", Tiny.Lead)), Tiny.B1).Should().BeEmpty();
    }

    [Fact]
    public void A_lifted_hold_leaves_its_incident_on_the_wall_as_a_note_until_it_is_closed()
    {
        var lifted = Two.Did(new ReportDamage(Tiny.B1, "windshield", Severity.Unsafe, "crack")).Did(new LiftHolds(Tiny.B1, "drives to the workshop", Tiny.Lead)).Next(Tiny.Friday);
        Readiness.Of(lifted, lifted.Setup.Van(Tiny.B1)).Notes.Should().Equal("windshield, unsafe: crack (incident 1) since 2026-11-18");

        var closed = lifted.Did(new CloseIncident(Tiny.B1, 1, "replaced", Tiny.Lead)).Next(Tiny.Friday.AddDays(3));
        Readiness.Of(closed, closed.Setup.Van(Tiny.B1)).Notes.Should().BeEmpty();
    }

    private static ReportDamage Dent(Code<Van> van) => new(van, "rear", Severity.Repair, "dent");
}
