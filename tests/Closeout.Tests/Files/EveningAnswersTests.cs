using Closeout.Facts;
using Closeout.Files;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

public sealed class EveningAnswersTests
{
    private static readonly Code<Van> B1 = new("B1");
    private static readonly Code<Van> B2 = new("B2");
    private static readonly Code<Item> Lamp = new("LAMP");
    private static readonly Code<Item> Head = new("HEAD");

    [Fact]
    public void Rows_of_one_item_are_one_answer_even_with_others_between() =>
        Commands("B1,T1,leftovers,sealed,LAMP,1", "B1,T1,leftovers,kept,HEAD,2", "B1,T1,leftovers,bin,LAMP,3", "B1,T1,leftovers,kept,LAMP,4").Should().Equal(
            new CountLeftover(B1, Lamp, 1, 3, 4), new CountLeftover(B1, Head, null, 0, 2));

    [Fact]
    public void What_is_not_said_of_an_item_that_is_mentioned_is_the_books_cartons_and_no_loose_units() =>
        Commands("B1,T1,leftovers,installed,LAMP,5").Should().Equal(new CountLeftover(B1, Lamp, Sealed: null, Bin: 0, Kept: 0, Installed: 5));

    [Fact]
    public void A_field_that_repeats_begins_a_new_answer() =>
        Commands("B1,T1,leftovers,sealed,LAMP,1", "B1,T1,leftovers,kept,LAMP,4", "B1,T1,leftovers,kept,LAMP,5").Should().Equal(
            new CountLeftover(B1, Lamp, 1, 0, 4), new CountLeftover(B1, Lamp, null, 0, 5));

    [Fact]
    public void Coming_back_to_a_step_begins_a_new_answer() =>
        Commands("B1,T1,leftovers,sealed,LAMP,1", "B1,T1,cardboard,flattened,LAMP,2", "B1,T1,leftovers,kept,LAMP,4").Should().Equal(
            new CountLeftover(B1, Lamp, 1, 0, 0), new CountBoxes(B1, Lamp, 2), new CountLeftover(B1, Lamp, null, 0, 4));

    [Fact]
    public void Vans_may_be_interleaved_row_by_row() =>
        Commands("B1,T1,leftovers,sealed,LAMP,1", "B2,T2,leftovers,sealed,LAMP,0", "B1,T1,leftovers,kept,LAMP,4", "B2,T2,mileage,odometer,,2010", "B1,T1,leftovers,bin,LAMP,6").Should().Equal(
            new CountLeftover(B1, Lamp, 1, 6, 4), new CountLeftover(B2, Lamp, 0, 0, 0), new LogMileage(B2, 2010));

    [Fact]
    public void An_answer_stands_at_the_line_of_its_first_row() =>
        Answers("B1,T1,leftovers,sealed,LAMP,1", "B2,T2,kit,,,", "B1,T1,leftovers,kept,LAMP,4", "B1,T1,leftovers,kept,LAMP,5").Select(a => a.Line).Should().Equal(2, 3, 5);

    [Theory]
    [InlineData("B1,T1,leftovers,,,", typeof(ConfirmLeftovers))]
    [InlineData("B1,T1,cardboard,flattened,,yes", typeof(ConfirmCardboard))]
    [InlineData("B1,T1,kit,count,,yes", typeof(ConfirmKit))]
    [InlineData("B1,T1,damage,none,,yes", typeof(ConfirmDamage))]
    [InlineData("B1,T1,sign,,,", typeof(Sign))]
    public void A_row_without_an_item_answers_the_step_as_a_whole(string row, Type command) =>
        Commands(row).Should().ContainSingle().Which.Should().BeOfType(command);

    [Fact]
    public void The_weekly_check_stands_behind_the_parts_and_pictures_of_its_walk_round()
    {
        var answers = Answers(
            "B1,T1,weekly,oil_change_on,,2026-02-01", "B1,T1,weekly,part,wipers,torn", "B1,T1,weekly,photo,,wiper.webp", "B1,T1,weekly,part,TYRES,worn", "B1,T1,weekly,clean,,no", "B1,T1,sign,,,");

        answers.Select(a => a.Line).Should().Equal(3, 4, 5, 2, 7);
        answers.Select(a => a.Command).Should().BeEquivalentTo(
            new ICommand?[]
            {
                new ReportDamage(B1, "wipers", Severity.Repair, "torn"), null, new ReportDamage(B1, "tires", Severity.Repair, "worn"),
                new CheckWeekly(B1, new(2026, 2, 1), 0, Clean: false), new Sign(B1, new("T1")),
            },
            o => o.WithStrictOrdering().RespectingRuntimeTypes());
        answers[1].Photo.Should().EndWith("wiper.webp");
    }

