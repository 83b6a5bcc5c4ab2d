using Closeout.Commands;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>The kit's own numbers and dates, the waste streams, and the later fields of the evening: every fault with its place, and what is read without one.</summary>
public sealed class NewFieldFaultTests
{
    private const string Parts = "lights, tires, glass, brake feel, mirrors, wipers, leaks, doors, ladder rack, load secured";
    private const string Kit = "kit_item,description,required,critical,expires,test_every_days,warn_days\n";

    [Theory]
    [InlineData("van_kit.csv", "van,kit_item,required\nB9,CONES,1\n", "van_kit.csv:2:1: van is not in vans.csv: found \"B9\", allowed a code listed there")]
    [InlineData("van_kit.csv", "van,kit_item,required\nB1,NONE,1\n", "van_kit.csv:2:4: kit_item is not in kit.csv: found \"NONE\", allowed a code listed there")]
    [InlineData("van_kit.csv", "van,kit_item,required\nB1,CONES,-1\n", "van_kit.csv:2:10: required is no whole number in range: found \"-1\", allowed 0 to 1000000")]
    [InlineData("van_kit.csv", "van,kit_item,required\nB1,CONES,6\nb1,cones,6\n", "van_kit.csv:3:4: kit_item stands twice for van B1: found \"cones\", allowed once")]
    [InlineData("van_kit.csv", "van,kit_item\nB1,CONES\n", "van_kit.csv:1:1: a column is missing: found no required, allowed are the columns van,kit_item,required")]
    [InlineData("kit.csv", Kit + "FIRE,Fire,1,yes,yes,x,\n", "kit.csv:2:21: test_every_days is no whole number in range: found \"x\", allowed 0 to 3660")]
    [InlineData("kit.csv", Kit + "FIRE,Fire,1,yes,yes,3661,\n", "kit.csv:2:21: test_every_days is no whole number in range: found \"3661\", allowed 0 to 3660")]
    [InlineData("kit.csv", Kit + "FIRE,Fire,1,yes,yes,,367\n", "kit.csv:2:22: warn_days is no whole number in range: found \"367\", allowed 0 to 366")]
    [InlineData("kit.csv", Kit + "FIRE,Fire,1,yes,yes,,-1\n", "kit.csv:2:22: warn_days is no whole number in range: found \"-1\", allowed 0 to 366")]
    public void Faults_of_the_kit(string file, string text, string told)
    {
        var read = ReadDay.With((file, text));
        ReadDay.Faults(read).Should().Equal(told);
        read.Given.Should().BeNull();
    }

    [Fact]
    public void A_vans_own_kit_goes_before_the_depots_and_unknown_columns_are_notes()
    {
        var read = ReadDay.With(("van_kit.csv", "required,colour,kit_item,van\n6,red,cones,b2\n"), ("kit.csv", Kit + "CONES,Cones,4,no,no,,\nGAS,Gas detector,1,no,no,180,14\nFIRE,Fire,1,yes,yes,0,0\n"));

        read.Findings.Notes.Select(n => n.ToString()).Should().Equal("van_kit.csv:1:10: unknown column \"colour\" is ignored");
        var setup = read.Given!.Setup;
        setup.Kit.Select(k => (k.TestEveryDays, k.WarnDays, k.HasDate)).Should().Equal((0, KitPiece.UsualWarnDays, false), (180, 14, true), (0, 0, true));
        (setup.Required(new("B1"), setup.Kit[0]), setup.Required(new("B2"), setup.Kit[0])).Should().Be((4, 6));
    }

    [Theory]
    [InlineData("lamps tin lamps", "depot.csv:11:9: value names a waste stream that is none: found \"lamps tin lamps\", allowed lamps thermostats batteries metal film")]
    [InlineData("lamps,film", "depot.csv:11:1: the row does not fit the header: found 3 fields, allowed 2")]
    public void Faults_of_the_streams(string streams, string told) => ReadDay.FaultsWith("depot.csv", $"streams,{streams}\n").Should().Equal(told);

    [Theory]
    [InlineData("", "")]
    [InlineData("film", "film")]
    [InlineData(" film  LAMPS film ", "lamps film")]
    [InlineData("film metal batteries thermostats lamps", "lamps thermostats batteries metal film")]
    public void Streams_come_in_their_own_order_each_once(string named, string read) =>
        string.Join(' ', ReadDay.With(("depot.csv", SmallDay.Text("depot.csv") + $"streams,{named}\n")).Given!.Setup.Depot.Streams.Select(s => s.Text)).Should().Be(read);

