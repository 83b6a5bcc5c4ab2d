using Closeout.Cardboard;
using Closeout.Facts;
using Closeout.Screens;
using Closeout.Screens.Forms;
using Closeout.Screens.Yard;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>F3 after the sample evening: pages, and what is recorded of the yard.</summary>
public sealed class YardByKeys : IDisposable
{
    private readonly SampleKiosk kiosk = SampleKiosk.Evening();

    [Fact]
    public void Tab_goes_over_all_pages_and_back_to_the_first()
    {
        kiosk.Press("{F3}");
        var seen = new List<(YardPage, string)>();
        foreach (var page in Enum.GetValues<YardPage>())
        {
            ((YardScreen)kiosk.Session.Model.Screen).Page.Should().Be(page);
            seen.Add((page, kiosk.Show().Split('\n')[2].Trim().Split("  ")[0]));
            kiosk.Press("{Tab}");
        }

        ((YardScreen)kiosk.Session.Model.Screen).Page.Should().Be(YardPage.Tonight);
        seen.Take(6).Should().Equal((YardPage.Tonight, "tonight"), (YardPage.Weeks, "by week"), (YardPage.Months, "by month"), (YardPage.Days, "by day"), (YardPage.Vans, "by van"), (YardPage.Items, "by item"));
        seen[6].Item2.Should().Contain("lamps");
        kiosk.Press("{Escape}").Session.Model.Screen.Should().BeOfType<WallScreen>();
    }

    [Fact]
    public void All_totals_add_up_to_the_same_boxes_and_pounds()
    {
        kiosk.Press("{F3}{Tab}");
        var sums = new List<string>();
        for (var page = YardPage.Weeks; page <= YardPage.Items; page++)
        {
            sums.Add(kiosk.Show().Split('\n').Single(l => l.Contains("all of these")).PadRight(61)[..61]);
            kiosk.Press("{Tab}");
        }

        sums.Distinct().Should().ContainSingle();
    }

    [Fact]
    public void B_counts_the_boxes_of_cartons_opened_here_and_offers_the_next_that_nobody_counted()
    {
        kiosk.Press("B1{F4}={F1}{Escape}{Escape}");
        var opened = kiosk.Depot.Stock.Loaded.Values.Where(l => l.Opened > 0).ToList();
        opened.Should().NotBeEmpty("the plan opens cartons for B1");

        kiosk.Press("{F3}").Show().Should().Contain("opened here");
        kiosk.Press("b");
        var form = ((FormScreen)kiosk.Session.Model.Screen).Form;
        (form["item"].Text, form["boxes"].Text).Should().Be((opened[0].Item.Text, $"{opened[0].Opened}"));

        kiosk.Press("{Enter}{Enter}T02{Enter}");
        kiosk.Entries[^1].Should().Be(new DepotBoxesCounted(opened[0].Item, opened[0].Opened, opened[0].Opened, new("T02")));
        kiosk.Session.Model.Screen.Should().BeOfType<YardScreen>();
        LostBoxes.OfDepot(kiosk.Depot).Should().NotContain(m => m.Item == opened[0].Item);
    }

    [Fact]
    public void P_records_a_pickup_the_container_counts_from_empty_and_a_weighed_one_calibrates()
    {
        kiosk.Press("{F3}p");
        kiosk.Show(150).Should().Contain("THE HAULER CAME").And.Contain("of the container. From now on it counts from empty.").And.Contain("Weights in lb");

        kiosk.Press("80{Enter}610{Enter}T02{Enter}");
        var emptied = kiosk.Entries[^1].Should().BeOfType<ContainerEmptied>().Which;
        (emptied.FullPercent, emptied.WeighedLb, emptied.By.Text).Should().Be((80, 610, "T02"));
        kiosk.Show().Should().Contain("[                    ] 0 %").And.Contain("2026-11-18").And.Contain("95.3 lb a cubic yard", "610 lb in 80 % of 8 cu yd");

        kiosk.Press("p{Enter}{Enter}T02{Enter}").Entries[^1].Should().Match<ContainerEmptied>(e => e.BookLb == 0 && e.FullPercent == null && e.WeighedLb == null);
    }

