using Closeout.Rules;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>The check digit of ISO/IEC 7812-1, annex B (Luhn), by numbers that public test suites print. None is anybody's card.</summary>
public sealed class CheckDigitReferenceTests
{
    /// <summary>
    /// All seen. 79927398713: TheAlgorithms/Python, hashes/luhn.py, doctest. 78949: arthurdejong/python-stdnum, stdnum/luhn.py,
    /// doctest. 356938035643809 and 534618613411234: pypi.org/project/luhn/0.2.0, examples.
    /// </summary>
    [Theory]
    [InlineData("79927398713")]
    [InlineData("78949")]
    [InlineData("356938035643809")]
    [InlineData("534618613411234")]
    public void A_published_number_fits_and_no_other_last_digit_does(string number)
    {
        for (var last = '0'; last <= '9'; last++)
        {
            CardNumber.Fits(Digits(number[..^1] + last)).Should().Be(last == number[^1], $"of {number[..^1]}{last}");
        }
    }

    /// <summary>What the digit is for: one digit mistyped never fits; two neighbours swapped fit only as 09 and 90.</summary>
    [Fact]
    public void One_wrong_digit_never_fits_and_swapped_neighbours_hardly_ever() => Gen.Select(Gen.Int[0, 9].Array[15], Gen.Int[0, 14], Gen.Int[1, 9]).Holds((digits, at, by) =>
    {
        var whole = Enumerable.Range(0, 10).Select(last => (int[])[.. digits, last]).Single(n => CardNumber.Fits(n));
        int[] wrong = [.. whole];
        wrong[at] = (wrong[at] + by) % 10;
        CardNumber.Fits(wrong).Should().BeFalse();

        int[] swapped = [.. whole];
        (swapped[at], swapped[at + 1]) = (whole[at + 1], whole[at]);
        CardNumber.Fits(swapped).Should().Be(whole[at] == whole[at + 1] || (whole[at], whole[at + 1]) is (0, 9) or (9, 0));
    });

    [Theory]
    [InlineData("356938035643809", true)]
    [InlineData("card 3569-3803-5643-809, ask me", true)]
    [InlineData("35 6938 0356 43809", true)]
    [InlineData("356938035643808", false)]      // the digit does not fit
    [InlineData("79927398713", false)]          // too short for a card
    [InlineData("B2 at 62543 mi, 14.6 gal, 2026-11-18", false)]
    [InlineData("", false)]
    public void It_is_found_in_a_text_in_groups_too(string text, bool found) => CardNumber.IsIn(text).Should().Be(found);

    private static int[] Digits(string number) => [.. number.Select(c => c - '0')];
}
