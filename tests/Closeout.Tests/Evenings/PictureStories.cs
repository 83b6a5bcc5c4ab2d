using System.Security.Cryptography;
using System.Text;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Evenings;

/// <summary>Pictures named in evening.csv, as files of the day folder.</summary>
public sealed class PictureStories
{
    /// <summary>The first bytes of a WebP file (RIFF container, form type WEBP), which are letters, and something behind them.</summary>
    private const string Wiper = "RIFF0000WEBPVP8 a torn wiper";
    private const string Tyre = "RIFF0000WEBPVP8 a worn tyre";

    [Fact]
    public void A_picture_goes_into_the_book_and_comes_out_byte_for_byte()
    {
        using var evening = Rehearsed.With("B2,T2,weekly,photo,,wiper.webp\nB2,T2,weekly,photo,,tyre.webp\nB2,T2,weekly,photos,,2\nB2,T2,sign,,,", ("wiper.webp", Wiper), ("tyre.webp", Tyre));

        evening.Entries.OfType<PhotoAttached>().Should().Equal(
            new PhotoAttached(new("B2"), Sha(Wiper), "wiper.webp", Wiper.Length), new PhotoAttached(new("B2"), Sha(Tyre), "tyre.webp", Tyre.Length));
        evening.Entries.OfType<WeeklyChecked>().Single().Photos.Should().Be(2);

        var photos = evening.Photos();
        photos.Values.Select(Encoding.ASCII.GetString).Should().BeEquivalentTo(Wiper, Tyre);
        photos.Keys.Should().OnlyContain(p => p.StartsWith("2026-03-04/B2/") && p.EndsWith(".webp"));
    }

    [Fact]
    public void The_same_picture_under_another_name_counts_once()
    {
        using var twice = Rehearsed.With("B1,T1,weekly,photo,,a.webp\nB1,T1,weekly,photo,,b.webp", ("a.webp", Wiper), ("b.webp", Wiper));
        twice.Said.Err.Should().Be("evening.csv:3:1: b.webp is already attached.\n1 fault; the evening was not rehearsed and nothing was written.\n");

        using var two = Rehearsed.With("B1,T1,weekly,photo,,a.webp\nB2,T2,weekly,photo,,b.webp\nB2,T2,sign,,,", ("a.webp", Wiper), ("b.webp", Wiper));
        two.Photos().Should().HaveCount(2, "each van has its own, and one file is kept of both");
    }

    [Fact]
    public void No_more_than_24_belong_to_a_close_out()
    {
        var pictures = Enumerable.Range(0, 25).Select(n => ($"{n}.webp", (string?)(Wiper + n))).ToArray();
        using var evening = Rehearsed.With(string.Join('\n', pictures.Select(p => $"B1,T1,weekly,photo,,{p.Item1}")), pictures);

        evening.Said.Err.Should().StartWith("evening.csv:26:1: B1 Knot has 24 photos tonight. The limit is 24.");
        evening.Left.Should().BeEmpty();
    }

    [Theory]
    [InlineData("B1,T1,weekly,photo,,none.webp", "3:1: ", "none.webp cannot be attached")]
    [InlineData("B1,T1,weekly,photo,,words.webp", "3:1: ", "words.webp is not a photo: allowed are JPEG, PNG, WebP and HEIC")]
    [InlineData("B1,T1,weekly,photo,,empty.webp", "3:1: ", "empty.webp has 0 bytes: it is empty, or still being copied")]
    [InlineData("B1,T1,sign,,,\nB1,T1,weekly,photo,,wiper.webp", "4:1: ", "B1 Knot was signed off at 16:3")]
    [InlineData("B1,T1,weekly,photo,,../wiper.webp", "3:21: ", "value reaches out of the day folder")]
    [InlineData("B1,T1,weekly,photo,,/etc/hostname", "3:21: ", "value reaches out of the day folder")]
    [InlineData("B1,T1,weekly,photo,,below/../../wiper.webp", "3:21: ", "value reaches out of the day folder")]
    [InlineData("B1,T1,weekly,photo,,", "3:21: ", "value is no short text")]
    public void What_is_no_picture_of_the_day_folder_is_a_fault_at_its_line_and_nothing_is_written(string rows, string place, string told)
    {
        using var evening = Rehearsed.With("B2,T2,leftovers,,,\n" + rows, ("wiper.webp", Wiper), ("words.webp", "no picture at all"), ("empty.webp", ""));

        evening.Said.Code.Should().Be(2);
        evening.Said.Err.Should().StartWith("evening.csv:" + place).And.Contain(told);
        evening.Left.Should().BeEmpty();
    }

    [Fact]
    public void A_missing_picture_is_told_beside_every_other_fault()
    {
        using var evening = Rehearsed.With("B1,T1,weekly,photo,,none.webp\nB1,T1,damage,zone,,roof", ("wiper.webp", Wiper));

        evening.Said.Err.Should().Contain("evening.csv:2:1: ").And.Contain("evening.csv:3:1: ").And.EndWith("2 faults; the evening was not rehearsed and nothing was written.\n");
    }

    private static string Sha(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(text)));
}
