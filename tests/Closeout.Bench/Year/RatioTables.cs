using Closeout.Facts;

namespace Closeout.Bench.Year;

/// <summary>Units missed, ours beside the best fixed levels.</summary>
public static class RatioTables
{
    private static readonly double[] Levels = [0.90, 0.95, 0.98, 0.99];

    private static readonly Way[] Aimed =
    [
        new("today, honest order book", Rules.Today),
        new("learned, same orders", Rules.Learned),
        new("the same without moves between vans", Rules.Learned with { Moves = false }),
        new("learned, order_service 0.995", Rules.Learned with { OrderService = 0.995 }),
        new("bound: nobody ever short, true rates", Rules.Today with { Unlimited = true }, true),
    ];

    private static readonly Way[] Beside =
    [
        new("today, order_service 0.98", Rules.Today with { OrderService = 0.98 }),
        new("learned, order_service 0.98", Rules.Learned with { OrderService = 0.98 }),
        new("learned, but not of changes", Rules.Learned with { ChangeLimit = 0 }),
        new("learned, every delivery whole and in time", Rules.Learned with { Scarce = false }),
    ];

    /// <param name="Knows">Whether ours knows what visits truly use.</param>
    private sealed record Way(string Name, Rules Rules, bool Knows = false);

    /// <param name="few">Seeds of the ways without an aim.</param>
    public static void Run(Setup sample, int seeds, int few)
    {
        foreach (var (name, climate) in new[] { ("a main kind each day", new Climate(false)), ("every visit's kind by itself", new(true)) })
        {
            Tables(name, sample, climate, Aimed, seeds);
            Tables($"beside it, {name}", sample, climate, Beside, few);
        }
    }

    private static void Tables(string name, Setup sample, Climate climate, Way[] ways, int seeds)
    {
        var results = Seeds.Each(seeds, s =>
        {
            var world = new World(sample, s, climate);
            return ways.Select(w => Comparison.Of(world, w.Rules, Levels, w.Knows)).ToList();
        });

        Told.Line($"");
        Told.Line($"### {name} ({seeds} seeds)");
        Table("missed, ours / theirs, equal units aboard", ways, results, (c, p) => c.EqualAboard[p], "0.00");
        Table("missed, ours / theirs, equal units in vans and depot", ways, results, (c, p) => c.EqualTotal[p], "0.00");
        Table("units aboard that ours saves, equal misses", ways, results, (c, p) => c.Saved[p], "0.0 %");
        Table("fixed levels miss per thousand", ways, results, (c, p) => c.Fixed[p].MissedPerThousand, "0.0");
        Table("fixed levels have aboard a van", ways, results, (c, p) => c.Fixed[p].Aboard, "0");
        Table("the same with a van's part of the depot", ways, results, (c, p) => c.Fixed[p].Total, "0");
    }

    private static void Table(string name, Way[] ways, List<Comparison>[] seeds, Func<Comparison, int, double> of, string format)
    {
        Told.Line($"");
        Told.Row([$"{name}; fixed at", .. Levels.Select(p => (FormattableString)$"{p:0.00}")]);
        Told.Row([$"---", .. Levels.Select(_ => (FormattableString)$"---")]);
        foreach (var (w, way) in ways.Index())
        {
            Told.Row(
                [$"{way.Name}", .. Levels.Select((_, p) => (FormattableString)$"{Seeds.Spread(seeds.Select(s => of(s[w], p)), format)}")]);
        }
    }
}
