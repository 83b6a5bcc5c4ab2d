using System.Runtime.InteropServices;

namespace Closeout.Files;

/// <summary>
/// Units that visits used of items, each visit a number. A file has a million lines of it: they stand in blocks, twelve bytes each, and
/// those of a visit, which are mostly few, hang together by their numbers.
/// </summary>
public sealed class UsedUnits(Known<Item> items)
{
    private const int None = -1;

    /// <summary>Lines of a visit that are looked through one by one; of a longer one they are found by their item.</summary>
    private const int Few = 64;

    private const int BlockBits = 12;
    private const int InBlock = (1 << BlockBits) - 1;

    private readonly List<Line[]> blocks = [];
    private readonly List<(int Last, int Lines)> visits = [];
    private readonly Dictionary<(int Visit, int Item), int> many = [];

    private int count;

    private record struct Line(int Item, int Before)
    {
        public int Units;
    }

    private ref Line this[int line] => ref blocks[line >> BlockBits][line & InBlock];

    /// <summary>Units that the visit used of the item so far, to be added to before another is asked for.</summary>
    public ref int By(int visit, int item)
    {
        while (visits.Count <= visit)
            visits.Add((None, 0));

        if (Find(visit, item) is not { } at)
        {
            at = count++;
            if ((at & InBlock) == 0)
                blocks.Add(new Line[1 << BlockBits]);

            this[at] = new(item, visits[visit].Last);
            visits[visit] = (at, visits[visit].Lines + 1);
            if (visits[visit].Lines > Few)
                Note(visit);
        }

        return ref this[at].Units;
    }

    /// <summary>What these visits used, item by item, sums and squares over the visits; in the order of codes.</summary>
    public IEnumerable<ItemUse> Sums(IEnumerable<int> of)
    {
        var sums = new Dictionary<int, (long Sum, long Squares)>();
        foreach (var visit in of.Where(v => v < visits.Count))
        {
            for (var at = visits[visit].Last; at != None; at = this[at].Before)
            {
                var line = this[at];
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

        var at = visits[visit].Last;
        while (at != None && this[at].Item != item)
            at = this[at].Before;

        return at == None ? null : at;
    }

    /// <summary>Notes where the visit's lines are: all of them when it becomes a long one, then the last.</summary>
    private void Note(int visit)
    {
        var at = visits[visit].Last;
        do
            many[(visit, this[at].Item)] = at;
        while (visits[visit].Lines == Few + 1 && (at = this[at].Before) != None);
    }
}
