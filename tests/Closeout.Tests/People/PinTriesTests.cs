using Closeout.DayBook;
using Closeout.Facts;
using Closeout.People;
using Closeout.Tests.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.People.TinyPeople;

namespace Closeout.Tests.People;

public sealed class PinTriesTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 4)]
    [InlineData(4, 8)]
    [InlineData(5, 16)]
    [InlineData(6, 30)]
    [InlineData(99, 30)]
    public void The_wait_doubles_up_to_thirty_seconds(int failures, int seconds) => PinTries.Wait(failures).TotalSeconds.Should().Be(seconds);

    [Fact]
    public void After_each_wrong_one_the_next_is_looked_at_only_when_the_wait_is_over() => Gen.Int[1, 9].Holds(failures =>
    {
        var depot = WithPins().Wrong(failures);
        var (last, wait) = (30 * (failures - 1), PinTries.Wait(failures).TotalSeconds);

        depot.At(last + wait - 0.5)!.Code.Should().Be("pin-waits");
        depot.At(last + wait).Should().BeNull();
    });

    [Fact]
    public void Somebody_else_waits_too_at_the_same_kiosk_and_not_at_another()
    {
        var depot = WithPins().Wrong(4);

        depot.At(97, "L1")!.Text.Should().Contain("4 wrong").And.Contain("in 1 s");
        depot.At(97, "L1", "yard").Should().BeNull();
        depot.At(97, "T1", "yard")!.Code.Should().Be("pin-waits", "the person's own wait goes along");
    }

    [Fact]
    public void Ten_in_a_row_lock_a_person_until_a_lead_resets_or_issues_a_PIN()
    {
        var depot = WithPins().Wrong(10);

        depot.At(100_000)!.Code.Should().Be("pin-locked");
        depot.At(100_000, kiosk: "yard")!.Code.Should().Be("pin-locked");
        depot.Did(301, new ResetPin(Tiny.T1, Tiny.Lead)).Pins.Of(Tiny.T1).Should().Be(new PersonPin(Tiny.T1, null, false, 0, null));
        depot.Did(301, new IssuePin(Tiny.T1, Known, Tiny.Lead)).At(100_000).Should().BeNull();
    }

    [Fact]
    public void The_right_one_ends_the_row_of_the_person_and_of_the_kiosk()
    {
        var depot = WithPins().Wrong(9).Did(300, new NoteRight(Tiny.T1, Bay));

        depot.At(300).Should().BeNull();
        depot.At(300, "L1").Should().BeNull();
        depot.Wrong(9).Pins.Of(Tiny.T1).IsLocked.Should().BeFalse("nine, then nine more, are not ten in a row");
    }

    [Fact]
    public void Twenty_wrong_within_fifteen_minutes_at_one_kiosk_whosever_let_it_rest_for_fifteen_minutes()
    {
        var depot = WithPins();
        for (var n = 0; n < 20; n++)
        {
            // A right one in between ends a row, not the twenty.
            depot = depot.Did(40 * n, new NoteWrong(n % 2 == 0 ? Tiny.T1 : Tiny.Lead, Bay), new NoteRight(Tiny.T1, Bay), new NoteRight(Tiny.Lead, Bay));
        }

        depot.At(760 + 899)!.Text.Should().Contain("20 wrong PINs at bay: locked for 1 second");
        depot.At(760 + 900).Should().BeNull();
        depot.At(760, kiosk: "yard").Should().BeNull();
    }

    [Fact]
    public void Twenty_wrong_over_a_longer_time_do_not()
    {
        var depot = WithPins();
        for (var n = 0; n < 20; n++)
        {
            depot = depot.Did(48 * n, new NoteWrong(Tiny.T1, Bay), new NoteRight(Tiny.T1, Bay));
        }

        depot.At(48 * 19 + 1).Should().BeNull();
    }

    [Fact]
    public void The_next_page_knows_PINs_failures_and_kiosks()
    {
        var depot = WithPins().Wrong(10).Did(400, new NoteWrong(Tiny.Lead, "yard"));
        var next = depot.Next(Tiny.Wednesday.AddDays(1));

        next.Pins.Should().BeEquivalentTo(depot.Pins);
        next.At(100_000)!.Code.Should().Be("pin-locked");
    }

    [Fact]
    public void A_clock_set_back_ends_a_wait_and_not_a_lock()
    {
        WithPins().Wrong(9).At(-3_600).Should().BeNull();
        WithPins().Wrong(10).At(-3_600)!.Code.Should().Be("pin-locked");
    }

    [Fact]
    public void A_PIN_is_an_entry_of_people_whom_the_setup_has_and_of_no_rehearsal()
    {
        var strange = () => WithPins().Apply(new Recorded(4, Tiny.FiveOClock, new PinFailed(new("T9"), Bay)));
        strange.Should().Throw<InvalidOperationException>().WithMessage("*technician T9*");
        var bare = () => WithPins().Apply(new Recorded(4, Tiny.FiveOClock, new PinFailed(Tiny.T2, Bay)));
        bare.Should().Throw<InvalidOperationException>("nobody can miss a PIN that is not there");
        var rehearsed = () => (WithPins() with { Rehearsal = true }).Apply(new Recorded(4, Tiny.FiveOClock, new PinReset(Tiny.T1, Tiny.Lead)));
        rehearsed.Should().Throw<InvalidOperationException>();
        var unproven = () => Tiny.Opened().At(Tiny.B1, Step.SignOff) is var d ? d.Apply(new Recorded(d.Number + 1, Tiny.FiveOClock, new Signed(Tiny.B1, Tiny.T1, Proof.Rehearsal))) : null;
        unproven.Should().Throw<InvalidOperationException>().WithMessage("*no rehearsal*");
    }
}
