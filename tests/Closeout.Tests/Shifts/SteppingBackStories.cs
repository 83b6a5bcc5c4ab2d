using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>Somebody remembers something at a later step.</summary>
public class SteppingBackStories
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly Code<Item> Shower = Tiny.Shower.Code;

    /// <summary>One carton of lamps and one of showerheads emptied, both boxes counted, at the safety kit.</summary>
    private static readonly Depot AtKit = Tiny.Opened("B1: 2+5 LAMP, 2+0 SHOWER").At(Tiny.B1, Step.Leftovers).Did(
        new CountLeftover(Tiny.B1, Lamp, 1, 0, 3),
        new CountLeftover(Tiny.B1, Shower, 1, 0, 0),
        new ConfirmLeftovers(Tiny.B1),
        new CountBoxes(Tiny.B1, Lamp, 1),
        new CountBoxes(Tiny.B1, Shower, 1),
        new ConfirmCardboard(Tiny.B1),
        new LogMileage(Tiny.B1, 1040),
        new ReportDamage(Tiny.B1, "rear door", Severity.Note, "scratch"),
        new ConfirmDamage(Tiny.B1, false));

    [Fact]
    public void Other_loose_units_and_the_same_boxes_leave_the_close_out_where_it_stands()
    {
        var shift = AtKit.Did(new CountLeftover(Tiny.B1, Lamp, 1, 2, 1)).Shift(Tiny.B1)!;
        shift.Step.Should().Be(Step.Kit);
        shift.FlattenedOf(Lamp).Should().Be(1);
    }

    [Fact]
    public void Another_number_of_emptied_cartons_asks_cardboard_again_and_then_goes_on_from_the_kit()
    {
        var back = AtKit.Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 3));
        back.Shift(Tiny.B1)!.Step.Should().Be(Step.Cardboard);
        back.Shift(Tiny.B1)!.Boxes.Keys.Should().Equal(Shower);
        back.Refuses(new CountKit(Tiny.B1, Tiny.Cones.Code, 3)).Code.Should().Be("too-early");

        var on = back.Did(new ConfirmCardboard(Tiny.B1)).Shift(Tiny.B1)!;
        on.Step.Should().Be(Step.Kit);
        on.FlattenedOf(Lamp).Should().Be(2, "what was not counted again is as expected");
        on.Mileage!.EndMi.Should().Be(1040);
        on.Damages.Should().ContainSingle();
    }

    [Fact]
    public void Two_items_recounted_ask_for_the_boxes_of_both_again()
    {
        var back = AtKit.Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 3), new CountLeftover(Tiny.B1, Shower, 0, 0, 0));

        back.Shift(Tiny.B1)!.Boxes.Should().BeEmpty("both were counted against another number");
    }

    [Fact]
    public void Boxes_counted_but_not_yet_confirmed_are_asked_again_too()
    {
        var back = Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers).Did(
            new CountLeftover(Tiny.B1, Lamp, 1, 0, 3),
            new ConfirmLeftovers(Tiny.B1),
            new CountBoxes(Tiny.B1, Lamp, 1),
            new CountLeftover(Tiny.B1, Lamp, 0, 0, 3),
            new ConfirmCardboard(Tiny.B1));

        CardboardTotals.Rows(back, Tiny.B1).Should().ContainSingle().Which.Missing.Should().Be(0, "nobody counted against two");
    }

    [Fact]
    public void The_odometer_read_again_replaces_the_reading_and_asks_nothing_else()
    {
        var shift = AtKit.Did(new LogMileage(Tiny.B1, 1055)).Shift(Tiny.B1)!;
        (shift.Step, shift.Mileage!.DistanceMi).Should().Be((Step.Kit, 55m));
    }

    [Fact]
    public void No_damage_after_all_withdraws_what_this_close_out_reported()
    {
        var shift = AtKit.Did(new ConfirmDamage(Tiny.B1, true)).Shift(Tiny.B1)!;
        (shift.Step, shift.Damages.Count).Should().Be((Step.Kit, 0));
    }

    [Fact]
    public void At_the_sign_off_everything_may_still_be_changed_and_after_it_nothing()
    {
        var signOff = AtKit.Did(new ConfirmKit(Tiny.B1));
        signOff.Shift(Tiny.B1)!.Step.Should().Be(Step.SignOff, "no weekly check is due on a Wednesday");
        signOff.Did(new CountKit(Tiny.B1, Tiny.Cones.Code, 2), new CheckWeekly(Tiny.B1, null, 0, true)).Shift(Tiny.B1)!.Step.Should().Be(Step.SignOff);

        var signed = signOff.Did(new Sign(Tiny.B1, Tiny.T2));
        signed.Shift(Tiny.B1)!.IsClosed.Should().BeTrue();
        signed.Shift(Tiny.B1)!.Signed!.Technician.Should().Be(Tiny.T2, "any technician may sign for any van");
        signed.Refuses(new CountKit(Tiny.B1, Tiny.Cones.Code, 3)).Code.Should().Be("already-closed");
    }
}
