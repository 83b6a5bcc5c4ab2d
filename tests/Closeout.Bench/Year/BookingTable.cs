using Closeout.Facts;

namespace Closeout.Bench.Year;

/// <summary>Where bookings are not kept exactly.</summary>
public static class BookingTable
{
    /// <summary>The fixed level beside which misses are told.</summary>
    private const double Level = 0.99;

    private static readonly (double NoShows, double Added)[] Worlds =
        [(0, 0), (0.10, 0), (0.15, 0), (0, 0.2), (0, 0.4), (0.10, 0.2), (0.15, 0.4)];

    private static readonly Rules[] Ways = [Rules.Today, Rules.Learned];

    /// <param name="seeds">Of the row with an aim: 10 % no-shows and 0.2 added.</param>
    /// <param name="few">Of the others.</param>
    public static void Run(Setup sample, int seeds, int few)
    {
        Told.Line($"");
        Told.Line($"### Bookings not kept: missed, ours / theirs, equal units aboard, fixed at {Level}");
        Told.Line($"");
        Told.Row($"a van's day", $"no-shows", $"added", $"seeds", $"today", $"learned");
        Told.Row($"---", $"---", $"---", $"---", $"---", $"---");
        foreach (var random in new[] { false, true })
        {
            foreach (var (noShows, added) in Worlds)
            {
                var n = (noShows, added) == (0.10, 0.2) ? seeds : few;
                var ratios = Seeds.Each(n, s =>
                {
                    var world = new World(sample, s, new(random, noShows, added));
                    return Ways.Select(rules => Comparison.Of(world, rules, [Level]).EqualAboard[0]).ToList();
                });
                var cells = Ways.Select((_, w) => (FormattableString)$"{Seeds.Spread(ratios.Select(r => r[w]), "0.00")}");
                Told.Row([$"{(random ? "kinds at random" : "a main kind")}", $"{noShows:0 %}", $"{added}", $"{n}", .. cells]);
            }
        }
    }
}
