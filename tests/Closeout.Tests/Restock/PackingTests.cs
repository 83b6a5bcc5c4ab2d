using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class PackingTests
{
    private sealed record Case(int C, Portion[] Vans, int Bin, int Shelf);

    /// <summary>Small cases in which the depot has what was given; often just so, for there the choice is hardest.</summary>
    private static readonly Gen<Case> Any =
        from c in Gen.Int[1, 6]
        from vans in Gen.Select(Gen.Int[0, 14], Gen.Int[0, 8], Gen.Int[0, 14], (given, aboard, room) => new Portion(given, aboard, aboard + given + room)).Array[0, 4]
        from bin in Gen.Int[0, 20]
        from spare in Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, 6]))
        select new Case(c, vans, bin, Math.Max(0, (vans.Sum(v => v.Given) - bin + c - 1) / c) + spare);

    /// <summary>More vans, each with odd units and room to be rounded up: many sets of them come to the same, and bay order must choose.</summary>
    private static readonly Gen<Case> OddUnits =
        from c in Gen.Int[3, 6]
        from vans in Gen.Select(Gen.Int[0, 1], Gen.Int[1, c - 1], (f, r) => new Portion(f * c + r, 0, 20)).Array[4, 6]
        from bin in Gen.Int[0, 8]
        from spare in Gen.Int[0, 3]
        select new Case(c, vans, bin, Math.Max(0, (vans.Sum(v => v.Given) - bin + c - 1) / c) + spare);

    [Fact]
    public void The_packing_is_the_best_of_all_there_are() => Any.Holds(IsBest, 4000);

    [Fact]
    public void Of_many_that_come_to_the_same_it_is_still_the_best() => OddUnits.Holds(IsBest, 4000);

    private static void IsBest(Case t) => Text(Packing.Pack(t.Vans, t.C, t.Bin, t.Shelf)).Should().Be(Text(EveryPacking.Best(t.Vans, t.C, t.Bin, t.Shelf)!));

    [Fact]
    public void Every_van_gets_what_was_given_and_only_up_may_be_more() => Any.Holds(t =>
    {
        var plan = Packing.Pack(t.Vans, t.C, t.Bin, t.Shelf);
        foreach (var (van, packed) in t.Vans.Zip(plan.Vans))
        {
            var units = packed.Sealed * t.C + packed.Loose;
            (units - van.Given).Should().BeInRange(packed.Up ? 1 : 0, packed.Up ? t.C - 1 : 0);
            (van.Aboard + units).Should().BeLessThanOrEqualTo(van.High);
        }

        plan.Vans.Sum(p => p.Loose).Should().BeLessThanOrEqualTo(t.Bin + plan.Opened * t.C);
        (plan.Vans.Sum(p => p.Sealed) + plan.Opened).Should().BeLessThanOrEqualTo(t.Shelf);
    });

    [Fact]
    public void More_in_the_bin_never_opens_more_cartons() => Any.Holds(t =>
        Packing.Pack(t.Vans, t.C, t.Bin + 1, t.Shelf).Opened.Should().BeLessThanOrEqualTo(Packing.Pack(t.Vans, t.C, t.Bin, t.Shelf).Opened));

    // Two vans want 12 of cartons of 10; the bin has 4. Two cartons go out sealed and the odd units come from the bin.
    [Fact]
    public void Odd_units_come_from_the_bin() => Pack("12/0/12 12/0/12", 10, 4, 5).Should().Be("0 opened: 1+2 1+2");

    // The same with an empty bin: neither may be rounded up, so one carton is opened, and all ten of it are handed out
    // only if a whole carton's worth could go loose: 4 odd units alone do, so 4 go and 6 stay in the bin.
    [Fact]
    public void An_empty_bin_opens_one_carton_for_both() => Pack("12/0/12 12/0/12", 10, 0, 5).Should().Be("1 opened: 1+2 1+2");

    // With room aboard, both go up to a second carton rather than open one.
    [Fact]
    public void With_room_aboard_a_whole_carton_goes_rather_than_an_opened_one() => Pack("12/0/20 12/0/20", 10, 0, 5).Should().Be("0 opened: 2+0u 2+0u");

    // The bin has 2: one van takes them, the first in bay order; the other goes up.
    [Fact]
    public void Of_two_that_could_go_up_the_later_bay_does() => Pack("12/0/20 12/0/20", 10, 2, 5).Should().Be("0 opened: 1+2 2+0u");

    // Leftovers go first: 20 wanted, 13 in the bin, so ten of it loose although two cartons stand there.
    [Fact]
    public void Leftovers_go_before_a_sealed_carton() => Pack("20/0/20", 10, 13, 5).Should().Be("0 opened: 1+10");

    // Most loose before fewest up: with 9 in the bin the van of 9 empties it and the van of 2 goes up.
    [Fact]
    public void The_bin_is_emptied_as_far_as_it_goes() => Pack("2/0/20 9/0/20", 10, 9, 5).Should().Be("0 opened: 1+0u 0+9");

    // The last carton must be opened: sealed it would be one van's, and the other would get nothing.
    [Fact]
    public void The_last_carton_is_opened_when_both_need_of_it() => Pack("5/0/40 5/0/40", 10, 0, 1).Should().Be("1 opened: 0+5 0+5");

    [Fact]
    public void Nothing_given_opens_nothing() => Pack("0/3/9 0/0/9", 10, 7, 5).Should().Be("0 opened: 0+0 0+0");

    [Fact]
    public void More_given_than_there_is_throws_and_says_the_numbers() =>
        FluentActions.Invoking(() => Packing.Pack([new(31, 0, 40)], 10, 0, 3)).Should().Throw<InvalidOperationException>().WithMessage("31 units*3 cartons of 10");

    /// <summary>Vans as given/aboard/high in bay order; the answer as sealed+loose, u where rounded up.</summary>
    private static string Pack(string vans, int c, int bin, int shelf)
    {
        var portions = vans.Split(' ').Select(v => v.Split('/').Select(int.Parse).ToArray()).Select(n => new Portion(n[0], n[1], n[2])).ToList();
        return Text(Packing.Pack(portions, c, bin, shelf));
    }

    private static string Text(PackingPlan plan) =>
        $"{plan.Opened} opened: {string.Join(' ', plan.Vans.Select(p => $"{p.Sealed}+{p.Loose}{(p.Up ? "u" : "")}"))}";
}
