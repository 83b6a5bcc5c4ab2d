using Closeout.Facts;
using Closeout.Screens.Forms;
using Closeout.Screens.Parts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>After a refusal the cursor stands in the field that it is about, and what is typed next replaces what stands there.</summary>
public sealed class RefusedByKeys
{
    private const string Mileage = "B3{Enter}{Enter}**=";
    private const string Damage = "B3{Enter}{Enter}**==d";
    private const string Weekly = "B2{Enter}{Enter}**==n=";

    [Theory]
    [InlineData(Mileage + "99999999{Enter}5{Enter}{Enter}", "odometer", "The odometer cannot be 99999999")]
    [InlineData(Mileage + "28153{Enter}500{Enter}{Enter}", "fuel", "Fuel in gallons cannot be 500")]
    [InlineData(Mileage + "28153{Enter}.{Enter}{Enter}", "fuel", "\".\" is not a number")]
    [InlineData(Mileage + "28153{Enter}5{Enter}4111111111111111{Enter}", "grade", "Do not enter card numbers or PINs in the fuel grade")]
    [InlineData("B3{Enter}{Enter}/SHW-15H{Enter}0{Enter}0{Enter}0{Enter}**=28153{Enter}12{Enter}regular{Enter}", "grade", "takes diesel, not regular")]
    [InlineData(Mileage + "12{Enter}5{Enter}{Enter}", "odometer", "12 mi is below this morning")]
    [InlineData(Damage + "6{Enter}r{Enter}crack{Enter}y{Enter}card 4111111111111111{Enter}16:40{Enter}", "told", "Do not enter card numbers or PINs in who was told")]
    [InlineData(Damage + "6{Enter}r{Enter}of 219-09-9999{Enter}y{Enter}L1{Enter}16:40{Enter}", "what", "Do not enter social security numbers in what it is")]
    [InlineData(Damage + "4111111111111111{Enter}n{Enter}found{Enter}", "zone", "Do not enter card numbers or PINs in where the damage is")]
    [InlineData(Damage + "6{Enter}x{Enter}crack{Enter}{Enter}{Enter}{Enter}", "severity", "Say how bad it is")]
    [InlineData(Damage + "6{Enter}r{Enter}crack{Enter}q{Enter}{Enter}{Enter}", "drivable", "Say whether it can be driven")]
    [InlineData(Damage + "6{Enter}r{Enter}crack{Enter}{Enter}{Enter}4{Enter}", "told_at", "\"4\" is no time")]
    [InlineData(Weekly + "{Down}{Down}{Down}{Down}{Down}{Down}{Down}{Down}x{Enter}{Enter}{Enter}{Enter}{Enter}", "ladder rack", "Say whether this part is in order: ladder rack")]
    [InlineData(Weekly + "=2026-11-19{Enter}{Enter}{Enter}", "oil", "The last oil change cannot be 2026-11-19")]
    [InlineData("B3{Enter}{Enter}99{Enter}", "kept", "more than on record")]
    public void At_a_close_out(string keys, string field, string said)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(keys);

