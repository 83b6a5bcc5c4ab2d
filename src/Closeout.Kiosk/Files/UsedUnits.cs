using System.Runtime.InteropServices;

namespace Closeout.Files;

/// <summary>
/// Units that visits used of items, each visit a number. A file has a million of them: a visit's lines hang together by numbers, twelve
/// bytes each, for they are mostly few.
/// </summary>
internal sealed class UsedUnits(Known<Item> items)
{
    private const int None = -1;

    /// <summary>Lines of a visit that are looked through one by one; of a longer one they are found by their item.</summary>
    private const int Few = 64;

    private readonly List<Line> lines = [];
    private readonly List<(int Last, int Lines)> visits = [];
    private readonly Dictionary<(int Visit, int Item), int> many = [];

    private record struct Line(int Item, int Before)
    {
        public int Units;
    }

    /// <summary>Units that the visit used of the item so far, to be added to before another is asked for.</summary>
    public ref int By(int visit, int item)
    {
        while (visits.Count <= visit)
            visits.Add((None, 0));

        if (Find(visit, item) is not { } at)
        {
            at = lines.Count;
            lines.Add(new(item, visits[visit].Last));
            visits[visit] = (at, visits[visit].Lines + 1);
            if (visits[visit].Lines > Few)
                Note(visit);
        }

        return ref CollectionsMarshal.AsSpan(lines)[at].Units;
    }

    /// <summary>What these visits used, item by item, sums and squares over the visits; in the order of codes.</summary>
    public IEnumerable<ItemUse> Sums(IEnumerable<int> of)
    {
        var sums = new Dictionary<int, (long Sum, long Squares)>();
        foreach (var visit in of.Where(v => v < visits.Count))
        {
            for (var at = visits[visit].Last; at != None; at = lines[at].Before)
            {
                var line = lines[at];
                ref var sum = ref CollectionsMarshal.GetValueRefOrAddDefault(sums, line.Item, out _);
                sum = (sum.Sum + line.Units, sum.Squares + ((long)line.Units * line.Units));
            }
        }

        return sums.Select(s => new ItemUse(items.Codes[s.Key], s.Value.Sum, s.Value.Squares)).OrderBy(u => u.Item);
    }

    private int? Find(int visit, int item)
    {
        if (visits[visit].Lines > Few)
            return many.TryGetValue((visit, item), out var found) ? found : null;

        var all = CollectionsMarshal.AsSpan(lines);
        var at = visits[visit].Last;
        while (at != None && all[at].Item != item)
            at = all[at].Before;

        return at == None ? null : at;
    }

    /// <summary>Notes where the visit's lines are: all of them when it becomes a long one, then the last.</summary>
    private void Note(int visit)
    {
        var at = visits[visit].Last;
        do
            many[(visit, lines[at].Item)] = at;
        while (visits[visit].Lines == Few + 1 && (at = lines[at].Before) != None);
    }
}
