using System.Text;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>How CSV is read: byte order marks, line ends, quotes, widths, and where things stand afterwards.</summary>
public sealed class CsvShapeTests
{
    private const string KitHeader = "kit_item,description,required,critical,expires";

    [Fact]
    public void A_byte_order_mark_is_tolerated_and_moves_no_column()
    {
        var good = ReadDay.With("kit.csv", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(SmallDay.Text("kit.csv"))]);
        var bad = ReadDay.With("kit.csv", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("colour," + KitHeader + "\nred,CONES,Cones,4,no,no\n")]);

        good.Given!.Setup.Kit.Select(k => k.Code.Text).Should().Equal("CONES", "FIRE");
        good.Findings.Notes.Should().BeEmpty();
        bad.Findings.Notes.Select(n => n.ToString()).Should().Equal("kit.csv:1:1: unknown column \"colour\" is ignored");
    }

    [Fact]
    public void Columns_may_stand_in_any_order_and_unknown_ones_are_notes()
    {
        var read = ReadDay.With(("kit.csv", "expires,colour,required,description,Kit_Item,critical\nyes,red,1,Fire extinguisher,FIRE,yes\n"));

        read.Given!.Setup.Kit.Should().ContainSingle().Which.Should().BeEquivalentTo(new KitPiece(new("FIRE"), "Fire extinguisher", 1, true, true));
        read.Findings.Notes.Select(n => n.ToString()).Should().Equal("kit.csv:1:9: unknown column \"colour\" is ignored");
    }

    [Fact]
    public void An_unknown_setting_is_a_note() =>
        ReadDay.With(("depot.csv", SmallDay.Text("depot.csv") + "music,loud\n")).Findings.Notes.Select(n => n.ToString())
            .Should().Equal("depot.csv:11:1: unknown setting \"music\" is ignored");

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Both_line_ends_are_read_with_the_same_places(string end)
    {
        var rows = $"{KitHeader}{end}CONES,Cones,4,no,no{end}{end}FIRE,Fire,x,yes,yes{end}";

        ReadDay.Faults(ReadDay.With(("kit.csv", rows))).Should().ContainSingle()
            .Which.Should().StartWith("kit.csv:4:11: required is no whole number");
        ReadDay.With(("kit.csv", rows.Replace(",x,", ",1,", StringComparison.Ordinal))).Given!.Setup.Kit.Should().HaveCount(2);
    }

    [Fact]
    public void A_last_line_without_a_line_end_is_read() =>
        ReadDay.With(("kit.csv", KitHeader + "\nCONES,Cones,4,no,no")).Given!.Setup.Kit.Should().ContainSingle();

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Quoted_fields_hold_commas_quotes_and_line_breaks_and_places_behind_them_are_right(string end)
    {
        var text = $"{KitHeader}{end}CONES,\"Cones, \"\"big\"\"{end}orange\",4,maybe,no{end}FIRE,é漢,y,yes,yes{end}";
        var read = ReadDay.With(("kit.csv", text));

        ReadDay.Faults(read).Should().Equal(
            "kit.csv:3:11: critical is none of the words allowed: found \"maybe\", allowed yes, no",
            "kit.csv:4:9: required is no whole number in range: found \"y\", allowed 0 to 1000000");
        ReadDay.With(("kit.csv", text.Replace("maybe", "no", StringComparison.Ordinal).Replace(",y,", ",1,", StringComparison.Ordinal)))
            .Given!.Setup.Kit[0].Description.Should().Be($"Cones, \"big\"{end}orange");
    }

    [Fact]
    public void Bytes_that_are_not_UTF_8_are_told_with_their_place() =>
        ReadDay.Faults(ReadDay.With("kit.csv", [.. Encoding.UTF8.GetBytes(KitHeader + "\nCONES,Co"), 0xE9, .. ",4,no,no\n"u8]))
            .Should().Equal("kit.csv:2:9: the text is not UTF-8: found byte 0xE9, allowed is UTF-8 with or without BOM");

    [Fact]
    public void Columns_of_bytes_that_are_not_UTF_8_count_characters_as_everywhere() =>
        ReadDay.Faults(ReadDay.With("kit.csv", [.. Encoding.UTF8.GetBytes(KitHeader + "\nCONES,é漢"), 0xFF, .. ",4,no,no\n"u8]))
            .Should().ContainSingle().Which.Should().StartWith("kit.csv:2:9: ");

    [Theory]
    [InlineData("FIRE,\"Fire,1,yes,yes\nCONES,Cones,4,no,no", "a quote that is not closed")]
    [InlineData("FIRE,\"Fire\"x,1,yes,yes", "text behind a closing quote")]
    [InlineData("FIRE,Fi\"re,1,yes,yes", "a quote inside a field that does not begin with one")]
    public void Quotes_that_do_not_match_are_one_fault_at_their_row(string rows, string found) =>
        ReadDay.Faults(ReadDay.With(("kit.csv", $"{KitHeader}\nSPILL,Spill kit,1,no,no\n{rows}\n"))).Should().Equal(
            $"kit.csv:3:1: the quotes do not match: found {found}, allowed is RFC 4180: a field with quotes stands in quotes, each doubled");

    [Fact]
    public void A_row_of_another_width_is_told() =>
        ReadDay.Faults(ReadDay.With(("kit.csv", $"{KitHeader}\nCONES,Cones,4,no\nFIRE,Fire,1,yes,yes,yes\n"))).Should().Equal(
            "kit.csv:2:1: the row does not fit the header: found 4 fields, allowed 5",
            "kit.csv:3:1: the row does not fit the header: found 6 fields, allowed 5");

    [Fact]
    public void A_file_without_a_header_is_told() =>
        ReadDay.Faults(ReadDay.With(("kit.csv", ""))).Should().Equal($"kit.csv:1:1: the file is empty: found nothing, allowed is a header row with {KitHeader}");

    [Fact]
    public void Columns_missing_and_doubled_are_told_once_each() =>
        ReadDay.Faults(ReadDay.With(("kit.csv", "kit_item,description,required,REQUIRED,critical\nCONES,Cones,4,4,no\nFIRE,Fire,1,1,yes\n"))).Should().Equal(
            $"kit.csv:1:1: a column is missing: found no expires, allowed are the columns {KitHeader}",
            "kit.csv:1:31: the column stands twice: found required again, allowed once");

    [Fact]
    public void Codes_are_compared_without_case_and_kept_as_first_written()
    {
        var read = ReadDay.With(
            ("stock.csv", "place,item,cartons,loose\nSHELF,lamp,5,0\nb1,Lamp,1,0\n"), ("van_limits.csv", "van,item,low,high\nb2,lamp,1,2\n"),
            ("bookings.csv", "date,van,visit_kind,visits\n2026-03-05,b1,INSTALL,2\n2026-03-05,B1,install,1\n"), SmallDay.Evening("b1,t1,LEFTOVERS,Bin,lamp,3"));

        read.Given!.Stock.Select(b => (b.Place.ToString(), b.Item.Text)).Should().Contain([("shelf", "LAMP"), ("B1 sealed", "LAMP")]);
        read.Given.Setup.Limits.Should().ContainSingle().Which.Should().Match<VanLimit>(l => l.Van.Text == "B2" && l.Item.Text == "LAMP");
        read.Given.Booked.Bookings.Should().ContainSingle().Which.Should().Match<Booking>(b => b.Van.Text == "B1" && b.Kind.Text == "install" && b.Visits == 3);
        read.Evening.Should().ContainSingle().Which.Should().Match<EveningRow>(r => r.Line == 2 && r.Technician.Text == "T1"
            && r.Step.Step == Step.Leftovers && r.Field.Name == "bin" && r.Item == "LAMP" && r.Value == "3");
        read.Evening[0].Van.Text.Should().Be("B1");
    }

    [Fact]
    public void With_one_fault_nothing_is_given() =>
        ReadDay.With(("orders.csv", "item,cartons,due\nLAMP,1,never\n")).Given.Should().BeNull();
}
