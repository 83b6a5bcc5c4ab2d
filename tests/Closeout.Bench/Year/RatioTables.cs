using Closeout.Facts;

namespace Closeout.Bench.Year;

/// <summary>Units missed, ours beside the best fixed levels.</summary>
public static class RatioTables
{
    private static readonly double[] Levels = [0.90, 0.95, 0.98, 0.99];

    private static readonly (string Name, Rules Rules, bool Knows)[] Ways =
    [
        ("today, honest order book", Rules.Today, false),
        ("learned, same orders", Rules.Learned, false),
        ("the same without moves between vans", Rules.Learned with { Moves = false }, false),
        ("the same without looking for changes", Rules.Learned with { ChangeLimit = 0 }, false),
        ("the same, order_service 0.995", Rules.Learned with { OrderService = 0.995 }, false),
        ("the same, every delivery whole and in time", Rules.Learned with { Scarce = false }, false),
        ("bound: nobody ever short, true rates", Rules.Today with { Unlimited = true }, true),
    ];

    public static void Run(Setup sample, int seeds)
    {
        foreach (var (name, climate) in new[] { ("a main kind each day", new Climate(false)), ("every visit's kind by itself", new(true)) })
        {
            var results = Seeds.Each(seeds, s =>
            {
                var world = new World(sample, s, climate);
                return Ways.Select(w => Comparison.Of(world, w.Rules, Levels, w.Knows)).ToList();
            });

            Told.Line($"");
            Told.Line($"### {name} ({seeds} seeds)");
            Table("missed, ours / theirs, equal units aboard", results, (c, p) => c.EqualAboard[p], "0.00");
            Table("missed, ours / theirs, equal units in vans and depot", results, (c, p) => c.EqualTotal[p], "0.00");
            Table("units aboard that ours saves, equal misses", results, (c, p) => c.Saved[p], "0.0 %");
            Table("fixed levels miss per thousand", results, (c, p) => c.Fixed[p].MissedPerThousand, "0.0");
            Table("fixed levels have aboard a van", results, (c, p) => c.Fixed[p].Aboard, "0");
            Table("the same with a van's part of the depot", results, (c, p) => c.Fixed[p].Total, "0");
        }
    }

    private static void Table(string name, List<Comparison>[] seeds, Func<Comparison, int, double> of, string format)
    {
        Told.Line($"");
        Told.Row([$"{name}; fixed at", .. Levels.Select(p => (FormattableString)$"{p:0.00}")]);
        Told.Row([$"---", .. Levels.Select(_ => (FormattableString)$"---")]);
        foreach (var (w, way) in Ways.Index())
        {
            Told.Row(
                [$"{way.Name}", .. Levels.Select((_, p) => (FormattableString)$"{Seeds.Spread(seeds.Select(s => of(s[w], p)), format)}")]);
        }
    }
}
