using Closeout.Facts;
using Closeout.People;
using Closeout.Screens.Forms;
using Closeout.Screens.People;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>Every way in which somebody without the right may try at the kiosk. Nothing is recorded in another's name. The list in docs/reliability.md names each.</summary>
public sealed class AtTheKioskWithoutTheRight : IDisposable
{
    private const string ToSign = "B3{Enter}{Enter}**{Enter}=n={Enter}";

    private readonly SampleKiosk kiosk = new(typesPins: false, without: ["T05", "L2"]);

    /// <summary>Keys of each form that names somebody, up to the last Enter; <c>@</c> stands for the code.</summary>
    public static TheoryData<string> Forms =>
    [
        "{F5}CO-10Y{Enter}5{Enter}@{Enter}",
        "{F5}{F5}bin{Enter}LED-G25{Enter}{Enter}7{Enter}spilled{Enter}@{Enter}",
        "{F2}led-g{F5}t{Enter}20{Enter}open house{Enter}@{Enter}",
        "{F2}Bittern{F5}x{Enter}{Enter}in the workshop{Enter}@{Enter}",
        "B4{F7}hsteering pulls{Enter}@{Enter}",
        "B4{F7}lrepaired{Enter}@{Enter}",
        "B5{F7}o30000{Enter}cluster replaced{Enter}@{Enter}",
        "B4{F7}c1{Enter}repaired{Enter}@{Enter}",
        "B4{F7}wCO-10Y{Enter}1{Enter}never found{Enter}@{Enter}",
        "{F3}bCO-10Y{Enter}1{Enter}@{Enter}",
        "{F3}wCO-10Y{Enter}1{Enter}never found{Enter}@{Enter}",
        "{F3}p80{Enter}{Enter}@{Enter}",
        "{F3}slamps{Enter}recycler, slip 7{Enter}@{Enter}",
        "B4{F7}k@{Enter}",
        "B4{F7}rwrong odometer{Enter}@{Enter}",
        "B4{F7}bT03{Enter}went home ill{Enter}@{Enter}",
        "B4{F7}x{Enter}{Enter}in the workshop{Enter}@{Enter}",
        "B4{F7}m2026-11-19{Enter}{Enter}B5{Enter}{Enter}a van is held{Enter}@{Enter}",
        "{F8}{F5}{Enter}@{Enter}",
        "{F8}{F4}12{Enter}{Enter}wrong van{Enter}@{Enter}",
        "{F2}led-g{F6}B1{Enter}depot{Enter}LED-A19-27{Enter}1{Enter}{Enter}short tonight{Enter}@{Enter}",
        "B4{F7}g7{Enter}y{Enter}@{Enter}",
        "{F9}r@{Enter}",
        "{F9}i@{Enter}",
    ];

    [Theory]
    [MemberData(nameof(Forms))]
    public void No_form_that_names_somebody_records_anything_before_the_PIN(string keys)
    {
        kiosk.Press(keys.Replace("@", "L1", StringComparison.Ordinal));

        kiosk.Session.Model.Screen.Should().BeOfType<PinScreen>(kiosk.Session.Model.Said).Which.Person.Text.Should().Be("L1");
        kiosk.Press("{Enter}{Enter}{Escape}").Entries.Should().BeEmpty();
    }

    [Fact]
    public void Another_PIN_is_taken_only_by_who_types_the_present_one()
    {
        var before = kiosk.Depot.Pins.Of(new("L1"));
        kiosk.Press("{F9}{End}{Up}c").Session.Model.Screen.Should().BeOfType<PinScreen>().Which.Person.Text.Should().Be("L1");
        kiosk.Press("iron gravel{Enter}iron gravel{Enter}{Escape}");
        kiosk.Press("c000000{Enter}");

        kiosk.Entries.Should().NotBeEmpty().And.AllBeOfType<PinFailed>();
        kiosk.Depot.Pins.Of(new("L1")).Hash.Should().Be(before.Hash);
    }

    [Fact]
    public void A_lead_is_forgotten_though_others_go_on_pressing_keys()
    {
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L1{Enter}").TypePin("L1").Entries.Should().ContainSingle();
        for (var n = 0; n < 3; n++)
        {
            kiosk.Clock.Pass(50);
            kiosk.Press("CO-10Y{Backspace}");
        }

        kiosk.Press("{Escape}{F5}CO-10Y{Enter}1{Enter}L1{Enter}").Session.Model.Screen.Should().BeOfType<PinScreen>().Which.Person.Text.Should().Be("L1");
        kiosk.Entries.Should().ContainSingle();
    }