    [Theory]
    [InlineData("cardboard,collected,,3", "27: item is needed for collected: found nothing, allowed a code")]
    [InlineData("cardboard,collected,tin,3", "27: item is none of the words allowed: found \"tin\", allowed lamps, thermostats, batteries, metal, film")]
    [InlineData("cardboard,collected,lamps,x", "33: value is no number in range: found \"x\", allowed 0 to 99999, with a decimal point")]
    [InlineData("cardboard,collected,lamps,-1", "33: value is no number in range: found \"-1\", allowed 0 to 99999, with a decimal point")]
    [InlineData("damage,drivable,,maybe", "24: value is none of the words allowed: found \"maybe\", allowed yes, no")]
    [InlineData("damage,told,,", "20: value is no short text: found nothing, allowed 1 to 200 characters")]
    [InlineData("damage,told_at,,25:00", "23: value is no time of day: found \"25:00\", allowed HH:MM, 00:00 to 23:59")]
    [InlineData("kit,tested,,2026-01-01", "18: item is needed for tested: found nothing, allowed a code")]
    [InlineData("kit,tested,FIRE,2026-13-01", "23: value is no date: found \"2026-13-01\", allowed YYYY-MM-DD, a day of the years 1900 to 2199")]
    [InlineData("weekly,part,,worn", "19: item is needed for part: found nothing, allowed " + Parts)]
    [InlineData("weekly,part,engine,worn", "19: item is none of the words allowed: found \"engine\", allowed " + Parts)]
    [InlineData("weekly,part,wipers,", "26: value is no short text: found nothing, allowed 1 to 200 characters")]
    [InlineData("weekly,photos,wipers,3", "21: item has no place in step weekly: found \"wipers\", allowed nothing")]
    [InlineData("weekly,photo,,", "21: value is no short text: found nothing, allowed 1 to 200 characters")]
    [InlineData("weekly,photo,,../wiper.png", "21: value reaches out of the day folder: found \"../wiper.png\", allowed the name of a file in it")]
    [InlineData("weekly,photo,,/wiper.png", "21: value reaches out of the day folder: found \"/wiper.png\", allowed the name of a file in it")]
    [InlineData("weekly,photo,,photos\\..\\..\\wiper.png", "21: value reaches out of the day folder: found \"photos\\..\\..\\wiper.png\", allowed the name of a file in it")]
    [InlineData("leftovers,collected,LAMP,3", "17: field is none of the words allowed: found \"collected\", allowed sealed, bin, kept, installed")]
    public void Faults_of_the_evening(string row, string told)
    {
        var read = ReadDay.With(SmallDay.Evening("B1,T1," + row));
        ReadDay.Faults(read).Should().Equal("evening.csv:2:" + told);
        (read.Given, read.Evening.Count).Should().Be((null, 0));
    }

    [Fact]
    public void Every_new_field_reaches_its_command()
    {
        var read = ReadDay.With(SmallDay.Evening(
            "B1,T1,cardboard,collected,LAMPS,4", "B1,T1,cardboard,collected,film,2.5", "B1,T1,cardboard,flattened,LAMP,1",
            "B1,T1,damage,zone,,roof", "B1,T1,damage,severity,,repair", "B1,T1,damage,what,,dent", "B1,T1,damage,drivable,,NO", "B1,T1,damage,told,,L1", "B1,T1,damage,told_at,,16:41",
            "B1,T1,kit,tested,FIRE,2026-03-01", "B1,T1,weekly,part,Wipers,torn", "B1,T1,weekly,part,wipers,worn", "B1,T1,weekly,photo,,photos/w.png", "B1,T1,weekly,clean,,no"));
        var answers = EveningAnswers.Of(read.Evening);

        answers.Select(a => a.Command).OfType<object>().Should().BeEquivalentTo(
            new object[]
            {
                new CountStream(new("B1"), new("lamps"), 4), new CountStream(new("B1"), new("film"), 2.5m), new CountBoxes(new("B1"), new("LAMP"), 1),
                new ReportDamage(new("B1"), "roof", Severity.Repair, "dent", false, "L1", new TimeOnly(16, 41)), new CountKit(new("B1"), new("FIRE"), null, null, new DateOnly(2026, 3, 1)),
                new ReportDamage(new("B1"), "wipers", Severity.Repair, "torn"), new ReportDamage(new("B1"), "wipers", Severity.Repair, "worn"), new CheckWeekly(new("B1"), null, 0, Clean: false),
            }, o => o.RespectingRuntimeTypes());
        answers.Single(a => a.Photo is not null).Photo.Should().EndWith(Path.Combine("photos", "w.png").Replace(Path.DirectorySeparatorChar, '/'));
    }

    /// <summary>What only the book can judge is a fault at the answer's line, and nothing is written.</summary>
    [Theory]
    [InlineData("cardboard,collected,batteries,3", "batteries is not counted at this depot; counted are lamps, film.")]
    [InlineData("cardboard,collected,lamps,2.5", "Removed lamps, fluorescent, in whole pieces, cannot be 2.5. Type 0 to 2000.")]
    [InlineData("kit,tested,FIRE,2026-03-05", "The last test of Fire extinguisher cannot be 2026-03-05; today is 2026-03-04.")]
    [InlineData("weekly,photo,,nothing.png", "nothing.png cannot be attached:")]
    [InlineData("weekly,photo,,depot.csv", "depot.csv is not a photo:")]
    [InlineData("weekly,part,wipers,see card 356938035643809", "Do not enter card numbers or PINs in what it is")]
    public void Refused_answers_name_their_line_and_write_nothing(string row, string told)
    {
        using var temp = new TempFolder();
        var day = SmallDay.Write(temp["day"], ("depot.csv", SmallDay.Text("depot.csv") + "streams,lamps film\n"), SmallDay.Evening("B2,T2,sign,,,", "B1,T1," + row));

        var said = Spoken.By(() => RehearseCommand.Run(day, temp["out"], null, null, final: false));

        (said.Code, said.Out).Should().Be((2, ""));
        said.Err.Should().StartWith("evening.csv:3:1: ").And.Contain(told).And.EndWith("1 fault; the evening was not rehearsed and nothing was written.\n");
        Directory.EnumerateFileSystemEntries(temp["out"]).Should().BeEmpty();
    }

    [Fact]
    public void With_a_fault_in_older_records_neither_a_rehearsal_nor_a_load_writes_anything()
    {
        using var temp = new TempFolder();
        var day = SmallDay.Write(temp["day"], ("past.csv", "date,van,record,item,value\n2026-03-04,B1,weekly,,\n"));

        Spoken.By(() => RehearseCommand.Run(day, temp["out"], null, null, final: false)).Should().Be(new Spoken(
            2, "", "past.csv:2:1: date is not past: found \"2026-03-04\", allowed a day before 2026-03-04\n1 fault; nothing was loaded.\n"));
        Directory.EnumerateFileSystemEntries(temp.Path).Select(Path.GetFileName).Should().Equal("day");
    }
}
