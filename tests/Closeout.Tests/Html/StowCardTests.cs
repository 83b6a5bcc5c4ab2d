using System.Globalization;
using System.Xml.Linq;
using Closeout.Facts;
using Closeout.Html;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

public sealed class StowCardTests
{
    [Fact]
    public void A_small_card_looks_as_its_picture() => PageText.MustBeGolden(StowCard.Html(Tiny.Opened(), Tiny.Setup.Vans[0]), "stow.html");

    [Fact]
    public void Every_item_that_the_van_carries_stands_there_once_with_the_vans_own_low_and_high()
    {
        var setup = SampleDay.Given.Setup;
        foreach (var van in setup.Vans)
        {
            var rows = Page(setup, van).Descendants("tbody").Single().Elements("tr").Select(r => r.Elements("td").Select(d => d.Value).ToList()).ToList();
            rows.Select(r => (r[2], r[4], r[5])).Should().BeEquivalentTo(setup.Items.Where(i => setup.Limit(van.Code, i).High > 0)
                .Select(i => (i.Code.Text, Number(setup.Limit(van.Code, i).Low), Number(setup.Limit(van.Code, i).High))));
        }
    }

    [Fact]
    public void Every_place_has_a_number_once_in_the_picture_and_once_in_the_table()
    {
        var setup = SampleDay.Given.Setup with { Items = [.. SampleDay.Given.Setup.Items, Tiny.Lamp with { Stow = "with the ladder" }, Tiny.Wrap with { Stow = "" }] };
        var page = Page(setup, setup.Vans[0]);

        var numbers = page.Of("text", "number").SelectMany(t => t.Value.Split(' ')).Concat(page.Of("div", "place").Single().Elements("p").Select(p => p.Element("b")!.Value)).ToList();
        var places = StowCard.Places(setup, setup.Vans[0]);
        numbers.Select(n => int.Parse(n, CultureInfo.InvariantCulture)).Order().Should().Equal(Enumerable.Range(1, places.Count));
        page.Of("td", "p").Select(d => d.Value).Where(v => v.Length > 0).Should().Equal(Enumerable.Range(1, places.Count).Select(n => $"{n}"));
        page.Of("div", "place").Single().Elements("p").Select(p => p.Value).Should().Equal("9 with the ladder: not in the picture", "10 no place said: not in the picture");
    }

    [Theory]
    [InlineData("front left drawers", 0, 0)]
    [InlineData("Rear Right tray", 2, 2)]
    [InlineData("ceiling rack", 1, 1)]
    [InlineData("rear", 2, 1)]
    [InlineData("left-hand shelf", 1, 0)]
    [InlineData("cab, passenger side", 0, 2)]
    public void A_place_is_found_by_the_words_of_its_name(string place, int along, int across) => StowPicture.Cell(place).Should().Be((along, across));

    [Theory]
    [InlineData("with the ladder")]
    [InlineData("leftover bag")]
    [InlineData("")]
    public void A_place_whose_name_says_neither_is_none(string place) => StowPicture.Cell(place).Should().BeNull();

    [Fact]
    public void A_van_that_carries_nothing_is_told_so() =>
        StowCard.Html(Tiny.Opened(setup: Tiny.Setup with { Items = [] }), Tiny.Setup.Vans[0]).Should().Contain("carries nothing").And.NotContain("<svg");

    private static XElement Page(Setup setup, Van van) => PageText.Parsed(StowCard.Html(Tiny.Opened(setup: setup), van));

    private static string Number(int n) => n.ToString(CultureInfo.InvariantCulture);
}
