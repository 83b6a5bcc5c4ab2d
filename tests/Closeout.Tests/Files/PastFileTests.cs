using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>past.csv: what a new book takes from older records, and every fault with its place. The small day is 2026-03-04.</summary>
public sealed class PastFileTests
{
    private const string Header = "date,van,record,item,value\n";
    private const string Number = "with a decimal point";

    [Theory]
    [InlineData("2026-03-04,B1,odometer,,900", "1: date is not past: found \"2026-03-04\", allowed a day before 2026-03-04")]
    [InlineData("3 March,B1,odometer,,900", "1: date is no date: found \"3 March\", allowed YYYY-MM-DD, a day of the years 1900 to 2199")]
    [InlineData("2026-03-03,B1,miles,,900", "15: record is none of the words allowed: found \"miles\", allowed odometer, fuel_gal, weekly, oil_change, expires, tested, damage, flattened, missing, emptied, collected, booked, received")]
    [InlineData("2026-03-03,B9,odometer,,900", "12: van is not in vans.csv: found \"B9\", allowed a code listed there")]
    [InlineData("2026-03-03,,weekly,,", "12: van is no code: found nothing, allowed 1 to 24 of A-Z a-z 0-9 . _ -")]
    [InlineData("2026-03-03,B1,odometer,,9x", "25: value is no number in range: found \"9x\", allowed 0 to 2000000, " + Number)]
    [InlineData("2026-03-03,B1,odometer,,2000000.1", "25: value is no number in range: found \"2000000.1\", allowed 0 to 2000000, " + Number)]
    [InlineData("2026-03-03,B1,odometer,,-1", "25: value is no number in range: found \"-1\", allowed 0 to 2000000, " + Number)]
    [InlineData("2026-03-03,B1,fuel_gal,,0", "25: value is no number in range: found \"0\", allowed above 0 to 100, " + Number)]
    [InlineData("2026-03-03,B1,fuel_gal,,100.01", "25: value is no number in range: found \"100.01\", allowed above 0 to 100, " + Number)]
    [InlineData("2026-03-03,,flattened,LAMP,1.5", "28: value is no whole number in range: found \"1.5\", allowed 0 to 99999")]
    [InlineData("2026-03-03,,flattened,NONE,1", "23: item is not in items.csv: found \"NONE\", allowed a code listed there")]
    [InlineData("2026-03-03,,missing,LAMP,100000", "26: value is no whole number in range: found \"100000\", allowed 0 to 99999")]
    [InlineData("2026-03-03,B9,missing,LAMP,1", "12: van is not in vans.csv: found \"B9\", allowed a code listed there")]
    [InlineData("2026-03-03,B1,damage,bad,door: dent", "22: item is none of the words allowed: found \"bad\", allowed note, repair, unsafe")]
    [InlineData("2026-03-03,B1,damage,note,", "27: value is no short text: found nothing, allowed 1 to 200 characters")]
    [InlineData("2026-03-03,,collected,tin,3", "23: item is none of the words allowed: found \"tin\", allowed lamps, thermostats, batteries, metal, film")]
    [InlineData("2026-03-03,,collected,lamps,-0.5", "29: value is no number in range: found \"-0.5\", allowed 0 to 99999, " + Number)]
    [InlineData("2026-03-03,,collected,lamps,2.5", "29: value is no whole number of pieces: found \"2.5\", allowed a whole number")]
    [InlineData("2026-03-03,B1,tested,FIRE,2026-03-04", "27: value is later than the day it was read: found \"2026-03-04\", allowed a day up to 2026-03-03")]
    [InlineData("2026-03-03,B1,damage,note,slip 356938035643809", "27: value holds what looks like a card number or a social-security number: found \"slip 356938035643809\", allowed words without it")]
    [InlineData("2026-03-03,B1,expires,NONE,2026-05-01", "23: item is not in kit.csv: found \"NONE\", allowed a code listed there")]
    [InlineData("2026-03-03,B1,expires,FIRE,soon", "28: value is no date: found \"soon\", allowed YYYY-MM-DD, a day of the years 1900 to 2199")]
    [InlineData("2026-03-03,B1,tested,FIRE,2026-02-30", "27: value is no date: found \"2026-02-30\", allowed YYYY-MM-DD, a day of the years 1900 to 2199")]
    public void Each_fault_has_its_place_and_its_words_and_nothing_is_given(string row, string told)
    {
        var read = ReadDay.With(("past.csv", Header + row + "\n2026-03-01,B1,weekly,,\n"));

        ReadDay.Faults(read).Should().Equal("past.csv:2:" + told);
        read.Given.Should().BeNull();
    }

    [Fact]
    public void An_odometer_that_falls_from_one_date_to_the_next_is_a_fault_whatever_the_order_of_the_rows() =>
        ReadDay.Faults(ReadDay.With(("past.csv", Header + "2026-03-02,B1,odometer,,950\n2026-03-03,b1,ODOMETER,,900\n2026-03-03,B2,odometer,,10\n2026-03-01,B1,odometer,,800\n"))).Should().Equal(
            "past.csv:3:1: odometer of B1 falls: found 900 on 2026-03-03 after 950 on 2026-03-02, allowed at least 950");