    [Fact]
    public void S_ships_the_oldest_box_and_a_stream_that_is_empty_is_refused()
    {
        kiosk.Press("{F3}s");
        kiosk.Show(150).Should().Contain("SHIP AN ACCUMULATION BOX").And.Contain("lamps: 50 pieces since 2026-01-05").And.Contain("40 CFR 273.18");

        kiosk.Press("{Enter}lamp recycler, slip 7{Enter}T02{Enter}");
        kiosk.Entries[^1].Should().Be(new CollectingBoxShipped(new("lamps"), new(2026, 1, 5), 50, "lamp recycler, slip 7", new("T02")));

        kiosk.Press("slamps{Enter}the same{Enter}T02{Enter}").Session.Model.Said.Should().Contain("is empty");
        kiosk.Press("{Escape}{Tab}{Tab}{Tab}{Tab}{Tab}{Tab}").Show().Should().Contain("OTHER WASTE").And.Contain("4 pieces tonight").And.NotContain("holds 50");
    }

    [Fact]
    public void W_writes_off_the_depots_own_boxes_alone()
    {
        kiosk.Press("{F3}w").Show().Should().Contain("No box of the depot is missing.");
        kiosk.Press("LED-A19-27{Enter}{Enter}never found{Enter}L1{Enter}").Session.Model.Said.Should().Contain("The depot has no box of");

        kiosk.Press("{Escape}{Escape}B1{F4}={F3}{Escape}{F3}w");
        var item = ((FormScreen)kiosk.Session.Model.Screen).Form["item"].Text;
        kiosk.Press("{Enter}{Enter}thrown away by mistake{Enter}L1{Enter}");
        kiosk.Entries[^1].Should().Match<BoxesWrittenOff>(e => e.Van == null && e.Item.Text == item && e.Boxes > 0);
    }

    [Theory]
    [InlineData("b{Enter}", "Type the code of the item")]
    [InlineData("bLED-G25{Enter}{Enter}", "Type how many boxes were flattened")]
    [InlineData("bLED-G25{Enter}1{Enter}{Enter}", "Type your own code")]
    [InlineData("bLED-G99{Enter}", "No item has the code LED-G99")]
    [InlineData("bLED-G25{Enter}1{Enter}T99{Enter}", "Nobody here has the code T99")]
    [InlineData("p200{Enter}", "Full by eye, percent cannot be 200. Type 1 to 120")]
    [InlineData("p0{Enter}", "Full by eye, percent cannot be 0")]
    [InlineData("p{Enter}100001{Enter}T02{Enter}", "Pounds weighed cannot be 100001")]
    [InlineData("p{Enter}{Enter}{Enter}", "Type your own code")]
    [InlineData("s{Enter}{Enter}", "Say who took it, and slip")]
    [InlineData("spaint{Enter}", "No waste stream is called paint")]
    [InlineData("s{Enter}4111 1111 1111 1111{Enter}", "card number")]
    [InlineData("wLED-G25{Enter}{Enter}why{Enter}T02{Enter}", "A lead writes boxes off")]
    public void What_is_missing_or_wrong_is_said_and_the_form_stays(string keys, string said)
    {
        var before = kiosk.Entries.Count;
        kiosk.Press("{F3}" + keys);

        kiosk.Session.Model.Said.Should().Contain(said);
        kiosk.Session.Model.Screen.Should().BeOfType<FormScreen>();
        kiosk.Entries.Should().HaveCount(before);
    }

    [Fact]
    public void Days_scroll_to_the_oldest_and_back()
    {
        kiosk.Press("{F3}{Tab}{Tab}{Tab}");
        var newest = kiosk.Show();
        newest.Should().Contain("2026-11-18");

        kiosk.Press("{PageDown}{PageDown}{PageDown}{PageDown}").Show().Should().NotContain("2026-11-18 ").And.Contain("2026-1");
        kiosk.Press("{Home}").Show().Should().Be(newest);
    }

    public void Dispose() => kiosk.Dispose();
}
