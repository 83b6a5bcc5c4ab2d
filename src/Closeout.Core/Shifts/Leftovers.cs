using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;

namespace Closeout.Shifts;

/// <summary>The rules of counting what came back.</summary>
public static class Leftovers
{
    /// <summary>The most units of sealed cartons that one answer may say.</summary>
    private const int MostUnits = 10_000_000;

    public static Decision Count(Depot depot, Shift shift, CountLeftover command)
    {
        if (depot.Setup.Find(command.Item) is not { } item)
        {
            return Refusal.NoSuchItem(command.Item);
        }

        var before = BeforeOf(depot, shift, item);
        var count = new LeftoverCount(command.Sealed ?? before.Sealed, command.Bin, command.Kept);
        var installed = command.Installed ?? depot.Reported(shift.Van, item.Code);
        var mostSealed = Math.Min(Refusal.MostAtOnce, MostUnits / item.UnitsPerCarton);
        foreach (var (field, what, number, most) in new[]
        {
            ("sealed", "Sealed cartons", count.Sealed, mostSealed), ("bin", "Loose into the bin", count.Bin, Refusal.MostAtOnce),
            ("kept", "Loose kept aboard", count.Kept, Refusal.MostAtOnce), ("installed", "Units installed", command.Installed ?? 0, Refusal.MostAtOnce),
        })
        {
            if (number < 0 || number > most)
            {
                return Refusal.OutOfRange(what, number, 0, most) with { About = field };
            }
        }

        var used = Counting.Used(before, count, item.UnitsPerCarton);
        var held = before.Units(item.UnitsPerCarton);
        if (used < 0 && !command.Sure)
        {
            var counted = count.Sealed * item.UnitsPerCarton + count.Bin + count.Kept;
            // All three are counted once more, from the first on.
            return (shift.SpotItems.Contains(item.Code) && !shift.Counts.ContainsKey(item.Code)
                ? Refusal.BlindAboveTheBook(item, counted)
                : Refusal.AboveTheBook(item, counted, held, Counting.Gap(used, installed))) with { About = "sealed" };
        }

        var first = shift.Counts.TryGetValue(item.Code, out var old)
            ? Counting.Moves(shift.Van, item, before, old.Count, old.Installed)
            : [];
        var change = Counting.Replace(first, Counting.Moves(shift.Van, item, before, count, installed));
        var back = change.Where(m => m.From == Place.Bin).Sum(m => m.Units);
        var inBin = depot.Ledger.Units(Place.Bin, item.Code);
        if (back > 0 && back > inBin)
        {
            return Refusal.BinTooLow(item, inBin, back) with { About = "bin" };
        }

        return new LeftoverCounted(
            shift.Van, item.Code, count, installed, used, Counting.Gap(used, installed), Counting.Emptied(before, count), change);
    }

    /// <summary>What the book had aboard when the van came in.</summary>
    public static Holding BeforeOf(Depot depot, Shift shift, Item item) =>
        shift.Before.TryGetValue(item.Code, out var before) ? before : new Holding(0, 0);

    /// <summary>The items to count, in stow order: the places in the order in which the items file first names them, and in each the file's order.</summary>
    public static IReadOnlyList<Item> ToCount(Depot depot, Shift shift)
    {
        var stows = depot.Setup.Stows;
        return [.. depot.Setup.Items
            .Where(i => shift.Before.ContainsKey(i.Code) || shift.Counts.ContainsKey(i.Code))
            .OrderBy(i => stows[i.Stow])];
    }
}
