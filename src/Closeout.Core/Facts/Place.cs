namespace Closeout.Facts;

/// <summary>The kinds of place where stock can be.</summary>
public enum PlaceKind
{
    /// <summary>Sealed cartons at the depot.</summary>
    Shelf,

    /// <summary>The leftovers bin: loose units at the depot.</summary>
    Bin,

    /// <summary>Sealed cartons in a van.</summary>
    VanSealed,

    /// <summary>Loose units in a van: its extras box.</summary>
    VanLoose,

    /// <summary>A far end: where stock comes from.</summary>
    Supplier,

    /// <summary>A far end: installed.</summary>
    Homes,

    /// <summary>A far end: broken or spoiled.</summary>
    Scrap,

    /// <summary>A far end: what nobody can account for. Above zero: lost; below zero: found.</summary>
    Unexplained,
}

/// <summary>
/// One place. A van is two of them, its sealed cartons and its extras box, so that opening a carton is a move like any other.
/// </summary>
/// <param name="Van">The van, for the two van kinds; otherwise default.</param>
public readonly record struct Place(PlaceKind Kind, Code<Van> Van = default)
{
    public static readonly Place Shelf = new(PlaceKind.Shelf);
    public static readonly Place Bin = new(PlaceKind.Bin);
    public static readonly Place Supplier = new(PlaceKind.Supplier);
    public static readonly Place Homes = new(PlaceKind.Homes);
    public static readonly Place Scrap = new(PlaceKind.Scrap);
    public static readonly Place Unexplained = new(PlaceKind.Unexplained);

    public static Place Sealed(Code<Van> van) => new(PlaceKind.VanSealed, van);

    public static Place Loose(Code<Van> van) => new(PlaceKind.VanLoose, van);

    /// <summary>Whether one can walk up to it and count: false for the far ends.</summary>
    public bool IsPhysical => Kind <= PlaceKind.VanLoose;

    /// <summary>Whether it holds whole cartons only.</summary>
    public bool IsSealed => Kind is PlaceKind.Shelf or PlaceKind.VanSealed;

    public override string ToString() => Kind switch
    {
        PlaceKind.Shelf => "shelf",
        PlaceKind.Bin => "bin",
        PlaceKind.VanSealed => $"{Van} sealed",
        PlaceKind.VanLoose => $"{Van} loose",
        PlaceKind.Supplier => "supplier",
        PlaceKind.Homes => "homes",
        PlaceKind.Scrap => "scrap",
        PlaceKind.Unexplained => "unexplained",
        _ => throw new InvalidOperationException($"no such kind of place: {Kind}"),
    };
}
