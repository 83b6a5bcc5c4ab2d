using System.Runtime.CompilerServices;

namespace Closeout.Restock;

/// <summary>
/// What of a van's loose units goes back to the bin: only where so much more is aboard than tomorrow's target that it would hardly be
/// loaded again.
/// </summary>
public sealed class ReturnBand
{
    /// <summary>Tomorrow's targets hang on bookings and history alone, which an evening seldom changes: they are worked out once.</summary>
    private static readonly ConditionalWeakTable<PlanningState, ReturnBand> Known = [];

    private readonly Planner planner;
    private readonly Dictionary<Code<Item>, IReadOnlyList<RestockLine>> wants = [];

    private ReturnBand(Depot depot) => planner = new(depot with { Shifts = depot.Shifts.Clear() }, RestockPlan.Tomorrow(depot));

    /// <summary>
    /// Loose units to the bin: down to the target where aboard is more than target + h sqrt(V), as far as loose units go; else none.
    /// </summary>
    /// <param name="aboard">Units aboard, loose ones among them.</param>
    public static int ToBin(Depot depot, Code<Van> van, Item item, int aboard, int loose) =>
        Known.GetValue(depot.Planning, _ => new(depot)).Want(van, item) is { } want
            && aboard > want.Target.Units + depot.Setup.Depot.ReturnBand * Math.Sqrt(want.Demand.Variance)
                ? Math.Clamp(aboard - want.Target.Units, 0, loose)
                : 0;

    private RestockLine? Want(Code<Van> van, Item item)
    {
        lock (wants)
        {
            if (!wants.TryGetValue(item.Code, out var all))
                wants[item.Code] = all = [.. planner.Wants(item)];

            return all.FirstOrDefault(w => w.Van.Code == van);
        }
    }
}
