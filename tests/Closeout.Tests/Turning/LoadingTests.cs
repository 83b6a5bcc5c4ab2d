using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Turning;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Turning;

/// <summary>What forbids loading a day folder into a book that has one already.</summary>
public class LoadingTests
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly Depot Stocked = Tiny.Opened("shelf: 5 LAMP; bin: 2 WRAP; B1: 2+5 LAMP");

    private static DayGiven Given(Setup setup, DateOnly? date = null) => new(date ?? Tiny.Wednesday, setup, [], GivenBookings.None, GivenUse.None, null, []);

    private static Setup Without(Item item) => Tiny.Setup with { Items = [.. Tiny.Setup.Items.Where(i => i.Code != item.Code)] };

    private static Setup Without(Code<Van> van) => Tiny.Setup with { Vans = [.. Tiny.Setup.Vans.Where(v => v.Code != van)] };

    private static Setup CartonOf(int units) =>
        Tiny.Setup with { Items = [.. Tiny.Setup.Items.Select(i => i.Code == Lamp ? i with { UnitsPerCarton = units } : i)] };

    private static void Fault(Depot depot, DayGiven given, string file, params string[] words)
    {
        var (inFile, text) = Loading.Faults(depot, given).Should().ContainSingle().Which;
        inFile.Should().Be(file);
        text.Should().ContainAll(words);
    }

    [Fact]
    public void The_same_folder_again_is_loaded_and_so_is_one_of_a_later_date()
    {
        Loading.Faults(Stocked, Given(Tiny.Setup)).Should().BeEmpty();
        Loading.Faults(Stocked, Given(Tiny.Setup, Tiny.Friday)).Should().BeEmpty();
        Loading.Faults(Stocked.At(Tiny.B1, Step.Mileage), Given(Tiny.Setup)).Should().BeEmpty("the evening goes on");
    }

    [Theory]
    [InlineData("2026-11-16")]
    [InlineData("2026-11-17")]
    public void The_business_date_does_not_go_back(string date) =>
        Fault(Stocked, Given(Tiny.Setup, DateOnly.Parse(date)), "depot.csv", $"found {date}", "2026-11-18");

    [Fact]
    public void A_business_date_that_is_far_ahead_is_taken_for_mistyped()
    {
        Loading.Faults(Stocked, Given(Tiny.Setup, Tiny.Wednesday.AddDays(60))).Should().BeEmpty();
        Fault(Stocked, Given(Tiny.Setup, Tiny.Wednesday.AddDays(61)), "depot.csv", "61 days ahead");
        Fault(Stocked, Given(Tiny.Setup, new(2062, 11, 19)), "depot.csv", "13150 days ahead", "found 2062-11-19", "allowed up to 2027-01-17");
    }

    [Fact]
    public void Who_becomes_a_lead_keeps_no_PIN_taken_as_a_technician()
    {
        var hash = Closeout.Tests.People.TinyPeople.Known;
        var depot = Stocked.Take(new PinSet(Tiny.T1, hash, Issued: false, null)).Take(new PinSet(Tiny.Lead, hash, Issued: true, null));
        var setup = Tiny.Setup with { Crew = [.. Tiny.Setup.Crew.Select(t => t.Code == Tiny.T1 ? t with { IsLead = true } : t)] };

        var page = Loading.NextPageWith(depot, Given(setup, Tiny.Friday));

        page.Carried.People.Should().ContainSingle().Which.Person.Should().Be(Tiny.Lead);
    }

    [Fact]
    public void The_business_date_does_not_move_on_over_an_open_close_out()
    {
        Fault(Stocked.At(Tiny.B1, Step.Mileage), Given(Tiny.Setup, Tiny.Friday), "depot.csv", "2026-11-20", "B1", "sign it first");
        Loading.Faults(Stocked.At(Tiny.B1, Step.Closed), Given(Tiny.Setup, Tiny.Friday)).Should().BeEmpty();
    }

    [Fact]
    public void A_van_with_an_open_close_out_does_not_disappear() =>
        Fault(Stocked.At(Tiny.B2, Step.Leftovers), Given(Without(Tiny.B2)), "vans.csv", "B2", "open close-out");

    [Fact]
    public void A_van_with_stock_aboard_does_not_disappear_and_an_empty_one_may()
    {
        Fault(Stocked, Given(Without(Tiny.B1)), "vans.csv", "B1", "25 units");
        Fault(Tiny.Opened("B2: 0+1 LAMP"), Given(Without(Tiny.B2)), "vans.csv", "B2", "1 units");
        Loading.Faults(Stocked, Given(Without(Tiny.B3))).Should().BeEmpty();
    }

    [Fact]
    public void An_item_in_stock_does_not_disappear_and_one_without_may()
    {
        Fault(Stocked, Given(Without(Tiny.Lamp)), "items.csv", "LAMP", "75 units in 3 places");
        Loading.Faults(Stocked, Given(Without(Tiny.Shower))).Should().BeEmpty();
    }

    [Fact]
    public void An_item_whose_boxes_were_counted_at_the_depot_tonight_does_not_disappear()
    {
        var depot = Tiny.Opened().Did(new CountDepotBoxes(Tiny.Wrap.Code, 2, Tiny.T1));
        Fault(depot, Given(Without(Tiny.Wrap)), "items.csv", "WRAP", "boxes counted at the depot tonight");
        Loading.Faults(depot, Given(Without(Tiny.Shower))).Should().BeEmpty();
    }

    [Fact]
    public void An_item_counted_tonight_does_not_disappear_even_when_none_is_left()
    {
        var depot = Tiny.Opened("B1: 0+5 LAMP").At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 0));
        Fault(depot, Given(Without(Tiny.Lamp)), "items.csv", "LAMP", "counted tonight on van B1");
    }

    [Fact]
    public void Units_per_carton_do_not_change_under_sealed_cartons()
    {
        Fault(Stocked, Given(CartonOf(12)), "items.csv", "LAMP", "70 units are in sealed cartons", "found 12", "allowed 10");
        Loading.Faults(Tiny.Opened("bin: 7 LAMP; B1: 0+5 LAMP"), Given(CartonOf(12))).Should().BeEmpty("all of it is loose");
    }

    [Fact]
    public void Units_per_carton_do_not_change_under_a_count_of_tonight()
    {
        // The last carton was opened and counted; counted again with cartons of 20, ten units would come out of nothing.
        var counted = Tiny.Opened("B1: 1+0 LAMP").At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 0));
        var given = Given(CartonOf(20));
        Loading.Faults(counted, given).Should().NotBeEmpty();
    }

    [Fact]
    public void The_spelling_that_the_book_keeps_stays()
    {
        var folder = Given(Tiny.Setup with { Items = [Tiny.Lamp with { Code = new("lamp") }], Vans = [Tiny.Van("b1", 1, "Avocet", 1000), Tiny.Van("B7", 7, "Godwit", 0)] });
        var kept = Loading.KeepSpelling(Stocked, folder).Setup;
        kept.Items.Select(i => i.Code.Text).Should().Equal("LAMP");
        kept.Vans.Select(v => v.Code.Text).Should().Equal("B1", "B7");
    }

    [Fact]
    public void The_next_page_takes_the_folders_bookings_and_the_books_stock()
    {
        var booked = new Booking(Tiny.Friday, Tiny.B1, new("HOME"), 4);
        var given = Given(Tiny.Setup, Tiny.Friday) with { Booked = new([Tiny.Friday], [booked]) };
        var page = Loading.NextPageWith(Stocked, given);
        page.Date.Should().Be(Tiny.Friday);
        page.Carried.Bookings.Should().Equal(booked);
        page.Carried.Balances.Should().BeEquivalentTo(Stocked.Stock.Ledger.Balances);
    }
}
