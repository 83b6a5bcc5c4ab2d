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
    private readonly List<(int First, int Last, int Lines)> visits = [];

    /// <summary>The last line of each item, of whichever visit.</summary>
    private readonly List<int> lasts = [];

    private readonly Dictionary<(int Visit, int Item), int> many = [];

    private (int Visits, long Units, long Squares)[] sums = [];
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
            visits.Add((count, None, 0));

        while (lasts.Count <= item)
            lasts.Add(None);

        if (Find(visit, item) is not { } at)
        {
            at = count++;
            if ((at & InBlock) == 0)
                blocks.Add(new Line[1 << BlockBits]);

            this[at] = new(item, visits[visit].Last);
            visits[visit] = (visits[visit].First, at, visits[visit].Lines + 1);
            lasts[item] = at;
            if (visits[visit].Lines > Few)
                Note(visit);
        }

        return ref this[at].Units;
    }

    /// <summary>What these visits used, item by item, sums and squares over the visits; in the order of codes.</summary>
    public IReadOnlyList<ItemUse> Sums(IEnumerable<int> of)
    {
        if (sums.Length < lasts.Count)
            sums = new (int, long, long)[lasts.Count];

        var there = new List<int>();
        foreach (var visit in of.Where(v => v < visits.Count))
        {
            for (var at = visits[visit].Last; at != None; at = this[at].Before)
            {
                var line = this[at];
                ref var sum = ref sums[line.Item];
                if (sum.Visits == 0)
                    there.Add(line.Item);

                sum = (sum.Visits + 1, sum.Units + line.Units, sum.Squares + ((long)line.Units * line.Units));
            }
        }

        var used = there.Select(i => new ItemUse(items.Codes[i], sums[i].Units, sums[i].Squares)).OrderBy(u => u.Item).ToList();
        there.ForEach(i => sums[i] = default);
        return used;
    }

    private int? Find(int visit, int item)
    {
        // Mostly a visit's lines stand together, and none has this item yet.
        if (lasts[item] < visits[visit].First)
            return null;

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
