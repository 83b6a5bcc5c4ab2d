using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

/// <summary>
/// What was filled against what a van takes. Common practice: pumps sell regular (87), midgrade (89) and premium (91 and up); a
/// higher grade does no harm, a lower one is looked at; a flex-fuel van takes petrol; another fuel is never right.
/// </summary>
public sealed class FuelGradeTests
{
    [Theory]
    [InlineData("regular", "regular", FuelMatch.Fits)]
    [InlineData("Regular", " REGULAR ", FuelMatch.Fits)]
    [InlineData("regular", "premium", FuelMatch.Fits)]
    [InlineData("regular", "midgrade", FuelMatch.Fits)]
    [InlineData("midgrade", "93", FuelMatch.Fits)]
    [InlineData("premium", "midgrade", FuelMatch.Doubtful)]
    [InlineData("premium", "regular", FuelMatch.Doubtful)]
    [InlineData("midgrade", "87", FuelMatch.Doubtful)]
    [InlineData("89", "88", FuelMatch.Doubtful)]
    [InlineData("91", "90", FuelMatch.Doubtful)]
    [InlineData("91", "91", FuelMatch.Fits)]
    [InlineData("89", "89", FuelMatch.Fits)]
    [InlineData("premium", "unleaded", FuelMatch.Fits)]     // a grade was not said
    [InlineData("petrol", "87", FuelMatch.Fits)]
    public void Of_petrol_a_lower_grade_is_doubtful_and_a_higher_one_fits(string takes, string filled, FuelMatch match) => FuelGrade.Of(takes, filled).Should().Be(match);

    [Theory]
    [InlineData("regular", "diesel", FuelMatch.OtherFuel)]
    [InlineData("diesel", "regular", FuelMatch.OtherFuel)]
    [InlineData("diesel", "premium unleaded", FuelMatch.OtherFuel)]
    [InlineData("diesel", "B20", FuelMatch.Fits)]
    [InlineData("flex", "regular", FuelMatch.Fits)]
    [InlineData("flex", "diesel", FuelMatch.OtherFuel)]
    [InlineData("regular", "E85", FuelMatch.OtherFuel)]
    [InlineData("CNG", "propane", FuelMatch.OtherFuel)]
    public void Another_fuel_is_none_that_it_takes_but_petrol_in_a_flex_fuel_van(string takes, string filled, FuelMatch match) => FuelGrade.Of(takes, filled).Should().Be(match);

    [Theory]
    [InlineData("", "diesel", FuelMatch.Fits)]              // nobody said what it takes
    [InlineData("regular", "", FuelMatch.Fits)]             // nobody said what was filled
    [InlineData("regular", null, FuelMatch.Fits)]
    [InlineData("regular", "the usual", FuelMatch.Doubtful)]
    [InlineData("rocket fuel", "regular", FuelMatch.Doubtful)]
    [InlineData("rocket fuel", "Rocket Fuel", FuelMatch.Fits)]
    [InlineData("regular", "pump 4, regular (87)", FuelMatch.Fits)]
    [InlineData("regular", "84", FuelMatch.Doubtful)]       // no octane number that is sold
    [InlineData("regular", "101", FuelMatch.Doubtful)]
    public void What_nobody_said_fits_and_a_word_that_is_not_known_is_doubtful(string takes, string? filled, FuelMatch match) => FuelGrade.Of(takes, filled).Should().Be(match);
}
