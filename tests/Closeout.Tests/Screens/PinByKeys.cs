using Closeout.Facts;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Screens.People;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>PINs at the kiosk, for those who have the right.</summary>
public sealed class PinByKeys
{
    private const string ToSign = "B3{Enter}{Enter}**{Enter}=n={Enter}";
    private const string Delivery = "{F5}CO-10Y{Enter}5{Enter}L1{Enter}";

    [Fact]
    public void A_signature_asks_the_signers_PIN_in_dots_and_is_proven_by_it()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        kiosk.Press(ToSign).Press(kiosk.PinOf("T07"));

        kiosk.Session.Model.Screen.Should().BeOfType<PinScreen>();
        kiosk.Show().Should().Contain("[••••••  ").And.NotContain(kiosk.PinOf("T07"));
        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();

        kiosk.Press("{Enter}");
        kiosk.Entries.OfType<Signed>().Should().ContainSingle().Which.Should().Be(new Signed(new("B3"), new("T07"), Proof.Pin));
        kiosk.Session.Model.Said.Should().Contain("Good night");
        kiosk.Entries.Should().NotContain(e => e is PinPassed, "there was no failure to clear");
    }

    [Fact]
    public void A_technician_without_one_signs_nothing_and_sets_none()
    {
        using var kiosk = new SampleKiosk(typesPins: false, without: "T07");
        kiosk.Press(ToSign).Session.Model.Said.Should().Be("T07 Perrin Shoal has no PIN yet. A lead issues one: F9 on the wall, then I.");
        kiosk.Press("{Escape}{F9}{Down}{Down}{Down}c").Session.Model.Said.Should().Contain("has no PIN yet");

        kiosk.Entries.OfType<PinSet>().Should().BeEmpty();
        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
    }

    [Fact]
    public void Six_digits_in_place_of_the_present_PIN_are_shown_once_and_typed()
    {
        using var kiosk = Changing();
        kiosk.Press("i{Enter}");
        var drawn = ((PinScreen)kiosk.Session.Model.Screen).Chosen;

        kiosk.Show().Should().Contain($"Your PIN is {drawn}");
        kiosk.Entries.OfType<PinSet>().Should().BeEmpty("nobody has read it yet");
        kiosk.Press("000000{Enter}").Session.Model.Said.Should().Contain("not the PIN drawn");
        kiosk.Press(drawn + "{Enter}");

        kiosk.Entries.OfType<PinSet>().Should().ContainSingle().Which.Should().Match<PinSet>(p => p.Issued && p.Lead == null && p.Hash.Fits(drawn));
        kiosk.Show().Should().NotContain(drawn);
    }

    [Fact]
    public void An_empty_Enter_says_what_is_asked_at_each_stage()
    {
        using var kiosk = Changing();
        kiosk.Press("{Enter}").Session.Model.Said.Should().Be("Type a new PIN of 8 characters or more, or I for 6 digits drawn for you, then Enter.");
        kiosk.Press("iron gravel{Enter}{Enter}").Session.Model.Said.Should().Be("Type the new PIN once more, then Enter.");
        kiosk.Press("{Escape}c").TypePin("T07").Press("i{Enter}{Enter}").Session.Model.Said.Should().Be("Type the 6 digits that stand above, then Enter.");
        kiosk.Press("{Escape}c{Enter}").Session.Model.Said.Should().Be("Type the PIN of T07, then Enter.");
    }

    [Theory]
    [InlineData("4111 1111 1111 1111", "card number")]
    [InlineData("219-09-9999", "social security number")]
    [InlineData("aaaaaaab", "That PIN repeats")]
    [InlineData("qwertyui", "simple sequence")]
    public void A_number_that_must_not_be_kept_or_is_soon_guessed_is_no_PIN(string pin, string said)
    {
        using var kiosk = Changing();
        kiosk.Press(pin + "{Enter}").Session.Model.Said.Should().Contain(said).And.NotContain(pin);

        kiosk.Session.Model.Screen.Should().BeOfType<PinScreen>().Which.Stage.Should().Be(PinStage.Choose);
        kiosk.Entries.OfType<PinSet>().Should().BeEmpty();
    }

    [Fact]
    public void One_of_his_own_is_typed_twice()
    {
        using var kiosk = Changing();
        kiosk.Press("12345678{Enter}").Session.Model.Said.Should().Contain("a simple sequence");
        kiosk.Press("iron gravel{Enter}iron gravle{Enter}").Session.Model.Said.Should().Contain("entries differ");
        kiosk.Press("iron gravel{Enter}iron gravel{Enter}");

        kiosk.Entries.OfType<PinSet>().Should().ContainSingle().Which.Should().Match<PinSet>(p => !p.Issued && p.Hash.Fits("iron gravel"));
    }

    /// <summary>T07 typed the present PIN and chooses another.</summary>
    private static SampleKiosk Changing() => new SampleKiosk(typesPins: false).Press("{F9}{Down}{Down}{Down}c").TypePin("T07");

    [Fact]
    public void At_the_desk_a_person_is_remembered_for_two_minutes_after_the_last_thing_recorded_in_that_name()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        kiosk.Press(Delivery).TypePin("L1").Entries.Should().ContainSingle();
        kiosk.Clock.Pass(119);
        kiosk.Press("CO-10Y{Enter}1{Enter}L1{Enter}").Entries.OfType<DeliveryReceived>().Should().HaveCount(2, "no PIN was asked the second time");
        kiosk.Clock.Pass(119);
        kiosk.Press("CO-10Y{Enter}1{Enter}L1{Enter}").Entries.OfType<DeliveryReceived>().Should().HaveCount(3, "it counts from the second");
    }

    [Fact]
    public void A_PIN_reset_elsewhere_while_it_is_held_against_what_was_typed_ends_no_program()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        var desk = kiosk.Session.Desk;
        new Desk(Closeout.Store.Book.Open(kiosk.Folder), kiosk.Clock).Record(new Closeout.People.ResetPin(new("T07"), new("L1"))).Should().BeNull();

        desk.Record(new Closeout.People.NoteWrong(new("T07"), "bay"))!.Code.Should().Be("pin-changed-meanwhile");
        desk.Record(new Closeout.People.NoteRight(new("T07"), "bay"))!.Code.Should().Be("pin-changed-meanwhile");
    }

    [Fact]
    public void A_right_PIN_that_comes_after_the_tenth_wrong_one_elsewhere_opens_nothing()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        var desk = kiosk.Session.Desk;
        for (var n = 0; n < 10; n++)
        {
            desk.Record(new Closeout.People.NoteWrong(new("T07"), "yard")).Should().BeNull();
        }

        desk.Record(new Closeout.People.NoteRight(new("T07"), "bay"))!.Code.Should().Be("pin-locked");
        desk.Record(new Closeout.People.NoteWrong(new("T07"), "bay"))!.Code.Should().Be("pin-locked");
    }

    [Fact]
    public void Whoever_types_the_present_PIN_takes_another()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        kiosk.Press("{F9}{Down}{Down}{Down}c").Show().Should().Contain("T07 Perrin Shoal: takes another PIN");
        kiosk.TypePin("T07").Show().Should().Contain("The present PIN opens until the new one is taken");
        kiosk.Press("iron gravel{Enter}iron gravel{Enter}");

        kiosk.Entries.Should().ContainSingle().Which.Should().Match<PinSet>(p => !p.Issued && p.Lead == null && p.Hash.Fits("iron gravel"));
        kiosk.Show().Should().Contain("The new PIN of T07 is set").And.Contain("PEOPLE");
        kiosk.Press("{Escape}" + ToSign + kiosk.PinOf("T07") + "{Enter}").Session.Model.Said.Should().Contain("Wrong PIN for T07");
        kiosk.Clock.Pass(2);
        kiosk.Press("iron gravel{Enter}").Depot.Shift(new("B3"))!.IsClosed.Should().BeTrue();
    }

    [Fact]
    public void Who_leaves_before_the_new_PIN_is_taken_keeps_the_present_one()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        kiosk.Press("{F9}{Down}{Down}{Down}c").TypePin("T07").Press("i{Enter}{Escape}");

        kiosk.Entries.Should().BeEmpty();
        kiosk.Press("{Escape}" + ToSign).TypePin("T07").Depot.Shift(new("B3"))!.IsClosed.Should().BeTrue();
    }

    [Fact]
    public void A_PIN_that_was_reset_while_its_owner_chose_another_is_not_replaced()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        kiosk.Press("{F9}{Down}{Down}{Down}c").TypePin("T07").Press("iron gravel{Enter}iron gravel");
        new Desk(Closeout.Store.Book.Open(kiosk.Folder), kiosk.Clock).Record(new Closeout.People.ResetPin(new("T07"), new("L1"))).Should().BeNull();

        kiosk.Press("{Enter}").Session.Model.Said.Should().Contain("was changed elsewhere");
        kiosk.Depot.Pins.Of(new("T07")).Hash.Should().BeNull();
    }

    [Fact]
    public void A_lead_issues_a_PIN_that_is_shown_once_and_opens()
    {
        using var kiosk = new SampleKiosk(typesPins: false, without: "T07");
        kiosk.Press("{F9}{Down}{Down}{Down}").Show().Should().Contain("T07    Perrin Shoal              technician   none");
        kiosk.Press("iL1{Enter}").TypePin("L1");

        var issued = kiosk.Session.Model.Screen.Should().BeOfType<IssuedScreen>().Which;
        kiosk.Show().Should().Contain($"The PIN of T07 Perrin Shoal is {issued.Pin}");
        kiosk.Entries[^1].Should().Match<PinSet>(p => p.Issued && p.Lead == new Code<Technician>("L1"));

        kiosk.Press("{Enter}").Show().Should().Contain("set, issued").And.NotContain(issued.Pin);
        kiosk.Press("{Escape}" + ToSign + issued.Pin + "{Enter}").Depot.Shift(new("B3"))!.IsClosed.Should().BeTrue();
    }

    [Fact]
    public void A_lead_resets_a_locked_PIN_and_its_owner_has_none_until_one_is_issued()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        kiosk.Press(ToSign);
        for (var n = 0; n < 10; n++)
        {
            kiosk.Press("000000{Enter}").Clock.Pass(30);
        }

        kiosk.Session.Model.Said.Should().Contain("locked after 10 wrong tries");
        kiosk.Press("{Escape}{Escape}{F9}{Down}{Down}{Down}").Show().Should().Contain("LOCKED after 10 wrong");
        kiosk.Press("rL1{Enter}").TypePin("L1").Session.Model.Said.Should().Contain("The PIN of T07 is reset");

        kiosk.Press("{Escape}B3{Enter}{Enter}").Session.Model.Said.Should().Contain("has no PIN yet");
    }

    [Fact]
    public void A_PIN_that_a_lead_reset_meanwhile_is_not_looked_at()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        kiosk.Press(ToSign);
        new Desk(Closeout.Store.Book.Open(kiosk.Folder), kiosk.Clock).Record(new Closeout.People.ResetPin(new("T07"), new("L1"))).Should().BeNull();

        kiosk.TypePin("T07").Session.Model.Said.Should().Contain("was reset meanwhile");
        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();
    }

    [Fact]
    public void A_rehearsal_asks_for_none_and_says_so()
    {
        using var temp = new TempFolder();
        var given = SampleDay.Given;
        var folder = new Closeout.Store.BookFolder(temp["book"]);
        var desk = new Desk(Book.New(folder, given.FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch), new FixedClock(16, 52));
        var session = new KioskSession(desk, new(folder), new(folder), pins: new Pins(1));
        foreach (var key in Keystroke.Parse(ToSign))
        {
            session.Press(key);
        }

        desk.Depot.Shift(new("B3"))!.Signed!.Proof.Should().Be(Proof.Rehearsal);
        session.Model.Said.Should().Contain("REHEARSAL: signed without a PIN");
        session.Press(new(Press.Character, 'B'));
        session.Press(new(Press.Character, '3'));
        session.Press(new(Press.Enter));
        session.Show(80, 24).ToString().Should().Contain("REHEARSAL: signed without a PIN");
    }
}
