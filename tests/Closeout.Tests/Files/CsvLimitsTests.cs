using System.Text;
using Closeout.DayBook;
using Closeout.Files;
using Closeout.Screens.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>Files far beyond what a depot has: a few sentences, in bounded time and memory.</summary>
public sealed class CsvLimitsTests
{
    private const string Header = "kit_item,description,required,critical,expires\n";
    private const string Usage = "date,van,visit,visit_kind,item,units\n";

    [Fact]
    public void A_file_that_is_too_large_is_one_fault_and_is_not_read()
    {
        using var temp = new TempFolder();
        var folder = SmallDay.Write(temp["day"]);
        using (var file = File.OpenWrite(Path.Combine(folder, "usage.csv")))
        {
            file.SetLength(CsvLimits.MostBytes + 1);
        }

        ReadDay.Faults(DayFolder.Read(folder, StepPages.Evening)).Should().Equal("usage.csv:1:1: the file cannot be read: found 134217729 bytes, allowed is a readable CSV file of at most 134217728 bytes");
    }

    [Theory]
    [InlineData("CONES,Cones,4,no,no\n\nFIRE,", "x", 4)]
    [InlineData("CONES,Cones,4,no,no\r\nFIRE,", ",", 3)]
    [InlineData("CONES,Cones,4,no,no\nFIRE,\"Fire,1,yes,yes\n", "SPILL,Spill kit,1,no,no\n", 3)]
    public void A_row_that_is_too_long_is_one_fault_at_its_line_and_the_rest_is_not_read(string before, string again, int line) =>
        ReadDay.Faults(ReadDay.With(("kit.csv", Header + before + Again(again, 1_100_000) + "\nLAST,Last,y,yes,yes\n"))).Should().Equal(
            $"kit.csv:{line}:1: the row is too long: found more than 65536 bytes, allowed 65536; perhaps a quote before is not closed. The file was not read further");

    [Fact]
    public void A_header_of_too_many_columns_is_one_fault() =>
        ReadDay.Faults(ReadDay.With(("usage.csv", Usage.TrimEnd() + Again(",c", 2 * 245) + "\n1,2\n"))).Should().Equal(
            "usage.csv:1:1: the header has too many columns: found 251, allowed 250. The file was not read further");

    [Fact]
    public void A_field_that_is_too_long_is_told_at_its_place_also_in_a_column_that_nobody_reads() =>
        ReadDay.Faults(ReadDay.With(("kit.csv", Header.TrimEnd() + ",remark\n" + $"CONES,Cones,4,no,no,{new string('x', 10_001)}\nFIRE,Fire,y,yes,yes,{new string('x', 10_000)}\n"))).Should().Equal(
            "kit.csv:2:21: the field is too long: found 10001 characters, allowed 10000",
            "kit.csv:3:11: required is no whole number in range: found \"y\", allowed 0 to 1000000");

    [Fact]
    public void Of_too_many_rows_the_first_that_is_too_many_is_told() =>
        ReadDay.Faults(ReadDay.With(("orders.csv", "cartons\n" + Again("1\n", 2 * 2_000_001)))).Should().EndWith(
            "orders.csv:2000002:1: the file has too many rows: found more than 2000000 below the header, allowed 2000000. The file was not read further");

    [Fact]
    public void A_file_that_was_not_read_to_its_end_may_hold_any_code() =>
        ReadDay.Faults(ReadDay.With(("kit.csv", Header + Again("x", 100_000)), ("van_kit.csv", "van,kit_item,required\nB1,FIRE,1\n")))
            .Should().ContainSingle().Which.Should().StartWith("kit.csv:2:1: the row is too long");

    [Fact]
    public void After_a_thousand_faults_of_a_file_a_line_says_so_and_other_files_are_told_as_ever()
    {
        var faults = ReadDay.Faults(ReadDay.With(("bookings.csv", "date,van,visit_kind,visits\n" + Again("never,B1,install,1\n", 19 * 5_000)), ("orders.csv", "item,cartons,due\nLAMP,1,never\n"))).ToList();

        faults.Should().HaveCount(1_002);
        faults[999].Should().StartWith("bookings.csv:1001:1: date is no date");
        faults[1_000].Should().Be("bookings.csv:1002:1: too many faults: found 1000 before, allowed none; the rest is not told. Repair those, and read it again");
        faults[1_001].Should().StartWith("orders.csv:2:8: due is no date");
    }

