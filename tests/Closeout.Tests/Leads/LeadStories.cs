using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Shifts.Steps;
using Closeout.Turning;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Leads;

public sealed class LeadStories
{
    private static readonly Code<Technician> Second = new("L2");
    private static readonly Code<VisitKind> Install = new("install");

    private static readonly Setup TwoLeads = Tiny.Setup with { Crew = [.. Tiny.Setup.Crew, new(Second, "Lou Invented", true, null, [DayOfWeek.Thursday])] };

    private static readonly Depot Evening = Tiny.Opened("B1: 2+5 LAMP; B2: 1+0 LAMP; shelf: 3 LAMP", setup: TwoLeads);

    private static readonly Depot Signed = Evening.At(Tiny.B1, Step.Closed);

    [Fact]
    public void A_lead_checks_what_somebody_else_closed_out_and_the_wall_says_so()
    {
        var after = Signed.Did(new CheckCloseout(Tiny.B1, Tiny.Lead));

        after.Shift(Tiny.B1)!.Checked!.Lead.Should().Be(Tiny.Lead);
        Refused(after, new CheckCloseout(Tiny.B1, Second)).Should().Be("checked-already");
    }

    [Fact]
    public void Nobody_checks_his_own_close_out()
    {
        var own = Evening.Did(new ComeIn(Tiny.B1, Tiny.Lead)).At(Tiny.B1, Step.SignOff).Did(new Sign(Tiny.B1, Second));

        Refused(own, new CheckCloseout(Tiny.B1, Tiny.Lead)).Should().Be("own-closeout", "that lead brought it in");
        Refused(own, new CheckCloseout(Tiny.B1, Second)).Should().Be("own-closeout", "that lead signed it");
    }

    [Fact]
    public void A_reopened_close_out_stands_at_its_sign_off_and_takes_another_answer()
    {
        var after = Signed.Did(new Reopen(Tiny.B1, "odometer misread", Tiny.Lead));
        after.Shift(Tiny.B1)!.Step.Should().Be(Step.SignOff);

        var mended = after.Did(new LogMileage(Tiny.B1, 1055)).Did(new Sign(Tiny.B1, Tiny.T1));
        (mended.Shift(Tiny.B1)!.IsClosed, mended.Shift(Tiny.B1)!.Mileage!.EndMi).Should().Be((true, 1055));
    }

    [Fact]
    public void A_check_does_not_outlast_a_reopening() =>
        Signed.Did(new CheckCloseout(Tiny.B1, Tiny.Lead)).Did(new Reopen(Tiny.B1, "odometer misread", Tiny.Lead)).Did(new Sign(Tiny.B1, Tiny.T1)).Shift(Tiny.B1)!.Checked.Should().BeNull();

    [Fact]
    public void What_was_loaded_since_forbids_a_reopening()
    {
        var loaded = Signed.Take(new VanLoaded(Tiny.B1, [new(Tiny.Lamp.Code, 1, 0, 0, 10)], [new Move(Tiny.Lamp.Code, 10, Place.Shelf, Place.Sealed(Tiny.B1))], null));

        Refused(loaded, new Reopen(Tiny.B1, "odometer misread", Tiny.Lead)).Should().Be("loaded-since");
    }

    [Fact]
    public void A_lead_signs_for_whoever_went_home_and_the_wall_names_both()
    {
        var after = Evening.At(Tiny.B1, Step.SignOff).Did(new SignFor(Tiny.B1, Tiny.T1, "went home ill", Tiny.Lead));

        after.Shift(Tiny.B1)!.IsClosed.Should().BeTrue();
        Readiness.Of(after, after.Setup.Van(Tiny.B1)).Notes.Should().Contain(n => n.Contains("signed for T1 by L1: went home ill"));
        Refused(Evening.At(Tiny.B2, Step.Kit), new SignFor(Tiny.B2, Tiny.T1, "went home ill", Tiny.Lead)).Should().Be("too-early");
    }

    [Fact]
    public void A_van_that_stayed_in_is_done_and_its_lines_are_no_longer_provisional()
    {
        var after = Evening.Did(new ExplainVan(Tiny.B2, StayedIn: true, "in the workshop", Tiny.Lead));

        after.IsDone(Tiny.B2).Should().BeTrue();
        RestockPlan.For(after).Lines.Where(l => l.Van.Code == Tiny.B2).Should().NotBeEmpty().And.OnlyContain(l => !l.Provisional);
        Refused(Signed, new ExplainVan(Tiny.B1, true, "why", Tiny.Lead)).Should().Be("already-closed");
        Refused(Evening.At(Tiny.B1, Step.Kit), new ExplainVan(Tiny.B1, true, "why", Tiny.Lead)).Should().Be("already-in", "a van that came in was out");
    }

    [Fact]
    public void A_van_that_comes_in_after_all_is_no_longer_explained()
    {
        var after = Evening.Did(new ExplainVan(Tiny.B2, true, "in the workshop", Tiny.Lead)).Did(new ComeIn(Tiny.B2, Tiny.T2));
        (after.IsDone(Tiny.B2), after.Vans.Explained.Count).Should().Be((false, 0));
    }

