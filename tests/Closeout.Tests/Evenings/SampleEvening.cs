using Closeout.Commands;
using Closeout.DayBook;
using Closeout.Restock;
using Closeout.Store;
using Closeout.Tests.Screens;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Evenings;

/// <summary>The sample day shows what a reader should see: its story and every turn of the plan.</summary>
public sealed class SampleEvening
{
    [Fact]
    public void The_plan_has_a_line_of_each_basis_a_shared_shortage_a_carton_rounded_up_and_an_order()
    {
        using var kiosk = Played();
        var plan = kiosk.Session.Desk.Plan;

        plan.Lines.Select(l => l.Target.Basis).Distinct().Should().BeEquivalentTo([Basis.Low, Basis.Booked, Basis.High]);
        plan.Lines.Where(l => l.Short > 0).GroupBy(l => l.Item.Code).Select(g => g.Key.Text).Should().BeEquivalentTo("CO-10Y", "LED-G25");
        plan.Lines.Where(l => l.Item.Code.Text == "LED-G25" && l.Units > 0).Should().HaveCountGreaterThan(1, "what is short is shared out");
        plan.Lines.Should().Contain(l => l.Units > l.Need, "a carton is rounded up");
        plan.Lines.Should().Contain(l => l.FromOpened > 0, "a carton is opened");
        plan.Shelf.Should().Contain(s => s.Order.Cartons > 0);
    }

    [Fact]
    public void The_wall_tells_the_story_of_the_evening()
    {
        using var kiosk = Played();

        var vans = Readiness.Of(kiosk.Depot);

        vans.Select(v => v.Morning).Should().Equal(Morning.Ready, Morning.ReadyWithNotes, Morning.ReadyWithNotes, Morning.Held, Morning.NotClosed, Morning.Held);
        vans[1].Shift!.Should().Match<Shift>(s => s.WeeklyDue && s.Photos.Count == 1);
        vans[1].Shift!.Weekly!.NotInOrder.Should().Equal("wipers");
        vans[1].Notes.Should().Equal("wipers, to repair: left blade torn, smears (incident 3)", "First aid kit expires 2026-12-09", "service in 410 mi, about 2026-11-27");
        vans[2].Notes.Should().Equal("left side, note: scratch below the sliding door, old paint (incident 4)", "Personal CO monitor not tested, was due 2026-11-11", "gap 1 LED-G25");
        vans[3].Holds.Should().Equal("windshield, unsafe: crack across the driver's view (incident 2)");
        vans[3].Notes.Should().Equal("Combustible gas detector to be tested by 2026-11-27");
        vans[4].Shift.Should().BeNull();
        vans[4].Notes.Should().Equal(
            "rear door, to repair: latch sticks, closes when lifted (incident 1) since 2026-11-12", "Fire extinguisher expires 2026-12-31", "weekly check overdue, last 2026-11-06");
        vans[5].Holds.Should().Equal("Fire extinguisher: 0 of 1", "refueled with diesel, takes regular: do not start it, ask the shop");
        vans[5].Notes.Should().Equal("odometer 35652 mi to 35923 mi, confirmed as read", "2 boxes missing (STRIP-7 since 2026-11-17)");
    }

    private static SampleKiosk Played()
    {
        var kiosk = new SampleKiosk();
        new Rehearsal(kiosk.Session.Desk, new Attachments(kiosk.Folder)).Play(SampleDay.Answers).Should().BeEmpty();
        return kiosk;
    }
}
