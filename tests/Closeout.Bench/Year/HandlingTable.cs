using Closeout.Facts;

namespace Closeout.Bench.Year;

/// <summary>What each way costs in carrying, per van and evening, and what it misses.</summary>
public static class HandlingTable
{
    private const double Service = 0.98;
    private const double Level = 0.98;

    private static readonly (string Name, Rules Rules)[] Ways =
    [
        ("today", Rules.Today),
        ("learned, band 0, no moves", Rules.Learned with { Band = 0, Moves = false }),
        ("learned, band 1, no moves", Rules.Learned with { Moves = false }),
        ("learned, band 1, moves", Rules.Learned),
        ("learned, order_service 0.995", Rules.Learned with { OrderService = 0.995 }),
        ("learned, leftovers stay aboard", Rules.Learned with { Leftovers = Leftovers.Stay }),
        ("learned, all loose leftovers to the bin", Rules.Learned with { Leftovers = Leftovers.AllToBin }),
        ("learned, vans rounded up to whole cartons", Rules.Learned with { RoundsUp = true }),
    ];

    public static void Run(Setup sample, int seeds)
    {
        Told.Line($"");
        Told.Line($"### Handling per van and evening, ours at {Service} ({seeds} seeds)");
        Told.Line($"");
        Told.Row(
            $"a van's day", $"", $"lines touched", $"cartons", $"loose units", $"returned", $"again within three evenings",
            $"missed per thousand", $"aboard");
        Told.Row($"---", $"---", $"---", $"---", $"---", $"---", $"---", $"---", $"---");
        foreach (var random in new[] { false, true })
        {
            var years = Seeds.Each(seeds, s =>
            {
                var world = new World(sample, s, new(random));
                return Ways.Select(w => DepotYear.Run(world, new ByBookings(world, Service), w.Rules))
                    .Append(DepotYear.Run(world, new FixedLevels(world, Level), Rules.Today)).ToList();
            });
            foreach (var (w, name) in Ways.Select(w => w.Name).Append($"fixed levels at {Level:0.00}, today").Index())
            {
                double Mean(Func<Outcome, double> of) => years.Average(y => of(y[w]));
                Told.Row(
                    $"{(random ? "kinds at random" : "a main kind")}", $"{name}", $"{Mean(o => o.Handled.Lines):0.00}",
                    $"{Mean(o => o.Handled.Cartons):0.00}", $"{Mean(o => o.Handled.Loose):0.0}", $"{Mean(o => o.Handled.Returned):0.0}",
                    $"{Mean(o => o.Handled.Again):0.0}", $"{Mean(o => o.MissedPerThousand):0.0}", $"{Mean(o => o.Aboard):0}");
            }
        }
    }
}
