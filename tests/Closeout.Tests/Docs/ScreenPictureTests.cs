using System.Xml.Linq;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>
/// The pictures in docs/pictures are made from golden screens. To make them anew: UPDATE_GOLDEN=1 dotnet test, twice, for the screens
/// come first.
/// </summary>
public sealed class ScreenPictureTests
{
    /// <summary>By its name in docs/pictures: the golden screen, and what the picture shows.</summary>
    public static TheoryData<string, string, string> Pictures => new()
    {
        { "wall.svg", "evening-wall-80x24.txt", "The bay wall: six vans, what holds two of them back, and tomorrow's totals" },
        { "leftovers.svg", "leftovers-80x24.txt", "A close-out at the first step: how many shower heads are left in the van" },
        { "again.svg", "leftovers-above-80x24.txt", "An answer that looks wrong is asked again" },
        { "van.svg", "evening-van-80x24.txt", "All of a van: why it is held, its incidents, what is due, what is to be loaded" },
        { "plan.svg", "evening-tomorrow-80x24.txt", "Tomorrow's plan, van by van: what each lacks and where it comes from" },
        { "why.svg", "evening-why-80x24.txt", "Why a line of the plan is what it is: visits, demand, promise, limits, chances as bars" },
        { "load.svg", "evening-load-80x24.txt", "Loading a van: what was really taken, item by item" },
    };

    /// <summary>The text of all pages.</summary>
    private static readonly Lazy<string> Text = new(() => string.Concat(
        ((IEnumerable<object[]>)LinksTests.Pages).Select(p => File.ReadAllText(Path.Combine(Repository.Root, (string)p[0])))));

    [Theory]
    [MemberData(nameof(Pictures))]
    public void A_picture_is_the_golden_screen_that_it_was_made_from(string name, string golden, string label)
    {
        var path = Path.Combine(Repository.Root, "docs", "pictures", name);
        var picture = ScreenPicture.Of(File.ReadAllText(Repository.Golden("screens", golden)), label, Tones(golden));
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
        {
            File.WriteAllText(path, picture);
        }

        File.ReadAllText(path).ReplaceLineEndings("\n").Should().Be(picture);
    }

    private static string Tones(string golden) => File.ReadLines(Repository.Golden("screens", "tones.txt"))
        .Single(l => l.StartsWith(golden[..^"-80x24.txt".Length] + " 80x24 | ", StringComparison.Ordinal)).Split(" | ", 2)[1];

    [Fact]
    public void Every_sign_of_a_screen_is_in_its_picture_and_none_is_markup()
    {
        var picture = XDocument.Parse(ScreenPicture.Of("  a < b & \"c\"\n\n! d  e\n", "a test"));
        var lines = picture.Descendants().Where(e => e.Name.LocalName == "text").ToList();
        lines.Select(l => l.Value).Should().Equal("a < b & \"c\"", "! d  e");
        lines.Select(l => l.Attribute("x")!.Value).Should().Equal("32.8", "16");
    }

    [Fact]
    public void Every_picture_is_shown_on_a_page() =>
        ((IEnumerable<object[]>)Pictures).Select(p => (string)p[0])
            .Where(name => !Text.Value.Contains($"pictures/{name})", StringComparison.Ordinal))
            .Should().BeEmpty();
}