    [Fact]
    public void Moved_visits_are_planned_for_the_other_van_and_none_is_lost()
    {
        var booked = Evening.Planned(p => p with { Bookings = [new(Tiny.Wednesday.AddDays(1), Tiny.B1, Install, 3), new(Tiny.Wednesday.AddDays(1), Tiny.B2, Install, 1)] });
        var after = booked.Did(new MoveBookings(Tiny.Wednesday.AddDays(1), Tiny.B1, Tiny.B2, null, "B1 is held", Tiny.Lead));

        after.Planning.Bookings.Should().Equal(new Booking(Tiny.Wednesday.AddDays(1), Tiny.B2, Install, 4));
        Refused(after, new MoveBookings(Tiny.Wednesday.AddDays(1), Tiny.B1, Tiny.B2, null, "again", Tiny.Lead)).Should().Be("nothing-to-move");
        Refused(after, new MoveBookings(Tiny.Wednesday.AddDays(1), Tiny.B2, Tiny.B2, null, "to itself", Tiny.Lead)).Should().Be("nothing-to-move");
        Refused(after, new MoveBookings(Tiny.Wednesday, Tiny.B2, Tiny.B1, null, "today", Tiny.Lead)).Should().Be("date-is-over");
    }

    [Fact]
    public void The_day_does_not_end_while_a_van_is_open_and_nobody_said_why()
    {
        var (page, refusal) = new EndDay(Tiny.Friday, Tiny.Lead).Decide(Signed);
        (page, refusal!.Code).Should().Be((null, "vans-open"));
        refusal.Text.Should().Contain("B2 Bittern").And.Contain("B3 Curlew").And.NotContain("B1");

        var explained = Signed.Did(new ExplainVan(Tiny.B2, true, "in the workshop", Tiny.Lead), new ExplainVan(Tiny.B3, false, "broke down, towed", Tiny.Lead));
        var next = (PageOpened)new EndDay(Tiny.Friday, Tiny.Lead).Decide(explained).Entry!;
        (next.Date, next.EndedBy).Should().Be((Tiny.Friday, Tiny.Lead));
    }

    [Theory]
    [InlineData("2026-11-18", "not-after")]
    [InlineData("2026-11-17", "not-after")]
    public void The_next_date_lies_after_today(string next, string code) =>
        new EndDay(DateOnly.ParseExact(next, "yyyy-MM-dd"), Tiny.Lead).Decide(Signed).Refusal!.Code.Should().Be(code);

    [Fact]
    public void The_next_date_lies_at_most_sixty_days_ahead()
    {
        var done = Signed.Did(new ExplainVan(Tiny.B2, true, "in the workshop", Tiny.Lead), new ExplainVan(Tiny.B3, false, "broke down, towed", Tiny.Lead));
        ((PageOpened)new EndDay(Tiny.Wednesday.AddDays(60), Tiny.Lead).Decide(done).Entry!).Date.Should().Be(Tiny.Wednesday.AddDays(60));
        new EndDay(Tiny.Wednesday.AddDays(61), Tiny.Lead).Decide(done).Refusal!.Code.Should().Be("too-far-ahead");
    }

    [Fact]
    public void The_next_date_offered_is_the_next_on_which_anybody_is_rostered()
    {
        DayEnd.Next(Tiny.Opened(date: Tiny.Friday)).Should().Be(Tiny.Friday.AddDays(1), "T3 works on Saturdays");
        DayEnd.Next(Tiny.Opened(date: Tiny.Friday.AddDays(1))).Should().Be(Tiny.Monday.AddDays(7));
        DayEnd.Next(Tiny.Opened(date: Tiny.Friday, setup: Tiny.Setup with { Crew = [] })).Should().Be(Tiny.Friday.AddDays(1));
    }

    public static TheoryData<LeadCommand> Everything(string lead) =>
    [
        new CheckCloseout(Tiny.B1, new(lead)), new Reopen(Tiny.B1, "why", new(lead)), new SignFor(Tiny.B1, Tiny.T1, "why", new(lead)),
        new ExplainVan(Tiny.B2, true, "why", new(lead)), new MoveBookings(Tiny.Friday, Tiny.B1, Tiny.B2, null, "why", new(lead)),
    ];

    [Theory]
    [MemberData(nameof(Everything), "T1", DisableDiscoveryEnumeration = true)]
    public void A_technician_does_nothing_of_it(LeadCommand command) => Refused(Signed, command).Should().Be("only-a-lead");

    [Theory]
    [MemberData(nameof(Everything), "X9", DisableDiscoveryEnumeration = true)]
    public void Nor_does_somebody_whom_nobody_knows(LeadCommand command) => Refused(Signed, command).Should().Be("no-such-technician");

    [Fact]
    public void Nothing_goes_without_a_reason()
    {
        Refused(Signed, new Reopen(Tiny.B1, " ", Tiny.Lead)).Should().Be("no-words");
        Refused(Evening, new ExplainVan(Tiny.B2, true, "", Tiny.Lead)).Should().Be("no-words");
        Refused(Evening.At(Tiny.B1, Step.SignOff), new SignFor(Tiny.B1, Tiny.T1, "", Tiny.Lead)).Should().Be("no-words");
        new SignFor(Tiny.B2, Tiny.T1, "", Tiny.Lead).NotAllowed(Evening)!.Code.Should().Be("no-words");
    }

    private static string Refused(Depot depot, LeadCommand command) => command.Decide(depot).Refusal!.Code;
}
