using Closeout.Cardboard;

namespace Closeout.Restock;

/// <summary>What a van's payload leaves for stock, and how many units must come off to keep to it. Pounds.</summary>
/// <remarks>
/// The payload is the placard's figure, occupants and cargo together (49 CFR 571.110: "The combined weight of occupants and
/// cargo should never exceed ..."). This reckons with what the book knows; it does not say that a van is safe.
/// </remarks>
public static class Payload
{
    /// <summary>Weights within this of each other are the same: sums of pounds end in rounding, and a millionth weighs nothing.</summary>
    public const double SameLb = 1e-6;

    /// <summary>
    /// Payload less crew and kit; below 0 where the payload does not even take these. Null: no payload is stated, so nothing is checked.
    /// </summary>
    public static double? AllowanceLb(double payloadLb, double crewAndKitLb) => payloadLb > 0 ? payloadLb - crewAndKitLb : null;

    /// <summary>
    /// Pounds by which the stock that the book has aboard is more than the payload leaves for it; 0: it is not, or no payload is stated.
    /// </summary>
    public static double AboveLb(Depot depot, Van van)
    {
        if (AllowanceLb(van.PayloadLb, depot.Setup.Depot.CrewAndKitLb) is not { } allowance)
            return 0;

        var aboardLb = depot.Setup.ItemsByCode.Select(i => (Item: i, Held: depot.Stock.Ledger.Aboard(van.Code, i)))
            .Where(a => a.Held != default)
            .Sum(a =>
                (a.Held.Sealed * a.Item.UnitsPerCarton + a.Held.Loose) * a.Item.UnitWeightLb + a.Held.Sealed * BoxBlank.WeightLb(
                    depot.Setup, a.Item));
        return aboardLb > allowance + SameLb ? aboardLb - allowance : 0;
    }

    /// <summary>
    /// Sealed cartons of an item that the whole payload could carry; null: no payload is stated, or the item weighs nothing.
    /// </summary>
    public static int? MostCartons(Setup setup, Van van, Item item) =>
        item.UnitsPerCarton * item.UnitWeightLb + BoxBlank.WeightLb(setup, item) is > 0 and var cartonLb && van.PayloadLb > 0
            ? (int)Math.Min(int.MaxValue, Math.Floor(van.PayloadLb / cartonLb))
            : null;

    /// <summary>Units that must come off so that the excess is gone, in whole units, rounded up; never more than there are.</summary>
    /// <param name="excessLb">Above 0.</param>
    /// <param name="unitWeightLb">Above 0.</param>
    public static int UnitsOff(double excessLb, double unitWeightLb, int units) =>
        (int)Math.Min(units, Math.Max(1, Math.Ceiling((excessLb - SameLb) / unitWeightLb)));
}

/// <summary>What was taken off a line of the plan because of the van's payload.</summary>
/// <param name="Most">
/// Units that the van may then have aboard: the cap. It may lie above the target, where only a carton is not rounded up.
/// </param>
/// <param name="Units">Units planned when it was first cut.</param>
/// <param name="Target">The target without the cut.</param>
public sealed record PayloadCut(int Most, int Units, Target Target);

/// <summary>Units of an item left out because of the van's payload.</summary>
public readonly record struct CutUnits(Item Item, int Units);

/// <summary>A van's stock against its payload, in pounds: sealed cartons with their boxes, loose units without.</summary>
/// <param name="CrewAndKitLb">What of the payload is not for stock.</param>
/// <param name="AboardLb">The stock aboard now, by the book.</param>
/// <param name="UncutLb">With all that was planned for it before anything was cut.</param>
/// <param name="LoadedLb">With what the plan loads.</param>
/// <param name="Cut">In item order; empty: nothing was cut.</param>
public sealed record VanWeight(Van Van, double CrewAndKitLb, double AboardLb, double UncutLb, double LoadedLb, IReadOnlyList<CutUnits> Cut)
{
    /// <summary>What the stock may weigh; null: no payload is stated.</summary>
    public double? AllowanceLb => Payload.AllowanceLb(Van.PayloadLb, CrewAndKitLb);

    /// <summary>Pounds by which the van is too heavy even so, for what it has aboard already; 0: it is not.</summary>
    public double AboveLb => AllowanceLb is { } allowance && LoadedLb > allowance + Payload.SameLb ? LoadedLb - allowance : 0;
}
