using Closeout.DayBook;
using Closeout.Shifts;
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
    public void More_than_required_is_not_missing() => Missing(AtKit().Did(new CountKit(Tiny.B1, Tiny.Cones.Code, 7))).Should().BeEmpty();

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
}
