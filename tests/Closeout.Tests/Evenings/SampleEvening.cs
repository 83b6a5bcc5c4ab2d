using Closeout.Commands;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Tests.Screens;
using Closeout.Vans;
using Closeout.Store;
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
        vans[1].Shift!.WeeklyDue.Should().BeTrue();
        vans[2].Notes.Should().Contain("gap 1 LED-G25");
        vans[3].Holds.Should().ContainSingle().Which.Should().StartWith("windscreen, unsafe");
        vans[4].Shift.Should().BeNull();
        vans[5].Holds.Should().Equal("Fire extinguisher: 0 of 1");
        vans[5].Notes.Should().Contain("1 box missing");
    }

    private static SampleKiosk Played()
    {
        var kiosk = new SampleKiosk();
        Rehearsal.Play(kiosk.Session.Desk, new Attachments(kiosk.Folder), EveningAnswers.Of(DayFolder.Read(Repository.SampleDay).Evening)).Should().BeEmpty();
        return kiosk;
    }
}