    [Fact]
    public void What_came_home_of_a_stream_is_an_answer_of_its_own() =>
        Commands("B1,T1,cardboard,collected,lamps,4", "B1,T1,cardboard,flattened,LAMP,1", "B1,T1,cardboard,collected,film,2.5", "B1,T1,cardboard,collected,lamps,5").Should().Equal(
            new CountStream(B1, new("lamps"), 4), new CountBoxes(B1, Lamp, 1), new CountStream(B1, new("film"), 2.5m), new CountStream(B1, new("lamps"), 5));

    [Fact]
    public void Every_field_of_every_step_reaches_its_command() =>
        Commands(
            "B1,T1,mileage,odometer,,1050.5", "B1,T1,mileage,fuel_gal,,12.5", "B1,T1,mileage,fuel_grade,,regular",
            "B1,T1,damage,zone,,left side", "B1,T1,damage,severity,,Unsafe", "B1,T1,damage,what,,\"dent, deep\"",
            "B1,T1,damage,drivable,,yes", "B1,T1,damage,told,,\"L1, by telephone\"", "B1,T1,damage,told_at,,16:05",
            "B1,T1,kit,count,FIRE,1", "B1,T1,kit,expires,FIRE,2027-01-31", "B1,T1,kit,tested,FIRE,2026-03-01", "B1,T1,kit,count,CONES,3",
            "B1,T1,weekly,oil_change_on,,2026-02-01", "B1,T1,weekly,photos,,4", "B1,T1,weekly,clean,,no", "B1,L1,sign,,,").Should().Equal(
            new LogMileage(B1, 1050.5m, 12.5m, "regular"), new ReportDamage(B1, "left side", Severity.Unsafe, "dent, deep", true, "L1, by telephone", new TimeOnly(16, 5)),
            new CountKit(B1, new("FIRE"), 1, new DateOnly(2027, 1, 31), new DateOnly(2026, 3, 1)), new CountKit(B1, new("CONES"), 3),
            new CheckWeekly(B1, new DateOnly(2026, 2, 1), 4, Clean: false), new Sign(B1, new("L1")));

    [Fact]
    public void Two_damages_are_two_answers() =>
        Commands(
            "B1,T1,damage,zone,,roof", "B1,T1,damage,what,,dent", "B1,T1,damage,zone,,door", "B1,T1,damage,severity,,repair", "B1,T1,damage,what,,rust").Should().Equal(
            new ReportDamage(B1, "roof", Severity.Note, "dent"), new ReportDamage(B1, "door", Severity.Repair, "rust"));

    [Fact]
    public void A_damage_reported_behind_none_is_not_lost() =>
        Commands("B1,T1,damage,none,,yes", "B1,T1,damage,zone,,windshield", "B1,T1,damage,severity,,unsafe", "B1,T1,damage,what,,crack")
            .Should().Contain(new ReportDamage(B1, "windshield", Severity.Unsafe, "crack"), "it was answered last");

    [Fact]
    public void Fuel_corrected_behind_the_odometer_keeps_the_odometer_and_the_fuel() =>
        Commands("B1,T1,mileage,odometer,,1050", "B1,T1,mileage,fuel_gal,,12", "B1,T1,mileage,fuel_gal,,13")
            .Should().NotContainNulls("'as booked' in place of fuel 13 would put the odometer back to the start of the day");

    private static IReadOnlyList<EveningAnswer> Answers(params string[] rows)
    {
        var read = ReadDay.With(SmallDay.Evening(rows));
        read.Findings.Problems.Should().BeEmpty();
        return EveningAnswers.Of(read.Evening);
    }

    private static IEnumerable<ICommand?> Commands(params string[] rows) => Answers(rows).Select(a => a.Command);
}
