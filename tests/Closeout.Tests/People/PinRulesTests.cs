using System.Globalization;
using Closeout.Facts;
using Closeout.People;
using Closeout.Rules;
using Closeout.Store;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.People;

public sealed class PinRulesTests
{
    private static readonly Technician Person = new(new("T07"), "Perrin O'Shoal", false, null, []);

    private static readonly Gen<string> Printable = Gen.Char[' ', '~'].Array[PinRules.LeastOwn, 20].Select(c => new string(c));

    [Theory]
    [InlineData("")]
    [InlineData("rain 48")]
    [InlineData("4930271")]
    public void Fewer_than_eight_characters_are_too_short(string pin) => PinRules.Own(pin, Person)!.Code.Should().Be("pin-too-short");

    [Theory]
    [InlineData("wet gravel")]
    [InlineData("49302716")]
    [InlineData("漆 gravel 48")]
    [InlineData("       xy")]
    [InlineData("iiiiii!?")]
    [InlineData("4111 1111 1111 1112")]
    [InlineData("900091234")]
    public void Eight_printable_characters_or_more_are_taken(string pin) => PinRules.Own(pin, Person).Should().BeNull();

    [Fact]
    public void Sixty_four_characters_are_taken_and_one_more_is_not()
    {
        var pin = string.Concat(Enumerable.Range(0, 16).Select(i => $"q{i:00}!"));
        PinRules.Own(pin, Person).Should().BeNull();
        PinRules.Own(pin + "z", Person)!.Code.Should().Be("pin-too-long");
    }

    [Theory]
    [InlineData("aaaaaaaa")]
    [InlineData("aAaAaAaA")]
    [InlineData("12121212")]
    [InlineData("abcabcab")]
    [InlineData("7391739173")]
    [InlineData("777777")]
    [InlineData("404404")]
    [InlineData("aaaaaaab")]
    [InlineData("AaAaAaA7")]
    [InlineData("40404004")]
    [InlineData("        x")]
    public void What_repeats_is_refused(string pin) => PinRules.Guessed(pin, Person)!.Code.Should().Be("pin-repeats");

    [Theory]
    [InlineData("12345678")]
    [InlineData("98765432")]
    [InlineData("abcdefgh")]
    [InlineData("HgFeDcBa")]
    [InlineData("1234abcd")]
    [InlineData("12344321")]
    [InlineData("456789")]
    [InlineData("1234567890")]
    [InlineData("0987654321")]
    [InlineData("7890abcd")]
    [InlineData("qwertyui")]
    [InlineData("asdfghjk")]
    [InlineData("MNBVCXZlkjh")]
    [InlineData("poiu4321")]
    [InlineData("asdfghijk")]
    [InlineData("zxcvqwertyuiop")]
    public void What_runs_up_or_down_is_refused(string pin) => PinRules.Guessed(pin, Person)!.Code.Should().Be("pin-runs");

    [Theory]
    [InlineData("19900412")]
    [InlineData("12041990")]
    [InlineData("04121990")]
    [InlineData("2024-02-29")]
    [InlineData("29.02.2024")]
    [InlineData("900412")]
    [InlineData("120490")]
    [InlineData("041290")]
    [InlineData("000229")]
    [InlineData("199004")]
    [InlineData("041990")]
    [InlineData("4/12/1990")]
    [InlineData("1990-4-12")]
    [InlineData("4. 12. 90")]
    public void What_reads_as_a_date_is_refused(string pin) => PinRules.Guessed(pin, Person)!.Code.Should().Be("pin-is-a-date");

    [Theory]
    [InlineData("18991231")]
    [InlineData("21000101")]
    [InlineData("2023-02-29")]
    [InlineData("493027")]
    public void What_is_no_day_of_these_years_is_no_date(string pin) => PinRules.IsDate(pin).Should().BeFalse();

    [Theory]
    [InlineData("t07 and more")]
    [InlineData("PERRIN-481")]
    [InlineData("grey shoal 4")]
    public void The_own_code_or_name_in_it_is_refused(string pin) => PinRules.Guessed(pin, Person)!.Code.Should().Be("pin-has-your-name");

    [Theory]
    [InlineData("4111111111111111")]
    [InlineData("4111 1111 1111 1111")]
    [InlineData("fuel 3569-3803-5643-809")]
    public void A_card_number_is_refused(string pin) => PinRules.Own(pin, Person)!.Code.Should().Be("pin-is-a-card-number");

