using Closeout.Facts;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Evenings;

/// <summary>The weekly walk-around in evening.csv: B2 is due.</summary>
public sealed class WalkRoundStories
{
    [Fact]
    public void A_part_named_in_the_file_becomes_an_incident_and_is_not_in_order()
    {
        using var evening = Rehearsed.Evening("B2,T2,weekly,oil_change_on,,2026-02-01", "B2,T2,weekly,part,Wipers,\"left blade torn, smears\"", "B2,T2,weekly,clean,,yes", "B2,T2,sign,,,");

        evening.Entries.OfType<DamageFound>().Single().Should().Be(
            new DamageFound(new("B2"), 1, new("T2"), "wipers", Severity.Repair, "left blade torn, smears", Drivable: true, "", null));
        evening.Entries.OfType<WeeklyChecked>().Single().NotInOrder.Should().Equal(["wipers"], "the check says what was found on it, wherever its other rows stand");
        evening.Rows("incidents").Should().ContainSingle().Which.Should().Contain("wipers").And.Contain("left blade torn");
        Readiness.Of(evening.Depot).Single(v => v.Van.Code.Text == "B2").Notes.Should().Contain("wipers, to repair: left blade torn, smears (incident 1)");
    }

    [Fact]
    public void Parts_and_nothing_else_are_a_walk_round_confirmed_by_signing()
    {
        using var evening = Rehearsed.Evening("B2,T2,weekly,part,tires,worn to the mark", "B2,T2,weekly,part,lights,left one dark", "B2,T2,sign,,,");

        evening.Entries.OfType<DamageFound>().Select(d => (d.Number, d.Zone)).Should().Equal((1, "tires"), (2, "lights"));
        evening.Entries.OfType<WeeklyChecked>().Single().NotInOrder.Should().Equal("lights", "tires");
    }

    [Theory]
    [InlineData("B2,T2,weekly,part,,torn", "evening.csv:2:19: item is needed for part")]
    [InlineData("B2,T2,weekly,part,engine,torn", "evening.csv:2:19: item is none of the words allowed: found \"engine\"")]
    [InlineData("B2,T2,weekly,part,wipers,", "evening.csv:2:26: ")]
    [InlineData("B2,T2,weekly,clean,wipers,yes", "evening.csv:2:20: item has no place in step weekly")]
    public void A_part_that_is_none_or_without_words_is_a_fault_at_its_place(string row, string told)
    {
        using var evening = Rehearsed.With(row);
        (evening.Said.Code, evening.Said.Err.Split('\n')[0]).Should().Match<(int Code, string First)>(s => s.Code == 2 && s.First.StartsWith(told));
    }
}
