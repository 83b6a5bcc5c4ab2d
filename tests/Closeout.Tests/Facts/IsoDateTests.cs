using System.Globalization;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Facts;

/// <summary>ISO 8601:2019, calendar date in its extended format, as RFC 3339 section 5.6 (full-date) has it.</summary>
public sealed class IsoDateTests
{
    [Theory]
    [InlineData(2026, 3, 4, "2026-03-04")]
    [InlineData(1, 1, 1, "0001-01-01")]
    [InlineData(9999, 12, 31, "9999-12-31")]
    [InlineData(2028, 2, 29, "2028-02-29")]
    public void Text_and_date_are_each_others(int year, int month, int day, string text)
    {
        var date = new DateOnly(year, month, day);

        IsoDate.Text(date).Should().Be(text);
        IsoDate.Parse(text).Should().Be(date);
        string.Create(CultureInfo.InvariantCulture, $"{date:O}").Should().Be(text);
    }

    [Theory]
    [InlineData("")]
    [InlineData("2026-3-4")]
    [InlineData("2026-02-29")]
    [InlineData("2026-13-01")]
    [InlineData(" 2026-03-04")]
    [InlineData("2026-03-04 ")]
    [InlineData("20260304")]
    [InlineData("04.03.2026")]
    [InlineData("２０２６-03-04")]
    public void Anything_else_is_none(string text) => IsoDate.Parse(text).Should().BeNull();
}
