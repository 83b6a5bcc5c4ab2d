using Closeout.Commands;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>After the sample evening: B6 is loaded by keys.</summary>
public sealed class LoadingByKeys : IDisposable
{
    private static readonly Code<Van> B6 = new("B6");

    private readonly SampleKiosk kiosk = new();
    private readonly List<LoadedLine> planned;
    private readonly int before;

    public LoadingByKeys()
    {
        new Rehearsal(kiosk.Session.Desk, new Attachments(kiosk.Folder)).Play(SampleDay.Answers).Should().BeEmpty();
        planned = [.. StowOrder.ToTake(kiosk.Depot, kiosk.Session.Desk.Plan, B6)
            .Select(l => new LoadedLine(l.Item.Code, l.Sealed, l.FromBin + l.FromOpened, 0, l.Units))];
        before = kiosk.Entries.Count;
        kiosk.Press("B6{F4}");
    }

    private IEnumerable<VanLoaded> Loaded => kiosk.Entries.Skip(before).OfType<VanLoaded>();

    private Form Form => ((LoadScreen)kiosk.Session.Model.Screen).Form;

    [Fact]
    public void Line_by_line_in_stow_order_each_item_is_an_entry_with_what_was_planned()
    {
        planned.Should().HaveCountGreaterThan(3);
        for (var keys = 0; kiosk.Session.Model.Screen is LoadScreen && keys < 40; keys++)
        {
            kiosk.Press("{Enter}");
        }

        Loaded.Should().OnlyContain(e => e.Lines.Count == 1 && e.Van == B6);
        Loaded.SelectMany(e => e.Lines).Select(l => l with { Opened = 0 }).Should().Equal(planned);
        kiosk.Session.Model.Said.Should().Contain("nothing is left to load");
    }

    [Fact]
    public void All_at_once_is_one_entry()
    {
        kiosk.Press("=");
        Loaded.Should().ContainSingle().Which.Lines.Select(l => l with { Opened = 0 }).Should().Equal(planned);
        kiosk.Session.Model.Screen.Should().BeOfType<WallScreen>();
        kiosk.Session.Desk.Plan.Lines.Where(l => l.Van.Code == B6).Sum(l => l.Units).Should().Be(0);
    }

    [Fact]
    public void A_short_pick_is_recorded_as_typed_and_the_rest_is_planned_for_the_others()
    {
        var globes = planned.Single(l => l.Item.Text == "LED-G25");
        var others = Others(globes.Item);
        var down = planned.TakeWhile(l => l.Item != globes.Item).Sum(l => Fields(l.Item));
        kiosk.Press(string.Concat(Enumerable.Repeat("{Down}", down)) + string.Concat(Enumerable.Repeat("0{Enter}", Fields(globes.Item))));

        Loaded.Should().ContainSingle().Which.Lines.Should().Equal(new LoadedLine(globes.Item, 0, 0, 0, globes.Planned));
        kiosk.Session.Desk.Plan.Lines.Where(l => l.Van.Code == B6 && l.Item.Code == globes.Item).Sum(l => l.Units).Should().Be(0);
        Others(globes.Item).Should().BeGreaterThan(others, "globes are short, and others lack them");
    }

    [Fact]
    public void A_line_typed_and_the_rest_at_once_takes_what_was_typed_and_the_others_as_planned()
    {
        var second = planned[1].Item;
        kiosk.Press(string.Concat(Enumerable.Repeat("{Down}", Fields(planned[0].Item))) + "1=");
        var lines = Loaded.Should().ContainSingle().Which.Lines;
        var line = lines.Single(l => l.Item == second);
        (line.Sealed == 1 || line.Loose == 1).Should().BeTrue();
        lines.Where(l => l.Item != second).Select(l => l with { Opened = 0 }).Should().Equal(planned.Where(l => l.Item != second));
    }

    [Fact]
    public void What_was_typed_on_one_line_is_not_lost_when_another_is_confirmed()
    {
        var (first, fields) = (planned[0].Item, Fields(planned[0].Item));
        kiosk.Press("0" + string.Concat(Enumerable.Repeat("{Down}", fields)) + string.Concat(Enumerable.Repeat("{Enter}", Fields(planned[1].Item))));
        Loaded.Should().ContainSingle().Which.Lines.Should().ContainSingle(l => l.Item == planned[1].Item);

        kiosk.Press("=");
        var line = Loaded.Last().Lines.Single(l => l.Item == first);
        (planned[0].Sealed > 0 ? line.Sealed : line.Loose).Should().Be(0, "0 was typed, and nobody took it back");
    }

    [Fact]
    public void A_line_loaded_is_gone_from_the_form()
    {
        kiosk.Press(string.Concat(Enumerable.Repeat("{Enter}", Fields(planned[0].Item))));
        Form.Fields.Should().NotContain(f => f.Name.StartsWith(planned[0].Item.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_van_that_is_not_closed_says_why_and_stays()
    {
        kiosk.Press("{Escape}").Press("B5{F4}=");
        Loaded.Should().BeEmpty();
        kiosk.Session.Model.Said.Should().Contain("is not closed");
        kiosk.Session.Model.Screen.Should().BeOfType<LoadScreen>();
    }

    public void Dispose() => kiosk.Dispose();

    private int Fields(Code<Item> item) => planned.Where(l => l.Item == item).Sum(l => (l.Sealed > 0 ? 1 : 0) + (l.Loose > 0 ? 1 : 0));

    private int Others(Code<Item> item) => kiosk.Session.Desk.Plan.Lines.Where(l => l.Van.Code != B6 && l.Item.Code == item).Sum(l => l.Units);
}
