using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Vans;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

/// <summary>Every limit that is a date, on its edges, from any date on: a day before the warning, the warning's first day, the last good day, the day after.</summary>
public sealed class DateLimitLaws
{
    /// <summary>Dates over two leap years, with their 29 February and the days on which clocks change.</summary>
    private static readonly Gen<DateOnly> AnyDate = Gen.Frequency(
        (6, Gen.Int[0, 3_000].Select(d => new DateOnly(2023, 6, 1).AddDays(d))),
        (1, Gen.OneOf(new DateOnly(2024, 2, 29), new DateOnly(2028, 2, 29), new DateOnly(2026, 3, 8), new DateOnly(2026, 11, 1), new DateOnly(2025, 12, 31), new DateOnly(2027, 1, 3))));

    [Fact]
    public void A_kit_piece_is_good_on_its_last_day_and_said_from_its_own_days_before() => Gen.Select(AnyDate, Gen.Int[0, 366]).Holds(sample =>
    {
        var (on, warn) = sample;
        var piece = Tiny.Extinguisher with { WarnDays = warn };
        string? Said(int days) => Notes(on.AddDays(days), piece, new KitDate(piece.Code, on, null)).SingleOrDefault();

        Said(-warn - 1).Should().BeNull();
        Said(-warn).Should().Be($"fire extinguisher expires {on:yyyy-MM-dd}");
        Said(0).Should().Be($"fire extinguisher expires {on:yyyy-MM-dd}");
        Said(1).Should().Be($"fire extinguisher expired {on:yyyy-MM-dd}");
    });

    [Fact]
    public void An_instrument_is_good_on_the_day_of_its_next_test() => Gen.Select(AnyDate, Gen.Int[1, 3_660], Gen.Int[0, 366]).Holds((tested, every, warn) =>
    {
        var piece = Tiny.Cones with { TestEveryDays = every, WarnDays = warn };
        var due = DateOnly.FromDayNumber(tested.DayNumber + every);
        string? Said(int days) => Notes(due.AddDays(days), piece, new KitDate(piece.Code, null, tested)).SingleOrDefault();

        Said(-warn - 1).Should().BeNull();
        Said(-warn).Should().Be($"traffic cones to be tested by {due:yyyy-MM-dd}");
        Said(0).Should().Be($"traffic cones to be tested by {due:yyyy-MM-dd}");
        Said(1).Should().Be($"traffic cones not tested, was due {due:yyyy-MM-dd}");
    });

    [Fact]
    public void An_instrument_that_wears_out_too_has_both_dates_and_only_the_worn_one_is_bought()
    {
        var piece = Tiny.Cones with { Required = 1, Expires = true, TestEveryDays = 30, WarnDays = 5 };
        var depot = At(Tiny.Wednesday, piece, new KitDate(piece.Code, Tiny.Wednesday.AddDays(400), Tiny.Wednesday.AddDays(-31)));
        KitCheck.Due(depot, Tiny.B1).Should().ContainSingle().Which.IsTest.Should().BeTrue();
        KitCheck.ToBuy(depot, Tiny.B1).Should().BeEmpty("an instrument to be tested is not bought");

        var worn = At(Tiny.Wednesday, piece, new KitDate(piece.Code, Tiny.Wednesday.AddDays(5), Tiny.Wednesday));
        KitCheck.ToBuy(worn, Tiny.B1).Select(b => (b.Piece.Code, b.Pieces)).Should().Equal((piece.Code, 1));
    }

    [Fact]
    public void A_service_by_date_is_said_from_fourteen_days_before() => Gen.Select(AnyDate, Gen.Int[1, 60]).Holds(sample =>
    {
        var (last, months) = sample;
        var van = Tiny.Van("B1", 1, "Avocet", 1000) with { LastServiceOn = last, ServiceEveryMonths = months, ServiceEveryMi = 0 };
        var due = Service.Of(van).DueOn!.Value;
        (due.Year * 12 + due.Month - last.Year * 12 - last.Month).Should().Be(months);
        due.Day.Should().Be(Math.Min(last.Day, DateTime.DaysInMonth(due.Year, due.Month)));
        string? Said(int days) => Service.Of(van).Note(1000, due.AddDays(days), new(false));

        Said(-15).Should().BeNull();
        Said(-14).Should().Be($"service by {due:yyyy-MM-dd}");
        Said(0).Should().Be($"service by {due:yyyy-MM-dd}");
        Said(1).Should().Be($"service overdue since {due:yyyy-MM-dd}");
    });

    /// <summary>Weeks by their names, over the turns of years: in the same week it is done, and from the second week after its week on it is overdue.</summary>
    [Fact]
    public void The_weekly_check_is_overdue_when_a_whole_iso_week_went_by() => Gen.Select(AnyDate, Gen.Int[0, 25]).Holds(sample =>
    {
        var (last, days) = sample;
        var today = last.AddDays(days);
        var weeks = Enumerable.Range(0, days + 1).Select(d => IsoWeek.Name(last.AddDays(d))).Distinct().Count() - 1;

        WeeklyCheck.IsOverdue(today, last).Should().Be(weeks > 1);
        WeeklyCheck.IsDue([], today, last).Should().Be(weeks > 1);
        WeeklyCheck.IsDue([today.DayOfWeek], today, last).Should().Be(weeks > 0, "today is the last working day of the week");
    }, samples: 1_000);

    private static IReadOnlyList<string> Notes(DateOnly today, KitPiece piece, KitDate dates) =>
        Readiness.Of(At(today, piece, dates)).Single(v => v.Van.Code == Tiny.B1).Notes;

    /// <summary>A van with one kit piece and its dates, its service far off.</summary>
    private static Depot At(DateOnly today, KitPiece piece, KitDate dates)
    {
        var van = Tiny.Van("B1", 1, "Avocet", 1000) with { ServiceEveryMonths = 0 };
        return Tiny.Opened(date: today, setup: Tiny.Setup with { Kit = [piece], Vans = [van] }, carried: v => v with { KitDates = [dates] });
    }
}
