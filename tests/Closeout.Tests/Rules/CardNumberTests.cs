using System.Globalization;
using Closeout.Rules;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Rules;

/// <summary>What looks like a card's number in a text, and what does not.</summary>
public sealed class CardNumberTests
{
    /// <summary>Numbers that payment systems publish for tests, of 14, 15 and 16 digits: from memory. None is anybody's.</summary>
    public static TheoryData<string> TestNumbers => ["4111111111111111", "5555555555554444", "378282246310005", "30569309025904", "6011111111111117", "3530111333300000"];

    [Fact]
    public void The_check_digit_is_that_of_the_usual_example()
    {
        // 7992739871 with the check digit 3: the example in most descriptions of the algorithm of ISO/IEC 7812-1, annex B; from memory.
        Enumerable.Range(0, 10).Where(d => CardNumber.Fits(Digits("7992739871" + d))).Should().Equal(3);
    }

    [Theory]
    [MemberData(nameof(TestNumbers))]
    public void A_number_is_found_however_it_is_grouped_and_whatever_stands_around_it(string number)
    {
        var groups = string.Join(' ', number.Chunk(4).Select(c => new string(c)));
        foreach (var text in new[] { number, groups, groups.Replace(' ', '-'), groups.Replace(' ', '.'), $"fuel card {groups}, left in the van", $"({number})", $"no.{number}.", $"{groups} 12/26", $"van 3 {groups}", $"{groups} 123" })
        {
            CardNumber.IsIn(text).Should().BeTrue(text);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("dent, 3 in wide, 12 in long")]
    [InlineData("workshop slip 123456789012")]                 // 12 digits are too few
    [InlineData("call 555 0100 or 555 0199")]
    [InlineData("call 202-555-0100 202-555-0199 202-555-0123")]
    [InlineData("4111111111111112")]                            // the check digit does not fit
    [InlineData("2026-11-18 16:30, odometer 28153, slip 4471")]
    public void Other_numbers_may_be_typed(string text) => CardNumber.IsIn(text).Should().BeFalse();

    [Theory]
    [MemberData(nameof(TestNumbers))]
    public void One_digit_misread_is_no_number_of_a_card(string number)
    {
        for (var at = 0; at < number.Length; at++)
        {
            var other = (char)('0' + (number[at] - '0' + 1) % 10);
            CardNumber.IsIn(number[..at] + other + number[(at + 1)..]).Should().BeFalse("the check digit finds every single slip");
        }
    }

    [Fact]
    public void Any_number_of_13_to_19_digits_with_its_check_digit_is_found() =>
        Gen.Select(Gen.Int[12, 18], Gen.ULong[1, 9_999_999_999_999_999UL], Gen.OneOf("", " ", "-")).Holds((length, seed, between) =>
        {
            var body = seed.ToString(CultureInfo.InvariantCulture).PadLeft(length, '7')[^length..];
            var check = Enumerable.Range(0, 10).Single(d => CardNumber.Fits(Digits(body + d)));
            var number = string.Join(between, (body + check).Chunk(4).Select(c => new string(c)));
            CardNumber.IsIn($"card {number} of the depot").Should().BeTrue(number);
        });

    private static List<int> Digits(string text) => [.. text.Select(c => c - '0')];
}
