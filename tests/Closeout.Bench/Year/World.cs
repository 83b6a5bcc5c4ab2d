using Closeout.Facts;

namespace Closeout.Bench.Year;

/// <summary>One visit: its kind, and what it asks of each item.</summary>
public sealed record Visit(int Kind, int[] Asked);

/// <summary>
/// A year as it comes, the same for every policy: bookings and what their visits ask. Items, cartons, lead times and
/// planning rates are the sample day's; what visits of this world truly use lies about 30 % beside the planning rate.
/// </summary>
public sealed class World
{
    public const int Vans = 12;

    /// <summary>Working days before anything is counted: they fill the 60 days of history.</summary>
    public const int WarmUp = 60;
    public const int Days = WarmUp + 250;

    private static readonly (string Kind, double Weight)[] MainKinds =
        [("direct-install", 0.4), ("multifamily", 0.2), ("weatherization", 0.2), ("alarm-swap", 0.2)];

    private readonly double[,] truth;
    private readonly double[,] lumps;

    /// <param name="mixed">False: a van's day has a main kind, as in the sample. True: every visit's kind is drawn by itself.</param>
    public World(Setup sample, int seed, bool mixed)
    {
        var draw = new Draw(seed);
        Items = sample.Items;
        Kinds = [.. sample.Rates.Select(r => r.Kind).Distinct()];
        (Rate, Weight) = (new double[Kinds.Count, Items.Count], new double[Kinds.Count, Items.Count]);
        (truth, lumps) = (new double[Kinds.Count, Items.Count], new double[Kinds.Count, Items.Count]);
        foreach (var rate in sample.Rates)
        {
            var (k, i) = (Kinds.IndexOf(rate.Kind), Items.Index().First(x => x.Item.Code == rate.Item).Index);
            (Rate[k, i], Weight[k, i]) = (rate.UnitsPerVisit, rate.WeightVisits);
            truth[k, i] = rate.UnitsPerVisit * Math.Exp(0.3 * draw.Normal() - 0.045);
            lumps[k, i] = 1.5 + 1.5 * draw.Uniform();
        }

        for (var d = 0; d < Days; d++)
        {
            for (var v = 0; v < Vans; v++)
            {
                Booked[d, v] = mixed ? Mixed(draw) : OfMainKind(draw);
                Visits[d, v] = [.. Booked[d, v].SelectMany((n, k) => Enumerable.Range(0, n).Select(_ => Happen(draw, k)))];
            }
        }

        // Six weeks of the counted fifty: what is due then comes a week late, and half of it.
        for (var week = 0; week < 6; week++)
        {
            ScarceWeeks.Add(draw.Whole(WarmUp / 5, Days / 5 - 1));
        }
    }

    public IReadOnlyList<Item> Items { get; }

    public List<Code<VisitKind>> Kinds { get; }

    /// <summary>The planning rates that the depot believes, and their weights.</summary>
    public double[,] Rate { get; }

    public double[,] Weight { get; }

    /// <summary>Visits of each kind, by day and van; every van has a visit every day.</summary>
    public int[,][] Booked { get; } = new int[Days, Vans][];

    public Visit[,][] Visits { get; } = new Visit[Days, Vans][];

    public HashSet<int> ScarceWeeks { get; } = [];

    /// <summary>What an item's counted van-days asked, the least first.</summary>
    public int[] VanDays(int item) =>
        [.. from d in Enumerable.Range(WarmUp, Days - WarmUp) from v in Enumerable.Range(0, Vans) let asked = Visits[d, v].Sum(x => x.Asked[item]) orderby asked select asked];

    public static DateOnly Date(int day) => new DateOnly(2026, 1, 5).AddDays(day / 5 * 7 + day % 5);

    private Visit Happen(Draw draw, int kind) =>
        new(kind, [.. Enumerable.Range(0, Items.Count).Select(i => draw.Lumpy(truth[kind, i], Math.Max(1.5, lumps[kind, i])))]);

    /// <summary>One to four visits of a main kind; on three days in ten one to three of another; on every second day a recheck.</summary>
    private int[] OfMainKind(Draw draw)
    {
        var booked = new int[Kinds.Count];
        booked[Main(draw)] += draw.Whole(1, 4);
        if (draw.Uniform() < 0.3)
        {
            booked[Main(draw)] += draw.Whole(1, 3);
        }

        booked[Index("recheck")] += draw.Whole(0, 1);
        return booked;
    }

    /// <summary>Two to five visits, each of any main kind; on every second day a recheck.</summary>
    private int[] Mixed(Draw draw)
    {
        var booked = new int[Kinds.Count];
        for (var visits = draw.Whole(2, 5); visits > 0; visits--)
        {
            booked[Main(draw)]++;
        }

        booked[Index("recheck")] += draw.Whole(0, 1);
        return booked;
    }

    private int Main(Draw draw) => Index(MainKinds[draw.Of([.. MainKinds.Select(m => m.Weight)])].Kind);

    private int Index(string kind) => Kinds.IndexOf(new(kind));
}
