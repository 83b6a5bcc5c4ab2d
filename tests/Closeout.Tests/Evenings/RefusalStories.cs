using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Evenings;

/// <summary>Answers that are well written and cannot be recorded: told at their line, and nothing is written.</summary>
public sealed class RefusalStories
{
    [Theory]
    [InlineData("B1,T1,sign,,,\nB1,T1,leftovers,kept,LAMP,1", "3:1: B1 Knot was signed off at 16:31 by T1. A lead can reopen it.")]
    [InlineData("B1,T1,damage,zone,,roof", "2:1: Say what it is (1 to 80 characters).")]
    [InlineData("B1,T1,weekly,oil_change_on,,2026-03-05", "2:1: The last oil change cannot be 2026-03-05; today is 2026-03-04.")]
    public void A_refusal_at_play_is_told_with_its_line(string rows, string told)
    {
        using var evening = Rehearsed.With(rows);

        evening.Said.Code.Should().Be(2);
        evening.Said.Err.Should().Be($"evening.csv:{told}\n1 fault; the evening was not rehearsed and nothing was written.\n");
        evening.Said.Out.Should().BeEmpty();
        evening.Left.Should().BeEmpty();
    }

    [Fact]
    public void All_refusals_of_an_evening_are_told_each_at_its_own_line()
    {
        using var evening = Rehearsed.With("B1,T1,damage,what,,dent\nB2,T2,weekly,oil_change_on,,2026-03-05\nB1,T1,damage,zone,,roof\nB1,T1,damage,zone,,door");

        evening.Said.Code.Should().Be(2);
        evening.Said.Err.Should().StartWith("evening.csv:3:1: ").And.Contain("evening.csv:5:1: ").And.Contain("2 faults; the evening was not rehearsed");
    }

    [Fact]
    public void A_count_of_more_units_than_can_be_reckoned_is_refused_and_no_crash()
    {
        var rehearsing = () =>
        {
            using var evening = Rehearsed.With("B1,T1,leftovers,sealed,LAMP,99999", ("items.csv", SmallDay.Text("items.csv").Replace("Lamp,1,10,", "Lamp,1,100000,", StringComparison.Ordinal)));
            return evening.Said;
        };

        rehearsing.Should().NotThrow().Which.Should().Match<Spoken>(s => s.Code == 2 && s.Err.StartsWith("evening.csv:2:1: "));
    }

    [Theory]
    [InlineData("depot.csv", "2026-03-04", "9999-12-31", 2)]
    [InlineData("depot.csv", "2026-03-04", "0001-01-01", 2)]
    [InlineData("vans.csv", "2026-01-10", "9999-12-31", 2)]
    public void A_date_at_the_end_of_the_calendar_is_an_answer_and_no_crash(string file, string was, string now, int code)
    {
        var rehearsing = () =>
        {
            using var evening = Rehearsed.With("B1,T1,sign,,,", (file, SmallDay.Text(file).Replace(was, now, StringComparison.Ordinal)));
            return evening.Said;
        };

        rehearsing.Should().NotThrow().Which.Code.Should().Be(code);
    }
}
