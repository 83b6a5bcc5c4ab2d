namespace Closeout.Shifts;

/// <summary>Which items a close-out counts blind, so that every item of every van is counted in good time.</summary>
/// <remarks>
/// Classes by units moved in the planning window, largest first: A the items that make up the first 80 %, B up to 95 %, C the
/// rest (common practice). An item is due after 14, 28 or 56 calendar days (10, 20, 40 working days), in half the time when its
/// last count had a gap. Each evening takes the three that are the furthest through their time; one never counted goes first.
/// </remarks>
public static class SpotCount
{
    /// <summary>The most items asked for in one close-out.</summary>
    public const int Most = 3;

    /// <summary>From this share of its time on an item may be asked for, so that not all come due at once.</summary>
    private const double Soon = 0.75;

    /// <summary>Calendar days within which class A, B and C are counted.</summary>
    private static readonly int[] Days = [14, 28, 56];

    /// <summary>The items to count blind tonight, the most overdue first; only what the book has aboard.</summary>
    public static IReadOnlyList<Code<Item>> Choose(Depot depot, Code<Van> van)
    {
        var classes = Classes(depot);
        return [.. depot.Setup.Items
            .Where(i => depot.Stock.Ledger.Aboard(van, i) != default)
            .Select(i => (i.Code, Class: classes.GetValueOrDefault(i.Code, 2)))
            .Select(i => (i.Code, i.Class, Age: Age(depot, van, i.Code, i.Class)))
            .Where(i => i.Age >= Soon)
            .OrderByDescending(i => i.Age)
            .ThenBy(i => i.Class)
            .ThenBy(i => i.Code)
            .Take(Most)
            .Select(i => i.Code)];
    }

    /// <summary>0 for class A, 1 for B, 2 for C; items that did not move are C.</summary>
    public static IReadOnlyDictionary<Code<Item>, int> Classes(Depot depot)
    {
        var moved = depot.Planning.Use.SelectMany(u => u.Items).Select(i => (i.Item, i.Sum))
            .Concat(depot.Planning.Counted.SelectMany(d => d.Used).Select(u => (u.Item, Sum: (long)u.Units)))
            .GroupBy(i => i.Item, i => i.Sum).Select(g => (Item: g.Key, Units: g.Sum()))
            .OrderByDescending(m => m.Units).ThenBy(m => m.Item).ToList();
        var all = (double)moved.Sum(m => m.Units);
        var classes = new Dictionary<Code<Item>, int>();
        var before = 0L;
        foreach (var (item, units) in moved)
        {
            classes[item] = before < 0.80 * all ? 0 : before < 0.95 * all ? 1 : 2;
            before += units;
        }

        return classes;
    }

    /// <summary>The share of its time that an item has gone uncounted; endless when it never was counted.</summary>
    private static double Age(Depot depot, Code<Van> van, Code<Item> item, int ofClass)
    {
        if (!depot.Stock.SpotCounts.TryGetValue((van, item), out var last))
            return double.PositiveInfinity;

        var days = depot.Date.DayNumber - last.On.DayNumber;
        return days / (Days[ofClass] * (last.Gap == 0 ? 1.0 : 0.5));
    }
}
