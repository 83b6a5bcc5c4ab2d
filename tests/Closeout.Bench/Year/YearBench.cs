using System.Globalization;
using Closeout.Bench.Plan;
using Closeout.Facts;

namespace Closeout.Bench.Year;

/// <summary>
/// A year of twelve vans under our method and under fixed levels, over the same visits and deliveries. Both are swept over
/// service levels; between the points of ours it is read off where it has as many units aboard, or misses as many, as the
/// fixed levels have or miss.
/// </summary>
public static class YearBench
{
    private static readonly double[] Ours = [0.7, 0.8, 0.9, 0.95, 0.98, 0.99, 0.995, 0.998, 0.999, 0.9995, 0.9999, 0.99999];
    private static readonly double[] Fixed = [0.90, 0.95, 0.98, 0.99];

    private sealed record Point(double Missed, double Aboard, double Ratio, double Saving);

    public static void Run()
    {
        var sample = BigPlan.Read(TempFolder.InTree("sample-day")).Setup;
        Told.Line($"## A year: {World.Vans} vans, {sample.Items.Count} items, {World.Days - World.WarmUp} working days counted");
        Table("days of one main kind, surplus to the bin, exact units", sample, 10, mixed: false, new(Leftovers.SurplusToBin, false));
        Table("the same, leftovers stay aboard", sample, 3, mixed: false, new(Leftovers.Stay, false));
        Table("the same, all loose leftovers to the bin", sample, 3, mixed: false, new(Leftovers.AllToBin, false));
        Table("the same, vans may be rounded up to whole cartons", sample, 3, mixed: false, new(Leftovers.SurplusToBin, true));
        Table("the same, every delivery whole and in time", sample, 3, mixed: false, new(Leftovers.SurplusToBin, false, Scarce: false));
        Table("days of mixed kinds, surplus to the bin, exact units", sample, 10, mixed: true, new(Leftovers.SurplusToBin, false));
    }

    private static void Table(string name, Setup sample, int seeds, bool mixed, Rules rules)
    {
        var points = new Point[seeds][];
        var curves = new Outcome[seeds][];
        Parallel.For(0, seeds, s =>
        {
            var world = new World(sample, 1 + s, mixed);
            curves[s] = [.. Ours.Select(p => DepotYear.Run(world, new ByBookings(world, p), rules))];
            var curve = new Curve(curves[s]);
            points[s] = [.. Fixed.Select(p => DepotYear.Run(world, new FixedLevels(world, p), rules)).Select(o => new Point(
                o.MissedPerThousand, o.Aboard, curve.MissedWith(o.Aboard) / o.MissedPerThousand, 1 - curve.AboardFor(o.MissedPerThousand) / o.Aboard))];
        });

        Told.Line($"");
        Told.Line($"### {name} ({seeds} seeds)");
        Told.Row($"fixed levels at", $"they miss per thousand", $"they have aboard a van", $"our misses / theirs, equal units aboard", $"units aboard that ours saves, equal misses");
        Told.Row($"---", $"---", $"---", $"---", $"---");
        for (var p = 0; p < Fixed.Length; p++)
        {
            var of = points.Select(x => x[p]).ToList();
            Told.Row($"{Fixed[p]}", $"{Spread(of, x => x.Missed, "0.0")}", $"{Spread(of, x => x.Aboard, "0")}", $"{Spread(of, x => x.Ratio, "0.00")}", $"{Spread(of, x => x.Saving, "0.0 %")}");
        }

        Told.Line($"");
        Told.Row($"ours at", $"misses per thousand", $"units aboard a van");
        Told.Row($"---", $"---", $"---");
        for (var p = 0; p < Ours.Length; p++)
        {
            Told.Row($"{Ours[p]}", $"{curves.Average(c => c[p].MissedPerThousand):0.0}", $"{curves.Average(c => c[p].Aboard):0}");
        }
    }

    /// <summary>Mean, standard deviation, and from least to most.</summary>
    private static string Spread(List<Point> points, Func<Point, double> of, string format)
    {
        var values = points.Select(of).ToList();
        var mean = values.Average();
        var deviation = Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Count - 1));
        string Text(double v) => v.ToString(format, CultureInfo.InvariantCulture);
        return $"{Text(mean)} ± {Text(deviation)} ({Text(values.Min())} to {Text(values.Max())})";
    }
}
