using System.Text;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Tests.Cardboard;
using Closeout.Turning;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.DayBook;

/// <summary>Only business dates count. The same evening at other hours, in other offsets, over midnight or while clocks change says and hands on the same.</summary>
public sealed class HoursLaws
{
    /// <summary>Evenings whose clocks are odd: local hours that do not exist or come twice, midnight passed, the turn of a year, and one that stands still.</summary>
    public static TheoryData<string, string[]> Clocks => new()
    {
        { "2026-03-08", ["2026-03-08T01:59:00-05:00", "2026-03-08T03:01:00-04:00", "2026-03-08T16:30:00-04:00"] },
        { "2026-11-01", ["2026-11-01T01:59:00-04:00", "2026-11-01T01:01:00-05:00", "2026-11-01T01:01:00-04:00"] },
        { "2026-12-31", ["2026-12-31T23:59:59-05:00", "2027-01-01T00:00:00-05:00", "2027-01-01T04:00:00-05:00"] },
        { "2028-02-29", ["2028-02-29T23:00:00+00:00", "2028-03-01T00:30:00+00:00"] },
        { "2027-01-03", ["2027-01-03T17:00:00+14:00", "2027-01-02T02:00:00-12:00"] },
        { "2026-03-29", ["2026-03-29T16:30:00+00:00"] },
    };

    [Theory]
    [MemberData(nameof(Clocks))]
    public void Nothing_depends_on_hours(string date, string[] clock) => Gen.OneOf(AnyYard.Boxes, AnyYard.Waste, AnyYard.Pickups).Array[0, 40].Holds(deeds =>
    {
        var entries = new List<Entry>();
        var usual = AnyYard.Afternoon(DateOnly.Parse(date));
        foreach (var deed in deeds)
        {
            if (AnyYard.Entry(usual, deed) is { } entry)
            {
                usual = usual.Take(entry);
                entries.Add(entry);
            }
        }

        var odd = entries.Aggregate(AnyYard.Afternoon(DateOnly.Parse(date)), (depot, entry) =>
            depot.Apply(new Recorded(depot.Number + 1, DateTimeOffset.Parse(clock[depot.Number % clock.Length]), entry)));

        Says(odd).Should().Be(Says(usual));
    }, samples: 60);

    [Fact]
    public void An_incident_keeps_its_hour_and_nothing_else_of_it_changes()
    {
        var depot = Tiny.Opened().At(Tiny.B1, Step.Damage);
        var found = depot.Accepts(new ReportDamage(Tiny.B1, "roof", Severity.Unsafe, "dent"));
        string File(string at) => Encoding.UTF8.GetString(IncidentsCsv.Write(Closeout.Vans.IncidentLog.Of(depot.Apply(new Recorded(depot.Number + 1, DateTimeOffset.Parse(at), found)))));

        File("2026-11-01T01:30:00-04:00").Should().Contain(",2026-11-18,01:30,").And.Be(File("2026-11-01T01:30:00-05:00"), "the hour is written as the clock on the wall showed it");
    }

    /// <summary>All that outsiders and the next page get of an evening, but for the hours on the wall.</summary>
    private static string Says(Depot depot)
    {
        var page = PageLine.Write(new Recorded(1, Tiny.FiveOClock, NextPage.After(depot, depot.Date.AddDays(1))), PageLine.Nothing).Bytes;
        byte[][] files = [KitCsv.Write(depot), CardboardCsv.Write(depot), MileageCsv.Write(depot), WasteCsv.Write(depot, []), WallCsv.Write(depot), RecyclingCsv.Totals(depot.Setup.Depot, [.. RecyclingTotals.Tonight(depot)])];
        return string.Join("\n", files.Append(page).Select(Encoding.UTF8.GetString)) + Container.Full(depot);
    }
}
