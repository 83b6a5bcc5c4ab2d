using Closeout.Facts;
using Closeout.Screens;
using Closeout.Screens.Forms;
using Closeout.Screens.Parts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>A field that was emptied by Backspace stays empty: no default comes back that the next Backspace would eat, and none is taken in its place.</summary>
public sealed class EmptiedByKeys
{
    private const string Held = "{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}";

    [Theory]
    [InlineData("B3{Enter}", "Type or scan the code of the person who brings it in")]
    [InlineData("B3{Enter}{Enter}**{Enter}=n=", "Type or scan your own code to sign")]
    [InlineData("B3{Enter}{Enter}/SHW-15H{Enter}", "\"Still sealed\" is empty: type how many there are, 0 where there are none")]
    [InlineData("B6{Enter}{Enter}LED-A19-27{Enter}0{Enter}23{Enter}0{Enter}**", "is empty: type how many there are")]
    [InlineData("B3{Enter}{Enter}**==n", "is empty: type how many there are")]
    [InlineData("B2{Enter}{Enter}**==n=", "Say whether this part is in order: lights")]
    [InlineData("B4{F7}b", "Type the code of the person it is for")]
    [InlineData("{F8}{F5}", "Type the next business date")]
    public void Held_down_Backspace_empties_it_and_Enter_asks(string keys, string said)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(keys);
        kiosk.Press(Held);
        FormOf(kiosk).Now!.Text.Should().BeEmpty();
        var (before, field) = (kiosk.Entries.Count, FormOf(kiosk).Now!.Name);

        for (var n = 0; n < 14 && kiosk.Session.Model.Said.Length == 0; n++)
        {
            kiosk.Press(kiosk.Session.Model.Screen is FormScreen && FormOf(kiosk).IsLast ? "L1{Enter}" : "{Enter}");
        }

        kiosk.Session.Model.Said.Should().Contain(said);
        kiosk.Entries.Should().HaveCount(before);
        FormOf(kiosk).Now!.Name.Should().Be(field);
        kiosk.Press("T").Press("1");
        FormOf(kiosk).Now!.Text.Should().NotContain("T0", "no default came back");
    }

    [Fact]
    public void A_date_of_the_kit_is_not_lost_by_emptying_it()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}**==n");
        var dated = kiosk.Closeout.Form.Fields.FindIndex(f => f.Kind == FieldKind.Date && f.Shown.Length > 0);
        kiosk.Press(string.Concat(Enumerable.Repeat("{Down}", dated)) + Held + "{Enter}");

        kiosk.Session.Model.Said.Should().Contain("The date is empty").And.Contain("PgUp, then PgDn");
        kiosk.Press("{PageUp}{PageDown}").Closeout.Form.Fields[dated].Text.Should().NotBeEmpty();
    }

    [Fact]
    public void Where_empty_says_none_none_is_recorded()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}**=28153{Enter}5{Enter}{Enter}!{PageUp}{Down}" + Held + "{Up}{Enter}{Enter}{Enter}");

        kiosk.Entries.OfType<MileageLogged>().Last().FuelGal.Should().BeNull("empty: none, says the field");
    }

    [Fact]
    public void Of_a_pick_list_nothing_counts_as_taken_only_when_0_is_typed()
    {
        using var kiosk = SampleKiosk.Evening();
        kiosk.Press("B6{F4}" + Held);
        var before = kiosk.Entries.Count;
        kiosk.Press("=").Session.Model.Said.Should().Contain("0 where it was none");
        kiosk.Entries.Should().HaveCount(before);

        kiosk.Press("0=").Entries[^1].Should().BeOfType<VanLoaded>();
    }

    private static Form FormOf(SampleKiosk kiosk) => kiosk.Session.Model.Screen switch
    {
        WhoScreen s => s.Form,
        CloseoutScreen s => s.Question.Form,
        FormScreen s => s.Form,
        var screen => throw new InvalidOperationException($"{screen} has no form"),
    };
}
