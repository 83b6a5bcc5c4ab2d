using Closeout.Restock;

namespace Closeout.Words;

/// <summary>The sentences of a van's stock against its payload, for screens and for print.</summary>
public static class WeightWords
{
    /// <summary>What the stock weighs now, with the load, and what it may; and what to do where even that is too much.</summary>
    public static string Of(UnitSystem units, VanWeight w) => w.AllowanceLb is not { } allowance
        ? T($"aboard {units.Weight(w.AboardLb)}, with this load {units.Weight(w.LoadedLb)}; no payload is stated, so nothing is checked")
        : T(
            $"aboard {units.Weight(w.AboardLb)}, with this load {units.Weight(w.LoadedLb)} of {units.Weight(allowance)} for stock "
                + $"(payload {units.Weight(w.Van.PayloadLb)} less crew and kit {units.Weight(w.CrewAndKitLb)})")
          + (w.AboveLb > 0 ? T($". TOO HEAVY by {units.Weight(w.AboveLb)}: take stock off") : "");

    /// <summary>What was cut of a van, by item: <c>PIPE-12 20, STRIP-7 3</c>.</summary>
    public static string Cut(VanWeight w) => string.Join(", ", w.Cut.Select(c => $"{c.Item.Code} {c.Units}"));

    /// <summary>
    /// For the wall: how many lines were cut, the first few of them, and the vans that are too heavy as they are. Null: none.
    /// </summary>
    public static string? Short(RestockPlan plan)
    {
        var cut = plan.Weights.SelectMany(w => w.Cut.Select(c => $"{w.Van.Code} {c.Item.Code} {c.Units}")).ToList();
        var heavy = plan.Weights.Where(w => w.AboveLb > 0).Select(w => w.Van.Code.Text).ToList();
        var parts = new[]
        {
            cut.Count == 0
                ? null
                : T($"{Spell.Count(cut.Count, T("line"), T("lines"))} cut for weight "
                    + $"({string.Join(", ", cut.Take(2))}{(cut.Count > 2 ? ", ..." : "")})"),
            heavy.Count == 0
                ? null
                : T($"{string.Join(", ", heavy.Take(4))}{(heavy.Count > 4 ? ", ..." : "")} too heavy as "
                    + $"{(heavy.Count == 1 ? T("it is") : T("they are"))}"),
        };
        return parts.Any(p => p is not null) ? string.Join(", ", parts.Where(p => p is not null)) : null;
    }
}
