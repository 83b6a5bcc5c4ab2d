using Closeout.Restock;

namespace Closeout.Shifts.Steps;

/// <summary>Count one item.</summary>
/// <param name="Sealed">Cartons still sealed aboard; null: as the book says.</param>
/// <param name="Installed">What visits report; null: what the loaded visit reports say, if any.</param>
/// <param name="Sure">Record a count above the book without asking again.</param>
public sealed record CountLeftover(
    Code<Van> Van, Code<Item> Item, int? Sealed, int Bin, int Kept, int? Installed = null, bool Sure = false)
    : CloseoutCommand(Van), IAskedAgain
{
    /// <summary>The most units of sealed cartons that one answer may say.</summary>
    private const int MostUnits = 10_000_000;

    public override Step? Step => DayBook.Step.Leftovers;

    public ICommand Surely() => this with { Sure = true };

    protected override Decision Decide(Depot depot, Shift shift)
    {
        if (depot.Setup.Find(Item) is not { } item)
            return Refusal.NoSuchItem(Item);

        var before = Leftovers.BeforeOf(shift, item);
        var count = new LeftoverCount(Sealed ?? before.Sealed, Bin, Kept);
        if (NotPossible(depot, item, before, count) is { } refused)
            return refused;

        var installed = Installed ?? depot.Reported(shift.Van, item.Code);
        var used = Counting.Used(before, count, item.UnitsPerCarton);
        if (used < 0 && !Sure)
            return AboveTheBook(shift, item, before, count, Counting.Gap(used, installed));

        var first = shift.Counts.TryGetValue(item.Code, out var old)
            ? Counting.Moves(shift.Van, item, before, old.Count, old.Installed)
            : [];
        var change = Counting.Replace(first, Counting.Moves(shift.Van, item, before, count, installed));
        var back = change.Where(m => m.From == Place.Bin).Sum(m => m.Units);
        var inBin = depot.Stock.Ledger.Units(Place.Bin, item.Code);
        return back > 0 && back > inBin
            ? Refusal.BinTooLow(item, inBin, back) with { About = "bin" }
            : new LeftoverCounted(
                shift.Van, item.Code, count, installed, used, Counting.Gap(used, installed), Counting.Emptied(before, count), change);
    }

    /// <summary>No van carries more sealed cartons than its payload, unless it has them on record.</summary>
    private Refusal? NotPossible(Depot depot, Item item, Holding before, LeftoverCount count)
    {
        var carried = Payload.MostCartons(depot.Setup, depot.Setup.Van(Van), item) ?? Refusal.MostAtOnce;
        var mostSealed = Math.Min(Math.Max(carried, before.Sealed), Math.Min(Refusal.MostAtOnce, MostUnits / item.UnitsPerCarton));
        return Given.Range(T("Sealed cartons"), count.Sealed, 0, mostSealed, "sealed")
            ?? Given.Range(T("Loose into the bin"), count.Bin, 0, Refusal.MostAtOnce, "bin")
            ?? Given.Range(T("Loose kept aboard"), count.Kept, 0, Refusal.MostAtOnce, "kept")
            ?? Given.Range(T("Units installed"), Installed ?? 0, 0, Refusal.MostAtOnce, "installed");
    }

    /// <summary>All three are counted once more, from the first on.</summary>
    private static Refusal AboveTheBook(Shift shift, Item item, Holding before, LeftoverCount count, int gap)
    {
        var counted = count.Sealed * item.UnitsPerCarton + count.Bin + count.Kept;
        return (shift.SpotItems.Contains(item.Code) && !shift.Counts.ContainsKey(item.Code)
            ? Refusal.BlindAboveTheBook(item, counted)
            : Refusal.AboveTheBook(item, counted, before.Units(item.UnitsPerCarton), gap)) with { About =
                shift.SpotItems.Contains(item.Code) && before.Sealed == 0 ? "kept" : "sealed" };
    }
}

/// <summary>The leftovers are done.</summary>
public sealed record ConfirmLeftovers(Code<Van> Van) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Leftovers;

    protected override Decision Decide(Depot depot, Shift shift) => new LeftoversConfirmed(shift.Van);
}

/// <summary>What came back, as far as several rules and screens ask for it.</summary>
public static class Leftovers
{
    /// <summary>What the book had aboard when the van came in.</summary>
    public static Holding BeforeOf(Shift shift, Item item) => shift.Before.GetValueOrDefault(item.Code);

    /// <summary>The items to count, in stow order: the places as the items file first names them, and in each the file's order.</summary>
    public static IReadOnlyList<Item> ToCount(Depot depot, Shift shift)
    {
        var stows = depot.Setup.Stows;
        return [.. depot.Setup.Items
            .Where(i => shift.Before.ContainsKey(i.Code) || shift.Counts.ContainsKey(i.Code))
            .OrderBy(i => stows[i.Stow])];
    }
}
