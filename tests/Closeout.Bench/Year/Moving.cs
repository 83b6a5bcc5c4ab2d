using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Bench.Year;

/// <summary>The product's proposals where an item is short.</summary>
public static class Moving
{
    private static readonly Van[] Vans =
        [.. Enumerable.Range(1, World.Vans).Select(bay => new Van(new($"V{bay:00}"), bay, "", 0, "", 0, 0, 0, 0, default))];

    /// <param name="aboard">Of every van.</param>
    /// <param name="supply">Units at the depot.</param>
    /// <param name="isShort">Units, above 0.</param>
    /// <returns>From and to as numbers of vans, from 0; to null: the depot.</returns>
    public static IReadOnlyList<(int From, int? To, MoveProposal Move)> Of(
        Item item, IReadOnlyList<Want> wants, IReadOnlyList<Holding> aboard, long supply, int isShort) =>
        [.. MoveProposals.Of(item, [.. wants.Select((w, v) => (Line(item, v, w, aboard[v]), aboard[v]))], supply, isShort)
            .Select(m => (m.From.Van.Bay - 1, m.To is { } to ? to.Van.Bay - 1 : (int?)null, m))];

    private static RestockLine Line(Item item, int v, Want want, Holding aboard)
    {
        var (booked, demand) = want.By ?? throw new InvalidOperationException("only what rests on bookings is moved");
        var (units, target) = (aboard.Units(item.UnitsPerCarton), new Target(want.Target, Basis.Booked));
        return new(
            Vans[v], item, units, 0, int.MaxValue, booked, demand, want.Target, target, target.Need(units), 0, 0, 0, 0, false, []);
    }
}
