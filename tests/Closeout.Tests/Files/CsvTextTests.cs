using System.Text;
using Closeout.Files;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

public sealed class CsvTextTests
{
    [Fact]
    public void Lines_end_in_CRLF_and_the_file_begins_without_a_byte_order_mark()
    {
        using var csv = new CsvText("a", "b");
        csv.Text("é").Number(1).EndRow();

        csv.Bytes().Should().Equal(Encoding.UTF8.GetBytes("a,b\r\né,1\r\n"));
    }

    [Theory]
    [InlineData("=1+1", "\"'=1+1\"")]
    [InlineData("+1", "\"'+1\"")]
    [InlineData("-3", "\"'-3\"")]
    [InlineData("@home", "\"'@home\"")]
    [InlineData("\tx", "·x")]
    [InlineData("\rx", "·x")]
    [InlineData("\r\nx", "\"'\r\nx\"")]
    [InlineData("two\r\nlines", "\"two\r\nlines\"")]
    [InlineData("over\rwritten", "over·written")]
    [InlineData("\u001b[2Ja\u202e", "·[2Ja·")]
    [InlineData("=a,\"b\"", "\"'=a,\"\"b\"\"\"")]
    [InlineData("a=1", "a=1")]
    [InlineData("'=1", "'=1")]
    [InlineData(" =1", " =1")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("two\nlines", "\"two\nlines\"")]
    [InlineData("say \"hi\"", "\"say \"\"hi\"\"\"")]
    [InlineData("", "")]
    [InlineData(null, "")]
    public void Text_that_a_spreadsheet_would_run_gets_an_apostrophe_and_quotes_are_doubled(string? text, string written) =>
        Written(csv => csv.Text(text)).Should().Be(written);

    [Theory]
    [InlineData(0, "0")]
    [InlineData(-3, "-3")]
    [InlineData(int.MinValue, "-2147483648")]
    [InlineData(1_234_567, "1234567")]
    public void Whole_numbers_never_get_an_apostrophe(int number, string written) => Written(csv => csv.Number(number)).Should().Be(written);

    [Theory]
    [InlineData("-3.50", "-3.5")]
    [InlineData("62543.000", "62543")]
    [InlineData("0.10", "0.1")]
    [InlineData("0", "0")]
    [InlineData("0.000", "0")]
    [InlineData("1234567.89", "1234567.89")]
    [InlineData(null, "")]
    public void Decimal_numbers_are_as_short_as_they_go(string? number, string written) =>
        Written(csv => csv.Number(number is null ? null : decimal.Parse(number, System.Globalization.CultureInfo.InvariantCulture))).Should().Be(written);

    [Theory]
    [InlineData(0.125, 2, "0.13")]
    [InlineData(-0.125, 2, "-0.13")]
    [InlineData(2.5, 0, "3")]
    [InlineData(0.00004, 4, "0.0000")]
    [InlineData(-0.00004, 4, "0.0000")]
    [InlineData(1e9, 3, "1000000000.000")]
    public void Measures_have_their_decimals_and_halves_go_away_from_zero(double number, int decimals, string written) =>
        Written(csv => csv.Number(number, decimals)).Should().Be(written);

    [Fact]
    public void A_date_is_ISO_8601_and_none_is_an_empty_field()
    {
        Written(csv => csv.Date(new DateOnly(2026, 3, 4))).Should().Be("2026-03-04");
        Written(csv => csv.Date(null)).Should().Be("");
    }

    [Fact]
    public void Whatever_the_text_a_reader_by_RFC_4180_gets_it_back_with_at_most_an_apostrophe_before_it() =>
        Gen.OneOf("=", "+", "-", "@", "\r\n", "\n", "\"", ",", "'", "a", "漢", "\U0001F69A", " ").Array[0, 6].Select(string.Concat).Sample(
            text =>
            {
                var written = Written(csv => csv.Text(text));
                var read = written.StartsWith('"') ? written[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal) : written;
                read.Should().Be(text.Length > 0 && "=+-@\r".Contains(text[0], StringComparison.Ordinal) ? "'" + text : text);
            },
            seed: Store.RandomEntries.Seed,
            iter: 2_000);

    private static string Written(Func<CsvText, CsvText> field)
    {
        using var csv = new CsvText("h", "i");
        field(csv).Number(7).EndRow();
        return Encoding.UTF8.GetString(csv.Bytes())["h,i\r\n".Length..^",7\r\n".Length];
    }
}