    [Fact]
    public void Just_a_thousand_faults_are_all_told() =>
        ReadDay.Faults(ReadDay.With(("bookings.csv", "date,van,visit_kind,visits\n" + Again("never,B1,install,1\n", 19 * 1_000)))).Should().HaveCount(1_000).And.OnlyContain(f => f.Contains("is no date"));

    [Fact]
    public void After_a_thousand_notes_of_a_file_a_line_says_so()
    {
        var notes = ReadDay.With(("depot.csv", SmallDay.Text("depot.csv") + Again("music,loud\n", 11 * 5_000))).Findings.Notes;

        notes.Should().HaveCount(1_001);
        notes[^1].Text.Should().Be("1000 notes were told before; the rest is not told");
    }

    [Theory]
    [InlineData("", "x\n")]
    [InlineData("", "\"")]
    [InlineData("", "x")]
    [InlineData("", ",")]
    [InlineData("", "\0")]
    [InlineData(Usage, "x\n")]
    [InlineData(Usage, "\n")]
    [InlineData(Usage, "\"\",\",\",\"\n")]
    [InlineData(Usage, ",,,,,\n")]
    [InlineData(Usage, "2026-13-01,B1,1,install,LAMP,x\n")]
    public void Junk_is_told_in_a_moment_and_in_few_lines(string before, string again)
    {
        var text = before + Again(again, 8 << 20);
        var told = 0;

        Worked.Over(() => told = ReadDay.With(("usage.csv", text)).Findings.Problems.Count).Should().BeLessThan(TimeSpan.FromSeconds(20));

        told.Should().BeLessThanOrEqualTo(CsvLimits.MostTold + 1);
    }

    /// <summary>Kept rows took thousands of megabytes.</summary>
    [Theory]
    [InlineData("", "x\n")]
    [InlineData("date,van,visit,visit_kind,units,units\n", "2026-13-01,B1,1,install,LAMP,x\n")]
    [InlineData(Usage, "\"")]
    [Trait(Built.Starts, "closeout")]
    public void The_largest_file_of_junk_is_told_in_two_hundred_megabytes(string before, string again)
    {
        using var temp = new TempFolder();
        var folder = SmallDay.Write(temp["day"], ("usage.csv", before + Again(again, (int)CsvLimits.MostBytes - before.Length)));

        var said = Started.CloseoutWithin(200, temp.Path, "--book", temp["book"], "load", folder);

        said.Code.Should().Be(2, said.Err[..Math.Min(said.Err.Length, 1_000)]);
        said.Err.Should().EndWith("nothing was loaded.\n");
    }

    [Fact]
    public void Rows_are_not_kept_so_they_are_read_once()
    {
        using var temp = new TempFolder();
        File.WriteAllText(temp["t.csv"], "a\n1\n");
        var table = CsvTable.Read(temp.Path, "t.csv", required: true, ["a"], [], new Findings());

        table.Rows.Select(r => r.Raw("a")).Should().Equal("1");
        table.IsWhole.Should().BeTrue();
        FluentActions.Invoking(() => table.Rows.ToList()).Should().Throw<InvalidOperationException>();
    }

    [Fact]
    public void A_hundred_thousand_pictures_of_a_walk_round_are_put_in_order_in_a_moment()
    {
        IReadOnlyList<EveningAnswer> answers = [];
        var weekly = StepPages.Evening.Single(s => s.Step == Step.Weekly);
        var (clean, photo) = (weekly.Fields.Single(f => f.Name == "clean"), weekly.Fields.Single(f => f.IsPhoto));
        var rows = Enumerable.Range(0, 100_000).Select(i => new EveningRow(i + 2, new("B1"), new("T1"), weekly, i == 0 ? clean : photo, "", i == 0 ? "yes" : "a.png"));

        Worked.Over(() => answers = EveningAnswers.Of(rows)).Should().BeLessThan(TimeSpan.FromSeconds(10));

        answers.Should().HaveCount(100_000);
        answers[^1].Line.Should().Be(2, "the check stands behind its pictures");
    }

    private static string Again(string text, int length) => new StringBuilder().Insert(0, text, length / text.Length).ToString();
}
