using System.Text;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Store;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>The tables of recycling, waste, incidents, miles and kit: their columns, their bytes, and text from outside that stays text.</summary>
public sealed class NewFilesOutTests
{
    /// <summary>Names that a spreadsheet would run, and codes that begin like one.</summary>
    private static readonly string[] Sly = ["=1+1", "+1", "-1", "@SUM(A1)"];

    public static TheoryData<string, string> Columns => new()
    {
        { "recycling-weeks", "week,from,to,days,expected,flattened,missing,weight_lb,volume_cu_yd,mtco2e,mtco2e_kind,factor_mtco2e_per_short_ton,factor_source" },
        { "recycling", "by,of,from,to,days,expected,flattened,missing,weight_lb,volume_cu_yd" },
        { "waste", "date,van,stream,description,amount,unit,box_started_on,ship_by,label,note" },
        { "incidents", "incident,van,reported_on,reported_at,technician,zone,severity,drivable,what,told,told_at,holds,status,closed_on,closed_by,why" },
        { "mileage-log", "date,van,technician,start_mi,end_mi,business_mi,from_and_to,visits,business_purpose,fuel_gal,fuel_grade,note" },
        { "kit", "date,van,bay,kit_item,description,required,there,missing,expires,tested,test_due,buy,note" },
    };

    [Theory]
    [MemberData(nameof(Columns))]
    public void The_columns_are_these_and_the_bytes_plain(string file, string columns)
    {
        var bytes = Written(file, "plain");
        var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);

        bytes.Take(3).Should().NotEqual(Encoding.UTF8.GetPreamble());
        text.Should().StartWith(columns + "\r\n").And.EndWith("\r\n");
        text.Replace("\r\n", "", StringComparison.Ordinal).Should().NotContain("\r").And.NotContain("\n");
        Rows(text).Should().HaveCountGreaterThan(1).And.OnlyContain(r => r.Count == columns.Split(',').Length);
    }

    [Theory]
    [MemberData(nameof(Columns))]
    public void Text_that_begins_like_a_formula_gets_an_apostrophe_and_numbers_never_do(string file, string columns)
    {
        foreach (var sly in Sly)
        {
            var rows = Rows(Encoding.UTF8.GetString(Written(file, sly)));
            var cells = rows.Skip(1).SelectMany(r => r.Zip(columns.Split(','))).ToList();
            cells.Where(c => c.First.Length > 0 && c.First[0] is '=' or '+' or '@' or '\t' or '\r').Should().BeEmpty($"of {file} with {sly}");
            cells.Where(c => c.First.StartsWith('-')).Select(c => c.Second).Should().BeSubsetOf(["missing", "mtco2e", "factor_mtco2e_per_short_ton"], $"of {file} with {sly}");
            cells.Where(c => c.First.StartsWith('\'')).Should().OnlyContain(c => c.First.StartsWith("'" + sly, StringComparison.Ordinal) || c.First.StartsWith("'-", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Negative_numbers_stay_numbers_and_nothing_is_minus_nought()
    {
        Rows(Encoding.UTF8.GetString(Written("recycling-weeks", "x")))[1].Should().Contain("-2").And.Contain("-3.3200");

        // A box of nothing, and one so light that the credit rounds to nothing.
        foreach (var lb in new[] { 0.0, 0.01 })
        {
            var row = Rows(Encoding.UTF8.GetString(RecyclingCsv.Weeks(Settings("x"), [new DatedBoxes(Tiny.Wednesday, new(Tiny.B1, Tiny.Lamp.Code, 1, 0, lb))])))[1];
            row[9].Should().Be("0.0000");
        }
    }

    [Theory]
    [MemberData(nameof(Columns))]
    public void With_nothing_to_tell_there_is_the_header_alone(string file, string columns)
    {
        var setup = Tiny.Setup with { Kit = [] };
        Encoding.UTF8.GetString(Write(file, Tiny.Opened(setup: setup), [], [], [], [])).Should().Be(columns + "\r\n");
    }

    /// <summary>A file of an evening in which every text that people or files may give is this one.</summary>
    private static byte[] Written(string file, string text)
    {
        var (van, item) = (new Code<Van>("-B1"), new Code<Item>("-LAMP"));
        var setup = Tiny.Setup with
        {
            Depot = Settings(text), Items = [Tiny.Lamp with { Code = item }], Kit = [new(new("-KIT"), text, 1, false, true)],
            Vans = [Tiny.Van("-B1", 1, text, 1000)], Crew = [new(new("-T1"), text, true, null, [])],
        };
        var depot = Tiny.Opened(setup: setup, carried: v => v with { KitDates = [new(new("-KIT"), Tiny.Monday, null)] },
            yard: YardCarried.Empty with { Collecting = [new(new("lamps"), Tiny.Monday, 3)] });
        var incident = new Incident(1, Tiny.Wednesday, Tiny.FiveOClock, new("-T1"), text, Severity.Note, text, true, text, null, false);
        return Write(
            file, depot, [new(Tiny.Wednesday, new(van, item, 1, 3, 1.5))], [new(Tiny.Wednesday, van, new("lamps"), 3)],
            [new(van, incident, IncidentState.Closed, Tiny.Wednesday, new("-T1"), text)], [new(Tiny.Wednesday, van, new("-T1"), 1000, 990, 3, text, 2, text)]);
    }

    private static DepotSettings Settings(string text) =>
        Tiny.Settings with { Name = text, GhgFactor = -3.32, GhgFactorSource = text, Streams = [new("lamps")] };

    private static byte[] Write(
        string file, Depot depot, DatedBoxes[] boxes, StreamDay[] streams, LoggedIncident[] incidents, LoggedMiles[] miles) => file switch
        {
            "recycling-weeks" => RecyclingCsv.Weeks(depot.Setup.Depot, boxes),
            "recycling" => RecyclingCsv.Totals(depot.Setup.Depot, boxes),
            "waste" => WasteCsv.Write(depot, streams),
            "incidents" => IncidentsCsv.Write(incidents),
            "mileage-log" => MileageLogCsv.Write(depot, miles),
            "kit" => KitCsv.Write(depot),
            _ => throw new ArgumentException(file),
        };

    /// <summary>RFC 4180, read by hand.</summary>
    private static List<List<string>> Rows(string text)
    {
        var (rows, row, field, quoted) = (new List<List<string>>(), new List<string>(), new StringBuilder(), false);
        for (var i = 0; i < text.Length; i++)
        {
            switch (text[i], quoted)
            {
                case ('"', true) when i + 1 < text.Length && text[i + 1] == '"':
                    field.Append('"');
                    i++;
                    break;
                case ('"', _):
                    quoted = !quoted;
                    break;
                case (',', false):
                    row.Add(field.ToString());
                    field.Clear();
                    break;
                case ('\r', false) when text[i + 1] == '\n':
                    row.Add(field.ToString());
                    field.Clear();
                    rows.Add(row);
                    row = [];
                    i++;
                    break;
                default:
                    field.Append(text[i]);
                    break;
            }
        }

        return rows;
    }
}
