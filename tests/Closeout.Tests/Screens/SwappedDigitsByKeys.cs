using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>An odometer reading with two neighbouring digits swapped: B3 stood at 28114 this morning, and 28513 was typed for 28153.</summary>
public sealed class SwappedDigitsByKeys : IDisposable
{
    private readonly SampleKiosk kiosk = new SampleKiosk().Press("B3{Enter}{Enter}**=28513{Enter}{Enter}");

    [Fact]
    public void It_is_asked_again_with_the_reading_that_was_probably_meant_in_the_field()
    {
        kiosk.Session.Model.Said.Should().Contain("28114 mi").And.Contain("28513 mi").And.Contain("28153 mi is in the field");
        kiosk.Closeout.Form["odometer"].Text.Should().Be("28153");
        kiosk.Show().Should().Contain("[28153    ]");
        kiosk.Entries.OfType<MileageLogged>().Should().BeEmpty();
    }

    [Fact]
    public void Enter_takes_it_without_another_question()
    {
        kiosk.Press("{Enter}{Enter}");

        kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle().Which.Should().Match<MileageLogged>(m => m.EndMi == 28153 && !m.Sure);
        kiosk.Closeout.At.Should().Be(Step.Damage);
    }

    [Theory]
    [InlineData("28513{Enter}")]
    [InlineData("{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}28513{Enter}")]
    public void Ones_own_reading_typed_again_overrules_it(string keys)
    {
        kiosk.Press(keys);

        kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle(kiosk.Show()).Which.Should().Match<MileageLogged>(m => m.EndMi == 28513 && m.Sure);
        kiosk.Closeout.At.Should().Be(Step.Damage);
    }

    [Fact]
    public void It_can_be_mended_at_its_end()
    {
        kiosk.Press("{Backspace}4{Enter}{Enter}");

        kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle().Which.Should().Match<MileageLogged>(m => m.EndMi == 28154 && !m.Sure);
    }

    [Fact]
    public void A_third_reading_is_looked_at_for_itself()
    {
        kiosk.Press("{Backspace}{Backspace}{Backspace}{Backspace}{Backspace}28613{Enter}{Enter}");

        kiosk.Entries.OfType<MileageLogged>().Should().BeEmpty("it is as far off as the first, and was never looked at");
        kiosk.Session.Model.Said.Should().Contain("28613 mi");
    }

    [Fact]
    public void A_doubtful_reading_and_the_wrong_fuel_are_one_question()
    {
        using var both = new SampleKiosk();
        both.Press("B3{Enter}{Enter}**=28513{Enter}12{Enter}regular{Enter}");
        both.Session.Model.Said.Should().Contain("28513 mi").And.Contain("takes diesel, not regular");

        both.Press("{Enter}{Enter}{Enter}");
        both.Entries.OfType<MileageLogged>().Should().BeEmpty("the suggestion was taken, and the fuel is another's still");
        both.Session.Model.Said.Should().Contain("takes diesel").And.NotContain("swapped");

        both.Press("{Enter}").Entries.OfType<MileageLogged>().Should().BeEmpty("Enter alone confirms nothing");
        both.Press("!");
        both.Entries.OfType<MileageLogged>().Should().ContainSingle(both.Show()).Which.Should().Match<MileageLogged>(m => m.EndMi == 28153 && m.FuelGrade == "regular" && !m.Sure);
    }

    public void Dispose() => kiosk.Dispose();
}