    [Fact]
    public void A_book_that_cannot_be_written_gives_no_free_tries()
    {
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L1{Enter}");
        File.Delete(kiosk.Folder.Lock);
        Directory.CreateDirectory(kiosk.Folder.Lock);

        kiosk.Press("000000{Enter}").Session.Model.Said.Should().Contain("cannot be written");
        kiosk.TypePin("L1").Session.Model.Said.Should().Contain("1 wrong in a row. Try again in 1 second.");
        kiosk.Clock.Pass(1);
        kiosk.Press("000000{Enter}").Session.Model.Said.Should().Contain("cannot be written");
        kiosk.Clock.Pass(1);
        kiosk.TypePin("L1").Session.Model.Said.Should().Contain("2 wrong in a row");

        Directory.Delete(kiosk.Folder.Lock);
        kiosk.Clock.Pass(1);
        kiosk.TypePin("L1").Entries.Should().ContainSingle().Which.Should().BeOfType<DeliveryReceived>();
    }

    [Fact]
    public void Every_form_of_the_desk_is_in_that_list() => AllForms.Of().Should().HaveCount(23, "a new form belongs into the list above, or the one of a close-out below");

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_wrong_PIN_records_its_failure_alone(string keys)
    {
        kiosk.Press(keys.Replace("@", "L1", StringComparison.Ordinal) + "000000{Enter}");

        kiosk.Entries.Should().Equal(new PinFailed(new("L1"), "bay"));
        kiosk.Session.Model.Said.Should().Contain("(1 of 10)");
    }

    [Fact]
    public void What_was_given_to_another_van_is_said_with_a_PIN()
    {
        const string keys = "B1{Enter}{Enter}{F6}B2{Enter}LED-A19-27{Enter}1{Enter}{Enter}T02{Enter}";
        kiosk.Press(keys + "000000{Enter}").Entries.Should().SatisfyRespectively(e => e.Should().BeOfType<VanCameIn>(), e => e.Should().BeOfType<PinFailed>());
        kiosk.Clock.Pass(30);
        kiosk.TypePin("T02").Entries[^1].Should().BeOfType<StockGiven>().Which.By.Text.Should().Be("T02");
        kiosk.Session.Model.Screen.Should().BeOfType<Closeout.Screens.CloseoutScreen>();
    }

    [Fact]
    public void No_PIN_no_signature()
    {
        kiosk.Press(ToSign + "{Enter}{Enter}");
        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();

        kiosk.Press("{Escape}{Escape}B3{Enter}").Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
    }

    [Theory]
    [InlineData("000000")]
    [InlineData("L1's")]
    [InlineData("T14's")]
    public void A_wrong_PIN_or_somebody_elses_signs_nothing(string pin)
    {
        kiosk.Press(ToSign).Press((pin.EndsWith("'s", StringComparison.Ordinal) ? kiosk.PinOf(pin[..^2]) : pin) + "{Enter}");

        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
        kiosk.Entries[^1].Should().Be(new PinFailed(new("T07"), "bay"));
    }

    [Fact]
    public void Signing_in_another_name_asks_that_persons_PIN()
    {
        kiosk.Press("B3{Enter}{Enter}**{Enter}=n=T14{Enter}").TypePin("T07");

        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
        kiosk.Entries[^1].Should().Be(new PinFailed(new("T14"), "bay"));
    }

    [Theory]
    [InlineData("{F2}led-g{F5}t{Enter}20{Enter}open house{Enter}T07{Enter}")]
    [InlineData("B4{F7}hsteering pulls{Enter}T07{Enter}")]
    [InlineData("B4{F7}bT03{Enter}went home ill{Enter}T07{Enter}")]
    [InlineData("{F8}{F5}{Enter}T07{Enter}")]
    [InlineData("{F9}rT07{Enter}")]
    [InlineData("{F9}iT07{Enter}")]
    public void A_technician_is_no_lead_whatever_PIN_is_typed(string keys)
    {
        kiosk.Press(keys).TypePin("T07");

        kiosk.Session.Model.Said.Should().Contain("is not a lead");
        kiosk.Entries.Should().BeEmpty();
    }

    [Fact]
    public void A_lead_who_went_away_two_minutes_ago_is_not_believed()
    {
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L1{Enter}").TypePin("L1").Press("CO-10Y{Enter}1{Enter}L1");
        kiosk.Clock.Pass(121);

        kiosk.Press("{Enter}").Session.Model.Screen.Should().BeOfType<PinScreen>();
        kiosk.Entries.Should().ContainSingle();
    }

