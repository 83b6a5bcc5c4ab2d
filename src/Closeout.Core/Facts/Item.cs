using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>One kind of stock.</summary>
/// <param name="Priority">1 (must not be missing), 2 or 3.</param>
/// <param name="UnitsPerCarton">Units in a sealed carton, at least 1.</param>
/// <param name="Low">The least units a van carries, unless the van has its own limit.</param>
/// <param name="High">The most units a van carries; never below <paramref name="Low"/>.</param>
/// <param name="LeadDays">Working days from order to delivery.</param>
/// <param name="ReviewDays">Working days between two looks at the stock.</param>
/// <param name="Stow">Where it lies in a van, in the depot's words; empty when nobody said.</param>
/// <param name="Supplier">Who delivers it; null: the depot's one supplier.</param>
/// <param name="Replaces">The item that it came instead of, which the set-up no longer has; null: none.</param>
public sealed record Item(
    Code<Item> Code,
    string Description,
    int Priority,
    int UnitsPerCarton,
    double UnitWeightLb,
    CartonBox Box,
    int Low,
    int High,
    int LeadDays,
    int ReviewDays,
    int MinOrderCartons,
    string Stow,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] Code<Supplier>? Supplier = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] Code<Item>? Replaces = null);

/// <summary>Marks codes of suppliers.</summary>
public sealed class Supplier
{
    private Supplier()
    {
    }
}

/// <summary>The box of a carton: inside length, width and depth in inches, length at least width, and the board it is made of.</summary>
public sealed record CartonBox(double LengthIn, double WidthIn, double DepthIn, string Board);

/// <summary>What lies in one van of one item: sealed cartons and loose units.</summary>
public readonly record struct Holding(int Sealed, int Loose)
{
    /// <summary>All of it in units, with <paramref name="unitsPerCarton"/> units to a carton.</summary>
    public int Units(int unitsPerCarton) => Sealed * unitsPerCarton + Loose;
}
