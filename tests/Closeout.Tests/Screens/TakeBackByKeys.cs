using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>The day book takes back what was recorded by mistake.</summary>
public sealed class TakeBackByKeys
{
    [Fact]
    public void A_delivery_typed_by_mistake_is_chosen_in_the_day_book_and_taken_back()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L1{Enter}{Escape}").Entries.Should().ContainSingle();
        var shelf = kiosk.Depot.Stock.Ledger.Units(Place.Shelf, new("CO-10Y"));

        kiosk.Press("{F8}CO-10Y{F4}").Show().Should().Contain("5 cartons came");
        kiosk.Press("for another depot{Enter}L1{Enter}");

        kiosk.Entries[^1].Should().BeOfType<StockTakenBack>().Which.Why.Should().Be("for another depot");
        kiosk.Session.Model.Said.Should().Be("Taken back.");
        kiosk.Depot.Stock.Ledger.Units(Place.Shelf, new("CO-10Y")).Should().BeLessThan(shelf);
    }

    [Fact]
    public void What_cannot_be_taken_back_is_refused_with_the_way_out()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("{F8}{F4}1{Enter}{Enter}by mistake{Enter}L1{Enter}").Session.Model.Said.Should().Contain("cannot be taken back").And.Contain("correct the count");

        kiosk.Entries.Should().BeEmpty();
    }
}