    [Fact]
    public void A_lead_is_forgotten_when_somebody_else_signs()
    {
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L1{Enter}").TypePin("L1").Press("{Escape}" + ToSign).TypePin("T07");
        var before = kiosk.Entries.Count;

        kiosk.Press("{F5}CO-10Y{Enter}1{Enter}L1{Enter}").Session.Model.Screen.Should().BeOfType<PinScreen>();
        kiosk.Entries.Should().HaveCount(before);
    }

    [Fact]
    public void Who_signed_is_not_thereby_believed_at_the_desk()
    {
        kiosk.Press(ToSign).TypePin("T07");

        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}T07{Enter}").Session.Model.Screen.Should().BeOfType<PinScreen>();
    }

    [Fact]
    public void A_PIN_half_typed_and_left_is_gone()
    {
        kiosk.Press(ToSign).Press(kiosk.PinOf("T07"));
        kiosk.Clock.Pass(121);
        kiosk.Session.Refresh().Should().BeTrue();

        kiosk.Session.Model.Screen.Should().BeOfType<PinScreen>().Which.Typed.Should().BeEmpty();
        kiosk.Session.Model.Said.Should().Contain("No key for 2 minutes: what was typed is gone");
        kiosk.Show();
        kiosk.Session.Refresh().Should().BeFalse("it is said once");
        kiosk.Press("{Enter}{Enter}").Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
    }

    [Theory]
    [InlineData(ToSign)]
    [InlineData("{F5}CO-10Y{Enter}5{Enter}L1{Enter}")]
    [InlineData("{F9}{Down}{Down}{Down}c")]
    public void What_is_typed_at_a_PIN_page_after_a_long_pause_stands_nowhere_in_clear(string keys)
    {
        kiosk.Press(keys + "48");
        kiosk.Clock.Pass(121);
        kiosk.Session.Refresh();

        kiosk.Press("735190").Show().Should().Contain("[••••••  ").And.NotContain("735190");
        kiosk.Clock.Pass(121);
        kiosk.Press("7351").Show().Should().Contain("[••••  ", "a key that comes before the clock was looked at is no part of the old").And.NotContain("7351");
    }

    [Theory]
    [InlineData("i{Enter}")]
    [InlineData("iron gravel{Enter}iron")]
    public void A_new_PIN_half_chosen_or_drawn_and_left_is_gone(string keys)
    {
        using var first = new SampleKiosk(typesPins: false);
        first.Press("{F9}{Down}{Down}{Down}c").TypePin("T07").Press(keys).Clock.Pass(121);
        first.Session.Refresh().Should().BeTrue();

        first.Session.Model.Screen.Should().BeOfType<PeopleScreen>();
        first.Session.Model.Said.Should().Contain("nothing was recorded. Enter the PIN again");
        first.Press("{Enter}{Enter}").Entries.OfType<PinSet>().Should().BeEmpty();
    }

    [Fact]
    public void An_issued_PIN_left_on_the_screen_is_gone()
    {
        kiosk.Press("{F9}iL1{Enter}").TypePin("L1");
        var pin = ((IssuedScreen)kiosk.Session.Model.Screen).Pin;
        kiosk.Press("{F1}").Clock.Pass(121);

        kiosk.Session.Refresh().Should().BeTrue();
        kiosk.Show().Should().NotContain(pin);
        kiosk.Press("{Escape}").Show().Should().NotContain(pin);
    }

    [Fact]
    public void A_lead_without_a_PIN_cannot_take_one()
    {
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L2{Enter}");

        kiosk.Session.Model.Said.Should().Contain("L2 Hale Causeway has no PIN yet").And.Contain("another lead");
        kiosk.Session.Model.Screen.Should().BeOfType<FormScreen>();
        kiosk.Press("{Escape}{F9}{End}iL2{Enter}").Session.Model.Said.Should().Contain("another lead");
        kiosk.Entries.Should().BeEmpty();
    }

    [Fact]
    public void A_PIN_tried_before_the_wait_is_over_is_not_looked_at_even_if_it_is_right()
    {
        kiosk.Press(ToSign + "000000{Enter}000000{Enter}").TypePin("T07");

        kiosk.Session.Model.Said.Should().Contain("1 wrong in a row").And.Contain("in 1 s");
        kiosk.Entries.OfType<PinFailed>().Should().ContainSingle("what is not looked at is no failure");
        kiosk.Clock.Pass(1);
        kiosk.TypePin("T07").Depot.Shift(new("B3"))!.IsClosed.Should().BeTrue();
        kiosk.Entries[^2].Should().Be(new PinPassed(new("T07"), "bay"));
    }

    [Fact]
    public void A_restart_of_the_program_ends_no_wait_and_no_lock()
    {
        kiosk.Press(ToSign + "000000{Enter}").Clock.Pass(1);
        kiosk.Press("000000{Enter}").Restart().Press("B3{Enter}{Enter}").TypePin("T07");
        kiosk.Session.Model.Said.Should().Contain("2 wrong in a row").And.Contain("in 2 s");

        for (var n = 0; n < 8; n++)
        {
            kiosk.Clock.Pass(30);
            kiosk.Press("000000{Enter}");
        }

        kiosk.Clock.Pass(3_600);
        kiosk.Restart().Press("B3{Enter}{Enter}").Session.Model.Said.Should().Contain("locked after 10 wrong tries");
        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
    }

    [Fact]
    public void Another_kiosk_gives_no_new_tries()
    {
        kiosk.Press(ToSign + "000000{Enter}").Restart("yard").Press("B3{Enter}{Enter}").TypePin("T07");

        kiosk.Session.Model.Said.Should().Contain("1 wrong in a row");
        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
    }

    [Fact]
    public void Trying_everybody_at_one_kiosk_stops_it()
    {
        foreach (var code in new[] { "T02", "T03", "T07", "T09" })
        {
            kiosk.Press($"{{F5}}CO-10Y{{Enter}}5{{Enter}}{code}{{Enter}}");
            for (var n = 0; n < 5; n++)
            {
                kiosk.Press("000000{Enter}").Clock.Pass(30);
            }

            kiosk.Press("{Escape}{Escape}{Escape}");
        }

        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}T14{Enter}").TypePin("T14").Session.Model.Said.Should().Contain("20 wrong PINs at bay: locked for 15 minutes");
        kiosk.Entries.Should().AllBeOfType<PinFailed>().And.HaveCount(20);
        kiosk.Clock.Pass(900);
        kiosk.Session.Refresh();
        kiosk.Press("{Escape}{Escape}{F5}CO-10Y{Enter}5{Enter}T14{Enter}").TypePin("T14").Entries.OfType<DeliveryReceived>().Should().ContainSingle();
    }

    [Fact]
    public void Keys_recorded_from_a_lead_who_was_known_do_nothing_in_a_new_session()
    {
        const string recorded = "{F5}CO-10Y{Enter}1{Enter}L1{Enter}";
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L1{Enter}").TypePin("L1").Press("{Escape}" + recorded).Entries.Should().HaveCount(2);

        kiosk.Restart().Press(recorded + "{Enter}{Enter}");

        kiosk.Session.Model.Screen.Should().BeOfType<PinScreen>();
        kiosk.Entries.Should().HaveCount(2);
    }

    [Fact]
    public void The_keys_of_an_old_PIN_do_nothing_once_a_lead_issued_another()
    {
        new Desk(kiosk.Book, kiosk.Clock).Record(new IssuePin(new("T07"), new Pins(1).Hash("735190"), new("L1"))).Should().BeNull();

        kiosk.Press(ToSign).TypePin("T07").Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
    }

    [Fact]
    public void A_lead_whose_PIN_was_reset_elsewhere_is_known_no_longer()
    {
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L1{Enter}").TypePin("L1");
        new Desk(Closeout.Store.Book.Open(kiosk.Folder), kiosk.Clock).Record(new ResetPin(new("L1"), new("L1"))).Should().BeNull();
        kiosk.Session.Refresh();

        kiosk.Press("CO-10Y{Enter}1{Enter}L1{Enter}").Session.Model.Said.Should().Contain("has no PIN yet");
        kiosk.Entries.OfType<DeliveryReceived>().Should().ContainSingle();
    }

    [Fact]
    public void A_PIN_of_another_cannot_be_taken_while_there_is_one()
    {
        kiosk.Press(ToSign + "i{Enter}");

        kiosk.Session.Model.Screen.Should().BeOfType<PinScreen>().Which.Stage.Should().Be(PinStage.Ask);
        kiosk.Entries.OfType<PinSet>().Should().BeEmpty();
        kiosk.Entries[^1].Should().Be(new PinFailed(new("T07"), "bay"), "I is a wrong PIN there");
    }

    public void Dispose() => kiosk.Dispose();
}