    [Theory]
    [InlineData("219-09-9999")]
    [InlineData("mine 219 09 9999")]
    [InlineData("219099999")]
    public void A_social_security_number_is_refused(string pin) => PinRules.Own(pin, Person)!.Code.Should().Be("pin-is-a-social-security-number");

    [Fact]
    public void Every_day_of_the_two_centuries_is_a_date_in_every_order() => Gen.Int[0, 73_048].Holds(n =>
    {
        var day = new DateOnly(1900, 1, 1).AddDays(n);
        foreach (var format in new[] { "yyyyMMdd", "ddMMyyyy", "MMddyyyy", "yyMMdd", "ddMMyy", "MMddyy", "yyyy-MM-dd", "MM/dd/yyyy", "M/d/yyyy", "d.M.yy", "yyyy-M-d", "yyyyMM", "MMyyyy" })
        {
            PinRules.IsDate(day.ToString(format, CultureInfo.InvariantCulture)).Should().BeTrue($"{day} as {format}");
        }
    });

    [Fact]
    public void Any_pattern_of_up_to_four_said_twice_or_more_repeats() => Gen.Select(Gen.Char[' ', '~'].Array[1, 4], Gen.Int[8, 30]).Holds(t =>
    {
        var (pattern, length) = t;
        PinRules.Repeats(string.Concat(Enumerable.Repeat(new string(pattern), 30))[..length]).Should().BeTrue();
    });

    [Fact]
    public void Any_run_of_digits_or_letters_runs_both_ways() => Gen.Select(Gen.OneOf("0123456789", "abcdefghijklmnopqrstuvwxyz", "qwertyuiop", "asdfghjkl"), Gen.Int[0, 4], Gen.Int[4, 5]).Holds((all, start, length) =>
    {
        var run = all.Substring(start, length);
        PinRules.Runs(run).Should().BeTrue();
        PinRules.Runs(new string([.. run.Reverse()])).Should().BeTrue();
        PinRules.Runs(run + "x!").Should().BeFalse("it is not all of it");
    });

    [Fact]
    public void What_is_taken_breaks_no_rule_and_what_is_refused_breaks_one() => Printable.Holds(pin =>
        (PinRules.Own(pin, Person) is null).Should().Be(!PinRules.Repeats(pin) && !PinRules.Runs(pin) && !PinRules.IsDate(pin) && !CardNumber.IsIn(pin) && !PinRules.IsSocialSecurityNumber(pin)
            && !new[] { "T07", "Perrin", "Shoal" }.Any(n => pin.Contains(n, StringComparison.OrdinalIgnoreCase)), pin));

    [Fact]
    public void No_refusal_says_the_PIN() => Printable.Holds(pin => (PinRules.Own(pin, Person)?.Text ?? "").Should().NotContain(pin));

    [Fact]
    public void An_issued_PIN_is_the_six_digits_drawn_or_is_drawn_again()
    {
        PinRules.Issued(493_027, Person).Should().Be("493027");
        PinRules.Issued(1_843, Person).Should().Be("001843");
        PinRules.Issued(111_111, Person).Should().BeNull();
        PinRules.Issued(345_678, Person).Should().BeNull();
        PinRules.Issued(901_231, Person).Should().BeNull();
        PinRules.Issued(407_207, new(new("72"), "Numa", false, null, [])).Should().BeNull("it has the code in it");
    }

    [Fact]
    public void Most_numbers_pass_so_that_a_PIN_is_soon_drawn()
    {
        var taken = Enumerable.Range(0, PinRules.IssuedBelow / 10).Count(n => PinRules.Issued(n * 10 + 7, Person) is not null);
        taken.Should().BeGreaterThan(80_000).And.BeLessThan(100_000);
    }

    [Fact]
    public void The_kiosk_draws_six_digits_that_pass_and_not_always_the_same()
    {
        var drawn = Enumerable.Range(0, 200).Select(_ => Pins.Draw(Person)).ToList();
        drawn.Should().OnlyContain(p => p.Length == 6 && p.All(char.IsAsciiDigit) && PinRules.Guessed(p, Person) == null);
        drawn.Distinct().Should().HaveCountGreaterThan(150);
    }
}