        kiosk.Session.Model.Said.Should().Contain(said);
        kiosk.Closeout.Form.Now!.Name.Should().Be(field);
        var next = kiosk.Closeout.Form.Now.Kind == FieldKind.Letter ? "y" : "7";
        kiosk.Press(next).Closeout.Form[field].Text.Should().Be(next);
    }

    [Theory]
    [InlineData("B4{F7}bT99{Enter}", "for", "Nobody here has the code T99")]
    [InlineData("B4{F7}bT03{Enter}{Enter}", "reason", "Say why")]
    [InlineData("B4{F7}bT03{Enter}went home ill{Enter}T07{Enter}", "by", "is not a lead")]
    [InlineData("B4{F7}hsee 219-09-9999{Enter}", "reason", "Do not enter social security numbers in why it must stay")]
    [InlineData("B4{F7}m{Enter}{Enter}B9{Enter}", "to", "No van has the code B9")]
    [InlineData("{F5}CO-11{Enter}", "item", "No item has the code CO-11")]
    [InlineData("{F5}CO-10Y{Enter}0{Enter}", "cartons", "Cartons that came cannot be 0")]
    [InlineData("{F5}CO-10Y{Enter}5{Enter}T99{Enter}", "by", "Nobody here has the code T99")]
    [InlineData("{F5}{F5}{Enter}LED-G25{Enter}2{Enter}3{Enter}why{Enter}L1{Enter}", "loose", "one count at a time")]
    [InlineData("{F2}led-g{F5}t{Enter}{Enter}open house{Enter}L1{Enter}", "units", "Type how many units")]
    [InlineData("{F3}p121{Enter}", "percent", "Full by eye, percent cannot be 121")]
    [InlineData("{F8}{F5}2027-11-19{Enter}L1{Enter}", "next", "days after 2026-11-18")]
    public void At_the_desk(string keys, string field, string said)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(keys);

        kiosk.Session.Model.Said.Should().Contain(said);
        Form(kiosk).Now!.Name.Should().Be(field);
        kiosk.Press("7");
        Form(kiosk)[field].Text.Should().Be("7");
    }

    [Fact]
    public void Of_several_answers_given_at_once_in_the_refused_one()
    {
        using var kiosk = new SampleKiosk();
        var pieces = kiosk.Depot.Setup.Kit;
        kiosk.Press("B3{Enter}{Enter}**==n200{Down}=").Session.Model.Said.Should().Contain($"{pieces[0].Description} cannot be 200");

        kiosk.Closeout.Form.Now!.Name.Should().Be(pieces[0].Code.Text);
        kiosk.Press("1=").Depot.Shift(new("B3"))!.Kit[pieces[0].Code].Count.Should().Be(1);
    }

    [Fact]
    public void A_reading_typed_anew_stands_alone_in_its_field_and_is_recorded()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(Mileage + "99999999{Enter}5{Enter}{Enter}").Press("28153{Enter}{Enter}{Enter}!");

        kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle().Which.Should().Match<MileageLogged>(m => m.EndMi == 28153 && m.FuelGal == 5);
    }

    [Fact]
    public void A_count_asked_again_and_typed_once_more_is_the_same_answer_again()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}99{Enter}").Entries.OfType<LeftoverCounted>().Should().BeEmpty();

        kiosk.Press("99{Enter}").Entries.OfType<LeftoverCounted>().Should().ContainSingle().Which.Count.Kept.Should().Be(99);
    }

    [Fact]
    public void Who_brings_the_van_in_is_typed_over_a_code_that_nobody_has()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}T99{Enter}").Session.Model.Said.Should().Contain("Nobody here has the code T99").And.Contain("F9");

        kiosk.Press("T14{Enter}").Depot.Shift(new("B3"))!.Technician.Text.Should().Be("T14");
    }

    [Fact]
    public void The_signer_is_typed_over_a_code_that_nobody_has()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}**{Enter}=n=T99{Enter}").Session.Model.Said.Should().Contain("Nobody here has the code T99");

        kiosk.Press("T14{Enter}").Depot.Shift(new("B3"))!.SignedBy!.Value.Text.Should().Be("T14");
    }

    [Fact]
    public void What_a_note_hides_is_not_recorded_with_it()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(Damage + "6{Enter}r{Enter}crack{Enter}n{Enter}L1{Enter}4{Up}{Up}{Up}{Up}n{Enter}{Enter}");

        kiosk.Entries.OfType<DamageFound>().Should().ContainSingle().Which.Should().Match<DamageFound>(d => d.Severity == Severity.Note && d.Drivable && d.Told == "" && d.ToldAt == null);
    }

    private static Form Form(SampleKiosk kiosk) => ((FormScreen)kiosk.Session.Model.Screen).Form;
}
