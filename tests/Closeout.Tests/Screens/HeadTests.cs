using Closeout.Screens.Parts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>The first line of every screen: whatever the depot is called, the date, REHEARSAL and the title stand there.</summary>
public sealed class HeadTests
{
    [Theory]
    [InlineData(80, "x")]
    [InlineData(80, "漢")]
    [InlineData(120, "x")]
    [InlineData(120, "漢")]
    public void A_name_of_any_length_gives_way_to_date_REHEARSAL_and_title(int width, string letter)
    {
        foreach (var (title, right) in new[] { ("TOMORROW'S PLAN", "Thu 19 Nov 2026"), ("CLOSE OUT FOR SOMEBODY", ""), ("BAY WALL", "3 of 6 closed 16:52"), ("B3 Curlew  T07", "16:52"), ("DAY BOOK", "1204 entries") })
        {
            for (var length = 1; length <= 100; length++)
            {
                var name = string.Concat(Enumerable.Repeat(letter, length));
                var head = Head(width, name, title, right);

                head.Should().Contain($"   Wed 18 Nov 2026  REHEARSAL  {title}", $"of a name of {length}");
                head.TrimEnd().Should().EndWith(right.Length > 0 ? $"  {right}" : title);
                (head.Contains(name + "   ", StringComparison.Ordinal) || head.Contains("…   ", StringComparison.Ordinal)).Should().BeTrue("all of the name, or an ellipsis");
            }
        }
    }

    [Fact]
    public void A_title_with_a_long_name_in_it_gives_way_only_to_date_REHEARSAL_and_time() =>
        Head(80, "Saltmarsh Row", $"B3 {new string('y', 100)}", "16:52").Should().StartWith("    Wed 18 Nov 2026  REHEARSAL  B3 yyy").And.Contain("…  16:52");

    [Fact]
    public void The_help_has_the_line_too()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("{F1}").Show().Should().Contain("Wed 18 Nov 2026  HELP");
    }

    private static string Head(int width, string name, string title, string right)
    {
        var depot = Tiny.Opened(setup: Tiny.Setup with { Depot = Tiny.Settings with { Name = name } }) with { Rehearsal = true };
        var sheet = new Sheet(width, 1);
        Frame.Head(sheet, depot, title, right);
        return sheet.ToString().TrimEnd('\n');
    }
}
