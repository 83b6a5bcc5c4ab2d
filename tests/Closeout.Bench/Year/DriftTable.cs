using Closeout.Facts;

namespace Closeout.Bench.Year;

/// <summary>Use that changes: how soon it is noticed, and how often where nothing changed.</summary>
public static class DriftTable
{
    /// <summary>A working day in the middle of the year's first half.</summary>
    private const int Changed = World.WarmUp + 60;

    private const double Service = 0.98;

    private static readonly string[] Kinds = ["direct-install", "multifamily", "weatherization", "alarm-swap"];
    private static readonly (int First, int Last)[] After = [(1, 3), (4, 6), (7, 11)];

    private static readonly (string Name, Rules Rules)[] Ways =
    [
        ("today", Rules.Today),
        ("learned, but not of changes", Rules.Learned with { ChangeLimit = 0 }),
        ("learned", Rules.Learned),
        ("the depot always has enough: today", Rules.Today with { Unlimited = true }),
        ("the same, learned", Rules.Learned with { Unlimited = true }),
    ];

    public static void Run(Setup sample, int seeds)
    {
        Doubled(sample, seeds);
        Alarms(sample, seeds);
    }

    private static void Doubled(Setup sample, int seeds)
    {
        Told.Line($"");
        Told.Line($"### A main kind's use doubles: missed per thousand, days after it, promise {Service} ({seeds} seeds, four kinds)");
        Told.Line($"");
        Told.Row([$"a van's day", $"", .. After.Select(a => (FormattableString)$"days {a.First} to {a.Last}")]);
        Told.Row([$"---", $"---", .. After.Select(_ => (FormattableString)$"---")]);
        foreach (var random in new[] { false, true })
        {
            var sums = Seeds.Each(seeds, s => Kinds.Select(kind =>
            {
                var world = new World(sample, s, new(random, Doubled: (kind, Changed)));
                return Ways.Select(w => DepotYear.Run(world, new ByBookings(world, Service), w.Rules, Changed + After[^1].Last)).ToList();
            }).ToList());

            foreach (var (w, way) in Ways.Index())
            {
                var years = sums.SelectMany(s => s).Select(s => s[w]).ToList();
                Told.Row([$"{(random ? "kinds at random" : "a main kind")}", $"{way.Name}",
                    .. After.Select(a => (FormattableString)$"{Missed(years, a.First, a.Last):0.0}")]);
            }
        }
    }

    /// <summary>Of all that was asked on those days, the first of the new use being 1.</summary>
    private static double Missed(List<Outcome> years, int first, int last)
    {
        var days = years.SelectMany(y => y.ByDay.Skip(Changed + first - 1).Take(last - first + 1)).ToList();
        return 1000.0 * days.Sum(d => d.Missed) / days.Sum(d => d.Asked);
    }

    private static void Alarms(Setup sample, int seeds)
    {
        Told.Line($"");
        Told.Line($"### Changes noticed where there are none, {World.Days} days, {sample.Rates.Count} pairs ({seeds} seeds)");
        Told.Line($"");
        Told.Row($"a van's day", $"the depot always has enough", $"deliveries in time", $"six scarce weeks");
        Told.Row($"---", $"---", $"---", $"---");
        foreach (var random in new[] { false, true })
        {
            var alarms = Seeds.Each(seeds, s =>
            {
                var world = new World(sample, s, new(random));
                return new[] { Rules.Learned with { Unlimited = true }, Rules.Learned with { Scarce = false }, Rules.Learned }
                    .Select(rules => (double)DepotYear.Run(world, new ByBookings(world, Service), rules).Alarms.All).ToList();
            });
            var cells = Enumerable.Range(0, 3).Select(w => (FormattableString)$"{Seeds.Spread(alarms.Select(a => a[w]), "0.0")}");
            Told.Row([$"{(random ? "kinds at random" : "a main kind")}", .. cells]);
        }
    }
}
