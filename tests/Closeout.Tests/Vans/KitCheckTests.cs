using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Turning;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

public class KitCheckTests
{
    private static Depot AtKit(Func<VanCarried, VanCarried>? carried = null) => Tiny.Opened(carried: carried).At(Tiny.B1, Step.Kit);

    private static IEnumerable<(string, int)> Missing(Depot depot) =>
        KitCheck.MissingOf(depot, Tiny.B1).Select(m => (m.Piece.Code.Text, m.Missing));

    [Fact]
    public void Nothing_counted_nothing_known_to_be_missing() => Missing(AtKit()).Should().BeEmpty();

    [Fact]
    public void What_is_counted_below_the_requirement_is_missing_in_the_order_of_the_list() =>
        Missing(AtKit().Did(new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 0), new CountKit(Tiny.B1, Tiny.Cones.Code, 1)))
            .Should().Equal(("CONES", 2), ("EXT", 1));

    [Fact]
    public void More_than_required_is_not_missing() => Missing(AtKit().Did(new CountKit(Tiny.B1, Tiny.Cones.Code, 6))).Should().BeEmpty();

    [Fact]
    public void A_count_not_said_is_the_requirement() =>
        Missing(AtKit().Did(new CountKit(Tiny.B1, Tiny.Cones.Code, 1), new CountKit(Tiny.B1, Tiny.Cones.Code, null))).Should().BeEmpty();

    [Fact]
    public void An_earlier_shortage_stands_until_tonights_kit_is_confirmed()
    {
        var depot = AtKit(v => v with { KitShort = [new(Tiny.Cones.Code, 1)] });
        Missing(depot).Should().Equal(("CONES", 2));
        Missing(depot.Did(new ConfirmKit(Tiny.B1))).Should().BeEmpty("not counted, so all there");
    }

    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, true)]
    [InlineData(30, true)]
    [InlineData(31, false)]
    public void A_date_is_said_from_thirty_days_before(int days, bool said) =>
        KitCheck.Due(AtKit().Did(new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 1, Tiny.Wednesday.AddDays(days))), Tiny.B1)
            .Any().Should().Be(said);

    [Fact]
    public void The_date_last_read_counts_and_one_read_tonight_goes_before_it()
    {
        var depot = AtKit(v => v with { KitDates = [new(Tiny.FirstAid.Code, Tiny.Monday, null)] });
        KitCheck.DatesOf(depot, Tiny.B1, Tiny.FirstAid.Code).Expires.Should().Be(Tiny.Monday);
        KitCheck.DatesOf(depot.Did(new CountKit(Tiny.B1, Tiny.FirstAid.Code, 1, Tiny.Friday)), Tiny.B1, Tiny.FirstAid.Code).Expires.Should().Be(Tiny.Friday);
        KitCheck.DatesOf(depot.Did(new CountKit(Tiny.B1, Tiny.FirstAid.Code, 1)), Tiny.B1, Tiny.FirstAid.Code).Expires.Should().Be(Tiny.Monday, "tonight nobody read it");
    }

    [Fact]
    public void A_piece_that_bears_no_date_never_expires() =>
        KitCheck.Due(AtKit().Did(new CountKit(Tiny.B1, Tiny.Cones.Code, 3, Tiny.Monday)), Tiny.B1).Should().BeEmpty();

    /// <summary>A gas detector tested every 180 days, said from 14 days before, in B1 last tested 170 days before Monday.</summary>
    private static Depot WithDetector(DateOnly? date = null) => Tiny.Opened(
        date: date,
        setup: Tiny.Setup with { Kit = [.. Tiny.Setup.Kit, Detector] },
        carried: v => v.Van == Tiny.B1 ? v with { KitDates = [new(Detector.Code, null, Tiny.Monday.AddDays(-170))] } : v).At(Tiny.B1, Step.Kit);

    private static readonly KitPiece Detector = new(new("DET"), "gas detector", 1, false, false, 180, 14);

    [Theory]
    [InlineData(-5, null)]                                                 // 15 days before
    [InlineData(-4, "gas detector to be tested by 2026-11-26")]            // 14 days before
    [InlineData(10, "gas detector to be tested by 2026-11-26")]            // on the day
    [InlineData(11, "gas detector not tested, was due 2026-11-26")]
    public void The_next_test_is_due_so_many_days_after_the_last(int day, string? said) =>
        KitCheck.Due(WithDetector(Tiny.Monday.AddDays(day)), Tiny.B1).Select(d => d.Words(Tiny.Monday.AddDays(day))).SingleOrDefault().Should().Be(said);

    [Fact]
    public void A_test_read_tonight_counts_and_is_carried_on()
    {
        var depot = WithDetector().Did(new CountKit(Tiny.B1, Detector.Code, 1, null, Tiny.Wednesday));
        KitCheck.Dates(depot, Tiny.B1).Should().Equal(new KitDue(Detector, Tiny.Wednesday.AddDays(180), IsTest: true));

        NextPage.After(depot, Tiny.Friday).Carried.Vans[0].KitDates.Should().Equal(new KitDate(Detector.Code, null, Tiny.Wednesday));
    }

    [Fact]
    public void Counting_a_piece_without_reading_its_date_forgets_no_date()
    {
        var depot = WithDetector().Did(new CountKit(Tiny.B1, Detector.Code, 0), new CountKit(Tiny.B1, Detector.Code, 1));

        KitCheck.DatesOf(depot, Tiny.B1, Detector.Code).TestedOn.Should().Be(Tiny.Monday.AddDays(-170));
    }

    [Fact]
    public void An_instrument_of_which_nobody_read_a_test_is_not_said_to_be_due() =>
        KitCheck.Dates(WithDetector().At(Tiny.B2, Step.Kit), Tiny.B2).Should().BeEmpty("nobody knows");

    [Fact]
    public void An_instrument_to_be_tested_is_not_bought_and_an_expiring_piece_is()
    {
        var depot = WithDetector().Did(new CountKit(Tiny.B1, Detector.Code, 1, null, Tiny.Monday.AddDays(-400)));
        KitCheck.ToBuy(depot, Tiny.B1).Should().BeEmpty();

        KitCheck.ToBuy(depot.Did(new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 1, Tiny.Wednesday.AddDays(20)), new CountKit(Tiny.B1, Tiny.Cones.Code, 1)), Tiny.B1)
            .Should().Equal((Tiny.Cones, 2), (Tiny.Extinguisher, 1));
    }

    [Fact]
    public void A_van_may_need_more_or_fewer_of_a_piece_than_the_others()
    {
        var depot = Tiny.Opened(setup: Tiny.Setup with { VanKit = [new(Tiny.B1, Tiny.Cones.Code, 5), new(Tiny.B2, Tiny.Extinguisher.Code, 0)] });
        var counted = depot.At(Tiny.B1, Step.Kit).Did(new CountKit(Tiny.B1, Tiny.Cones.Code, 3));
        Missing(counted).Should().Equal(("CONES", 2));

        var none = depot.At(Tiny.B2, Step.Kit).Did(new CountKit(Tiny.B2, Tiny.Extinguisher.Code, 0));
        KitCheck.MissingOf(none, Tiny.B2).Should().BeEmpty("it need not carry any");
        ((KitCounted)depot.At(Tiny.B1, Step.Kit).Accepts(new CountKit(Tiny.B1, Tiny.Cones.Code, null))).Count.Should().Be(5, "as required means as this van requires");
    }
}
