using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using CsCheck;

namespace Closeout.Tests.Restock;

/// <summary>
/// A depot drawn by lot whose vans may carry less than the plan would load: items of all weights and none, payloads that bite and
/// that do not, changes by a lead. Told by its lots, so that a law which fails can be read.
/// </summary>
/// <param name="Seed">Of the depot without weights.</param>
internal sealed record HeavyDepot(int Seed, int Vans, int Items, int UnitsPerCarton, double[] Weights, (int Kind, double Part)[] Payloads, (int Van, int Item, OverrideKind Kind, int Units)[] Changes)
{
    /// <summary>Up to eight vans and four items.</summary>
    public static readonly Gen<HeavyDepot> Any = Of(vans: 0, items: 0, unitsPerCarton: 0);

    /// <param name="vans">0: drawn as well; so are the items and the units of a carton.</param>
    public static Gen<HeavyDepot> Of(int vans, int items, int unitsPerCarton) => Gen.Select(
        Gen.Int[1, 100_000],
        Gen.OneOf(0, 0.01, 0.13, 0.2, 0.5, 1.3, 4.2).Array[4],
        Gen.Select(Gen.Int[0, 9], Gen.Double[0, 1], (kind, part) => (kind, part)).Array[8],
        Gen.Select(Gen.Int[0, 7], Gen.Int[0, 3], Gen.Enum<OverrideKind>(), Gen.Int[0, 20], (van, item, kind, units) => (van, item, kind, units)).Array[0, 3],
        (seed, weights, payloads, changes) => new HeavyDepot(seed, vans, items, unitsPerCarton, weights, payloads, changes));

    public Depot Depot()
    {
        var depot = SomeDepot.Number(Seed, Vans, Items, UnitsPerCarton);
        depot = depot with { Setup = depot.Setup with { Items = [.. depot.Setup.Items.Select((i, n) => i with { UnitWeightLb = Weights[n] })] } };
        foreach (var (van, item, kind, units) in Changes)
        {
            var (v, i) = (depot.Setup.Vans[van % depot.Setup.Vans.Count].Code, depot.Setup.Items[item % depot.Setup.Items.Count]);
            var change = TinyDesk.Change(kind, v, Math.Min(units, depot.Setup.Limit(v, i).High), i.Code, Tiny.Friday);
            depot = change.Decide(depot).Entry is { } entry ? depot.Take(entry) : throw new InvalidOperationException($"{change} is lawful");
        }

        // What each may carry: nothing is stated, or more than enough, or less than it has aboard, or something between that and what would be loaded.
        var uncut = RestockPlan.For(Unweighed(depot)).Weights;
        return With(depot, n => Payloads[n] switch
        {
            (0, _) => 0,
            (1, var part) => Math.Max(1, 450 + uncut[n].LoadedLb + part * 10),
            (2, var part) => 400 + part * uncut[n].AboardLb,
            (_, var part) => Math.Round(450 + uncut[n].AboardLb + part * (uncut[n].LoadedLb - uncut[n].AboardLb), 1),
        });
    }

    /// <summary>The same depot with no payload stated: what would be planned if weight did not matter.</summary>
    public static Depot Unweighed(Depot depot) => With(depot, _ => 0);

    private static Depot With(Depot depot, Func<int, double> payload) =>
        depot with { Setup = depot.Setup with { Vans = [.. depot.Setup.Vans.Select((v, n) => v with { PayloadLb = payload(n) })] } };
}
