namespace Closeout.Files;

/// <summary>The column replaces of items.csv: a code that is no item any more, and whose use counts as another's.</summary>
public static class ReplacedItems
{
    /// <summary>Tells codes that are replaced and should not be, or by two, or in a circle.</summary>
    public static void Check(IReadOnlyList<(Item Item, CsvRow Row)> replacing, Known<Item> items)
    {
        var by = new Dictionary<Code<Item>, Code<Item>>();
        foreach (var (item, row) in replacing)
        {
            if (!by.TryAdd(item.Replaces!.Value, item.Code))
                row.Bad("replaces", T($"is replaced by {by[item.Replaces.Value]} already"), T("a code that one item replaces"));
        }

        foreach (var (item, row) in replacing.Where(r => r.Row.Are("replaces")))
        {
            if (IsCircle(item.Code, by))
                row.Bad("replaces", T("leads back to the item itself"), T("a code that it came instead of"));
            else if (items.Find(item.Replaces!.Value) is not null && replacing.All(r => r.Item.Code != item.Replaces))
                row.Bad("replaces", T("is still in items.csv"), T("a code that is no item any more"));
        }
    }

    /// <summary>Every code that is replaced, and the item that now stands for it; those first that it replaced itself.</summary>
    public static IReadOnlyList<(Code<Item> Old, Code<Item> Now)> Of(IReadOnlyList<Item> items)
    {
        var by = items.Where(i => i.Replaces is not null).DistinctBy(i => i.Replaces).ToDictionary(i => i.Replaces!.Value, i => i.Code);
        return [.. by.Keys.Where(k => !IsCircle(k, by)).Select(k => (Old: k, Last: Last(k, by))).OrderBy(r => r.Last.Steps)
            .Select(r => (r.Old, r.Last.Code))];
    }

    private static (Code<Item> Code, int Steps) Last(Code<Item> code, Dictionary<Code<Item>, Code<Item>> by)
    {
        var steps = 0;
        for (; by.TryGetValue(code, out var next); steps++)
            code = next;

        return (code, steps);
    }

    private static bool IsCircle(Code<Item> code, Dictionary<Code<Item>, Code<Item>> by)
    {
        var (at, steps) = (code, 0);
        while (by.TryGetValue(at, out var next) && steps++ <= by.Count)
            at = next;

        return steps > by.Count;
    }
}