    [Fact]
    public void Every_fault_of_it_is_told_and_an_unknown_column_is_a_note()
    {
        var read = ReadDay.With(("past.csv", "colour,date,van,record,item,value\nred,2026-03-03,B9,missing,NONE,1\nred,2026-03-03,B1,fuel_gal,,0\n"));

        ReadDay.Faults(read).Select(f => string.Join(':', f.Split(':')[..3])).Should().Equal("past.csv:2:16", "past.csv:2:27", "past.csv:3:29");
        read.Findings.Notes.Select(n => n.ToString()).Should().Equal("past.csv:1:1: unknown column \"colour\" is ignored");
        ReadDay.With(("past.csv", "colour,date,van,record,item,value\nred,2026-03-03,B1,weekly,,\n")).Given!.Past.Should().ContainSingle();
    }

    [Fact]
    public void A_column_that_is_missing_is_told_once() => ReadDay.Faults(ReadDay.With(("past.csv", "date,van,record,item\n2026-03-03,B1,weekly,\n"))).Should().Equal(
        "past.csv:1:1: a column is missing: found no value, allowed are the columns date,van,record,item,value");

    [Fact]
    public void A_new_book_begins_with_what_it_says()
    {
        var depot = Opened(
            "2026-03-01,B1,odometer,,850", "2026-03-02,b1,ODOMETER,,900.5", "2026-03-03,B1,odometer,,960", "2026-03-03,B1,odometer,,961",
            "2026-03-02,B1,fuel_gal,,10", "2026-03-02,B1,fuel_gal,,2.5", "2026-03-01,B1,weekly,,", "2026-02-23,B1,weekly,,", "2026-01-10,B1,oil_change,,",
            "2026-02-01,B1,expires,FIRE,2026-05-01", "2026-03-01,B1,expires,fire,2027-05-01", "2026-02-01,B1,tested,CONES,2026-01-31",
            "2026-03-03,B1,damage,Unsafe,windshield: crack: long", "2026-03-02,B2,damage,repair,dent", "2026-03-03,B1,missing,LAMP,2", "2026-03-01,B1,missing,lamp,1", "2026-03-03,,missing,HEAD,1", "2026-03-03,,missing,LAMP,0");

        var b1 = depot.Van(new("B1"));
        b1.Driven.Should().Equal(new DrivenDay(new(2026, 3, 2), 850, 900.5m, 12.5m), new DrivenDay(new(2026, 3, 3), 900.5m, 961, null));
        b1.OdometerMi.Should().Be(1000, "the first evening begins with vans.csv");
        (b1.WeeklyCheckedOn, b1.OilChangedOn).Should().Be((new DateOnly(2026, 3, 1), new DateOnly(2026, 1, 10)));
        b1.KitDates.Should().Equal(new KitDate(new("CONES"), null, new(2026, 1, 31)), new KitDate(new("FIRE"), new(2027, 5, 1), null));
        b1.MissingBoxes.Should().Equal(new MissingBoxes(new("LAMP"), 3, new(2026, 3, 1)));
        depot.Yard.Carried.DepotBoxes.Should().Equal(new MissingBoxes(new("HEAD"), 1, new(2026, 3, 3)));
        b1.Incidents.Should().ContainSingle().Which.Should().Match<Incident>(i => i.Number == 1 && i.Zone == "windshield" && i.What == "crack: long" && i.Holds && i.By == null && i.Told == "");
        depot.Van(new("B2")).Incidents.Should().ContainSingle().Which.Should().Match<Incident>(i => i.Number == 2 && i.Zone == "somewhere" && i.What == "dent" && !i.Holds);
        depot.Vans.Incidents.Should().Be(2);
    }

    [Fact]
    public void The_yard_begins_with_boxes_since_the_last_pickup_and_with_its_collecting_boxes()
    {
        var rows = Enumerable.Range(1, 25).Select(d => $"2026-02-{d:00},,flattened,LAMP,{d}")
            .Concat(["2026-02-20,,emptied,,", "2026-02-03,,emptied,,", "2026-02-25,B1,flattened,HEAD,2", "2026-02-02,,collected,lamps,3", "2026-01-05,,collected,LAMPS,4", "2026-01-01,,collected,lamps,0", "2026-01-01,,collected,film,0", "2026-01-06,,collected,metal,4.25"]);
        var depot = Opened([.. rows]);
        var (lamp, head) = (BoxBlank.WeightLb(depot.Setup, depot.Setup.Item(new("LAMP"))), BoxBlank.WeightLb(depot.Setup, depot.Setup.Item(new("HEAD"))));

        var yard = depot.Yard.Carried;
        yard.EmptiedOn.Should().Be(new DateOnly(2026, 2, 20));
        yard.ContainerLb.Should().BeApproximately((20 + 21 + 22 + 23 + 24 + 25) * lamp + 2 * head, 1e-9, "the pickup's own date is loaded afterwards");
        yard.BoxDays.Select(d => d.Flattened).Should().Equal([.. Enumerable.Range(6, 19), 27], "the last twenty dates");
        yard.BoxDays.Should().OnlyContain(d => d.Expected == d.Flattened);
        yard.Collecting.Should().Equal(new CollectingBox(new("lamps"), new(2026, 1, 5), 7), new CollectingBox(new("metal"), new(2026, 1, 6), 4.25m));
    }

    [Fact]
    public void A_book_that_exists_reads_it_for_faults_and_takes_nothing_of_it() =>
        SmallDay.Given(("past.csv", Header + "2026-03-03,B1,damage,unsafe,roof: hole\n")).Loaded(Before).Should().BeEquivalentTo(SmallDay.Given().Loaded(Before), "an entry of a loaded folder has no older records");

    private static Depot Before => Opened();

    private static Depot Opened(params string[] rows) =>
        Depot.Open(new Recorded(1, Tiny.FiveOClock, SmallDay.Given(("past.csv", Header + string.Concat(rows.Select(r => r + "\n")))).FirstPage(rehearsal: false)));
}
