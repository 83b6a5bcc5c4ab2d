namespace Closeout.Store;

/// <summary>Which of the lines that were found are this book's, in the order of their numbers.</summary>
/// <param name="Lines">The lines kept.</param>
/// <param name="Left">Lines left out, each with the reason.</param>
/// <param name="Entries">How many entries the book has had, as far as anything still tells.</param>
internal sealed record SalvagedChain(IReadOnlyList<GoodLine> Lines, IReadOnlyList<string> Left, int Entries)
{
    /// <summary>What a line that something beside the pages remembers weighs against others: more than a book can hold.</summary>
    private const long Remembered = 1L << 40;

    /// <summary>
    /// Lines follow each other when one names the other's sha, or when numbers are missing between them, for then what joined them
    /// is lost. Of all such chains the longest is kept; a line that something beside the pages remembers decides.
    /// </summary>
    public static SalvagedChain Of(IReadOnlyList<GoodLine> good, IReadOnlyList<BadLine> bad, LastEntry? last, (int Number, string Sha) seen)
    {
        var sorted = good.DistinctBy(l => l.Read.Sha).OrderBy(l => l.Number).ToList();
        var books = Books(sorted);
        var book = last is not null && books.Contains(last.BookSha)
            ? last.BookSha
            : books.OfType<string>().GroupBy(b => b).MaxBy(b => b.Count())?.Key;
        var mine = sorted.Where((_, i) => books[i] is not { } named || named == book).ToList();
        var witness = last?.BookSha == book ? last : null;
        var chain = Longest(mine, [.. new[] { witness?.Sha, seen.Sha }.OfType<string>()]);
        var (kept, own) = (chain.Select(l => l.Read.Sha).ToHashSet(), mine.Select(l => l.Read.Sha).ToHashSet());
        var left = sorted.Where(l => !kept.Contains(l.Read.Sha)).Select(l => own.Contains(l.Read.Sha)
            ? T($"{l.At}: entry {l.Number} does not fit the lines around it; left out")
            : T($"{l.At}: entry {l.Number} belongs to another book; left out")).ToList();
        return new(chain, left, new[] { Tail(chain, bad), witness?.Number ?? 0, seen.Number }.Max());
    }

    /// <summary>The book of each line: as a page's opening in its unbroken chain says, else one in its file; null: none does.</summary>
    private static List<string?> Books(List<GoodLine> sorted)
    {
        var chainOf = new Dictionary<string, int>();
        var chains = new List<int>();
        var said = new Dictionary<int, string>();
        foreach (var (i, line) in sorted.Index())
        {
            var chain = chainOf.TryGetValue(line.Read.Prev, out var before) ? before : i;
            chainOf[line.Read.Sha] = chain;
            chains.Add(chain);
            if (line.Read.Recorded.Entry is PageOpened && line.Read.BookNamed is { } named)
                said.TryAdd(chain, named);
        }

        var byFile = sorted.Where(l => l.Read.Recorded.Entry is PageOpened && l.Read.BookNamed is not null).GroupBy(l => l.File)
            .ToDictionary(g => g.Key, g => g.First().Read.BookNamed);
        return [.. sorted.Select((l, i) => said.TryGetValue(chains[i], out var own) ? own : byFile.GetValueOrDefault(l.File))];
    }

    private static List<GoodLine> Longest(List<GoodLine> sorted, HashSet<string> remembered)
    {
        var at = sorted.Index().ToDictionary(l => l.Item.Read.Sha, l => l.Index);
        var (best, from) = (new long[sorted.Count], new int[sorted.Count]);
        var (ready, farBest) = (0, -1);
        for (var i = 0; i < sorted.Count; i++)
        {
            for (; ready < i && sorted[ready].Number <= sorted[i].Number - 2; ready++)
                farBest = farBest < 0 || best[ready] > best[farBest] ? ready : farBest;

            var near = at.TryGetValue(sorted[i].Read.Prev, out var parent) && sorted[parent].Number == sorted[i].Number - 1 ? parent : -1;
            from[i] = near >= 0 && (farBest < 0 || best[near] >= best[farBest]) ? near : farBest;
            best[i] = (from[i] < 0 ? 0 : best[from[i]]) + (remembered.Contains(sorted[i].Read.Sha) ? Remembered : 1);
        }

        var chain = new List<GoodLine>();
        for (var i = sorted.Count == 0 ? -1 : Array.IndexOf(best, best.Max()); i >= 0; i = from[i])
            chain.Add(sorted[i]);

        chain.Reverse();
        return chain;
    }

    /// <summary>The last number kept, and one more for each line beyond it that cannot be read.</summary>
    private static int Tail(List<GoodLine> chain, IReadOnlyList<BadLine> bad)
    {
        var last = chain.Count > 0 ? chain[^1] : null;
        var files = chain.Select(l => l.File).ToHashSet();
        bool IsBeyond(BadLine b) => last is null
            || (b.File == last.File ? b.Line > last.Line : !files.Contains(b.File) && BookFolder.DateOf(b.File) > last.Date);
        var beyond = bad.Where(IsBeyond).ToList();
        return (last?.Number ?? 0) + Math.Max(beyond.Count(b => b.Begins), beyond.Count(b => b.Ends));
    }
}
