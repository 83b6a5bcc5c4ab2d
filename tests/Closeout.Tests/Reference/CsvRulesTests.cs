using System.Text;
using Closeout.Files;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Y. Shafranovich, RFC 4180, October 2005, section 2: rules 1 to 5 seen in copies of its text, 6 and 7 seen as quoted. And
/// formula injection.
/// </summary>
public class CsvRulesTests
{
    private static readonly string[] Abc = ["aaa", "bbb", "ccc"];

    private static string Written(params string[] fields)
    {
        var header = fields.Select((_, i) => $"f{i}").ToArray();
        using var csv = new CsvText(header);
        foreach (var field in fields)
        {
            csv.Text(field);
        }

        csv.EndRow();
        return Encoding.UTF8.GetString(csv.Bytes())[(string.Join(',', header).Length + 2)..];
    }

    private static (List<string[]> Rows, int Faults) Read(string text)
    {
        var folder = Directory.CreateTempSubdirectory("closeout-tests-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "t.csv"), text);
            var findings = new Findings();
            var table = CsvTable.Read(folder.FullName, "t.csv", true, Abc, [], findings);
            return ([.. table.Rows.Select(r => Abc.Select(r.Raw).ToArray())], findings.Problems.Count);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Rule_1_each_record_ends_with_CRLF() => Written("aaa", "bbb", "ccc").Should().Be("aaa,bbb,ccc\r\n");

    [Theory]
    [InlineData("aaa,bbb,ccc\r\nx,y,z\r\n")]
    [InlineData("aaa,bbb,ccc\r\nx,y,z")]
    [InlineData("aaa,bbb,ccc\nx,y,z\n")]    // not the RFC's, but many programs'
    public void Rule_2_the_last_line_break_may_be_missing(string text)
    {
        var (rows, faults) = Read(text);
        rows.Should().ContainSingle().Which.Should().Equal("x", "y", "z");
        faults.Should().Be(0);
    }

    [Theory]
    [InlineData("aaa,bbb,ccc\r\nx,y\r\n")]
    [InlineData("aaa,bbb,ccc\r\nx,y,z,\r\n")]
    public void Rules_3_and_4_every_line_has_as_many_fields_as_the_header(string text) => Read(text).Faults.Should().Be(1);

    [Fact]
    public void Rule_4_spaces_are_part_of_a_field() =>
        Read("aaa,bbb,ccc\r\n x, y ,\"z \"\r\n").Rows.Single().Should().Equal(" x", " y ", "z ");

    [Fact]
    public void Rule_5_fields_may_stand_in_quotes() => Read("\"aaa\",\"bbb\",\"ccc\"\r\nx,\"y\",\"\"\r\n").Rows.Single().Should().Equal("x", "y", "");

    [Fact]
    public void Rule_5_a_quote_inside_a_field_that_does_not_begin_with_one_is_a_fault() => Read("aaa,bbb,ccc\r\nx,6\" duct,z\r\n").Faults.Should().Be(1);

    /// <summary>The RFC's own example: "aaa","b CRLF bb","ccc".</summary>
    [Fact]
    public void Rule_6_line_breaks_quotes_and_commas_stand_in_quotes()
    {
        Read("aaa,bbb,ccc\r\n\"aaa\",\"b\r\nbb\",\"c,cc\"\r\n").Rows.Single().Should().Equal("aaa", "b\r\nbb", "c,cc");
        Written("aaa", "b\r\nbb", "c,cc").Should().Be("aaa,\"b\r\nbb\",\"c,cc\"\r\n");
    }

    /// <summary>The RFC's own example: "aaa","b""bb","ccc".</summary>
    [Fact]
    public void Rule_7_a_quote_inside_quotes_is_doubled()
    {
        Read("aaa,bbb,ccc\r\n\"aaa\",\"b\"\"bb\",\"ccc\"\r\n").Rows.Single().Should().Equal("aaa", "b\"bb", "ccc");
        Written("b\"bb").Should().Be("\"b\"\"bb\"\r\n");
    }

    [Fact]
    public void What_is_written_is_read_as_it_was() => Gen.OneOf("a", "b", " ", ",", "\"", "\r\n", "\n", "ä", "1").Array[1, 8].Select(c => "x" + string.Concat(c)).Array[3].Holds(
        fields => Read("aaa,bbb,ccc\r\n" + Written(fields)).Rows.Single().Should().Equal(fields));

    /// <summary>
    /// First characters that a spreadsheet runs, = + - @ TAB CR: OWASP, CSV Injection, seen as cited by the advisory
    /// CVE-2021-41270.
    /// </summary>
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@SUM(A1)")]
    [InlineData("\r\n=1")]
    public void Text_that_a_spreadsheet_would_run_gets_an_apostrophe(string text) => Written(text).Trim('"').Should().StartWith("'" + text);

    /// <summary>TAB and a lone CR never come out, and so never first.</summary>
    [Theory]
    [InlineData("\t=1")]
    [InlineData("\r=1")]
    public void Text_that_would_steer_a_terminal_begins_with_a_dot(string text) => Written(text).Trim('"').Should().StartWith("·=1");

    [Fact]
    public void An_apostrophe_comes_only_where_it_must() => Written("a=1", " =1", "1-1", "").Should().Be("a=1, =1,1-1,\r\n");

    [Fact]
    public void Numbers_never_get_an_apostrophe()
    {
        using var csv = new CsvText("a", "b", "c", "d", "e", "f");
        csv.Number(-3).Number(-0.5m).Number((decimal?)null).Number(-1.24, 1).Number(1.5, 3).Number(1000.0, 0).EndRow();
        Encoding.UTF8.GetString(csv.Bytes()).Should().Be("a,b,c,d,e,f\r\n-3,-0.5,,-1.2,1.500,1000\r\n");
    }

    /// <summary>As the writer says of itself; sixteenths of a pound and halves of a percent fall on such halves.</summary>
    [Theory]
    [InlineData(0.0625, 3, "0.063")]
    [InlineData(0.03125, 4, "0.0313")]
    [InlineData(1.25, 1, "1.3")]
    [InlineData(-1.25, 1, "-1.3")]
    [InlineData(2.5, 0, "3")]
    public void Halves_go_away_from_zero(double number, int decimals, string written)
    {
        using var csv = new CsvText("a");
        csv.Number(number, decimals).EndRow();
        Encoding.UTF8.GetString(csv.Bytes()).Should().Be($"a\r\n{written}\r\n");
    }

    [Fact]
    public void The_file_is_UTF_8_without_a_byte_order_mark()
    {
        using var csv = new CsvText("ä");
        csv.Bytes().Should().Equal(0xC3, 0xA4, 0x0D, 0x0A);
    }
}
