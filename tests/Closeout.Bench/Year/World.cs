using Closeout.Facts;

namespace Closeout.Bench.Year;

/// <summary>One visit: its kind, and what it asks of each item.</summary>
public sealed record Visit(int Kind, int[] Asked);

/// <summary>What sort of a year it is.</summary>
/// <param name="Random">False: a van's day has a main kind, as in the sample. True: every visit's kind is drawn by itself.</param>
/// <param name="NoShows">q, the chance that a booked visit does not happen.</param>
/// <param name="Added">Visits that nobody booked, on average on a van's day (Poisson), of kinds as usual.</param>
/// <param name="Doubled">A kind whose use of every item doubles, and the first day of it; null: none.</param>
public sealed record Climate(bool Random, double NoShows = 0, double Added = 0, (string Kind, int Day)? Doubled = null);

/// <summary>
/// A year as it comes, the same for every policy: bookings, the visits that happen, and what they ask. Items, cartons, lead times and
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

    private static readonly double[] Weights = [.. MainKinds.Select(m => m.Weight)];

    private readonly double[,] lumps;
    private readonly int[] main;
    private readonly int recheck;
    private readonly Climate climate;
    private readonly Lazy<int[]>[] vanDays;

    public World(Setup sample, int seed, Climate climate)
    {
        this.climate = climate;
        var (draw, fate) = (new Draw(seed), new Draw(seed + 1_000_000));
        (Items, Depot) = (sample.Items, sample.Depot);
        Kinds = [.. sample.Rates.Select(r => r.Kind).Distinct()];
        (main, recheck) = ([.. MainKinds.Select(m => Kinds.IndexOf(new(m.Kind)))], Kinds.IndexOf(new("recheck")));
        (Rate, Weight) = (new double[Kinds.Count, Items.Count], new double[Kinds.Count, Items.Count]);
        (Truth, lumps) = (new double[Kinds.Count, Items.Count], new double[Kinds.Count, Items.Count]);
        vanDays = [.. Items.Select((_, i) => new Lazy<int[]>(() => SortedVanDays(i)))];
        foreach (var rate in sample.Rates)
        {
            var (k, i) = (Kinds.IndexOf(rate.Kind), Items.Index().First(x => x.Item.Code == rate.Item).Index);
            (Rate[k, i], Weight[k, i]) = (rate.UnitsPerVisit, rate.WeightVisits);
            Truth[k, i] = rate.UnitsPerVisit * Math.Exp(0.3 * draw.Normal() - 0.045);
            lumps[k, i] = 1.5 + 1.5 * draw.Uniform();
        }

        for (var d = 0; d < Days; d++)
        {
            for (var v = 0; v < Vans; v++)
            {
                Booked[d, v] = climate.Random ? EachByItself(draw) : OfMainKind(draw);
                Visits[d, v] = [.. Made(Booked[d, v], fate).Select(k => Happen(draw, k, d))];
            }
        }

        // Six weeks of the counted fifty: what is due then comes a week late, and half of it.
        for (var week = 0; week < 6; week++)
            ScarceWeeks.Add(draw.Whole(WarmUp / 5, Days / 5 - 1));
    }

    public IReadOnlyList<Item> Items { get; }

    /// <summary>The sample's settings.</summary>
    public DepotSettings Depot { get; }

    public List<Code<VisitKind>> Kinds { get; }

    /// <summary>The planning rates that the depot believes, and their weights.</summary>
    public double[,] Rate { get; }

    public double[,] Weight { get; }

    /// <summary>Units that a visit asks on average, before anything doubles.</summary>
    public double[,] Truth { get; }

    /// <summary>Visits of each kind, by day and van; every van has a visit booked every day.</summary>
    public int[,][] Booked { get; } = new int[Days, Vans][];

    /// <summary>Those that happened.</summary>
    public Visit[,][] Visits { get; } = new Visit[Days, Vans][];

    public HashSet<int> ScarceWeeks { get; } = [];

    /// <summary>What an item's counted van-days asked, the least first.</summary>
    public int[] VanDays(int item) => vanDays[item].Value;

    /// <summary>The variance of what a visit asks.</summary>
    public double TrueVariance(int kind, int item) => Truth[kind, item] * lumps[kind, item];

    public static DateOnly Date(int day) => new DateOnly(2026, 1, 5).AddDays(day / 5 * 7 + day % 5);

    private int[] SortedVanDays(int item) =>
    [
        .. from d in Enumerable.Range(WarmUp, Days - WarmUp)
           from v in Enumerable.Range(0, Vans)
           let asked = Visits[d, v].Sum(x => x.Asked[item])
           orderby asked
           select asked,
    ];

    /// <summary>The kinds of the visits that happen: those booked, some of them not, and added ones.</summary>
    private IEnumerable<int> Made(int[] booked, Draw fate)
    {
        var kept = booked.SelectMany((n, k) => Enumerable.Repeat(k, n)).Where(_ => fate.Uniform() >= climate.NoShows).ToList();
        for (var added = fate.Poisson(climate.Added); added > 0; added--)
            kept.Add(Main(fate));

        return kept;
    }

    private Visit Happen(Draw draw, int kind, int day)
    {
        var times = climate.Doubled is { } d && Kinds[kind].Text == d.Kind && day >= d.Day ? 2 : 1;
        return new(
            kind, [.. Items.Select((_, i) => draw.Lumpy(times * Truth[kind, i], Math.Max(1.5, lumps[kind, i])))]);
    }

    /// <summary>One to four visits of a main kind; on three days in ten one to three of another; on every second day a recheck.</summary>
    private int[] OfMainKind(Draw draw)
    {
        var booked = new int[Kinds.Count];
        booked[Main(draw)] += draw.Whole(1, 4);
        if (draw.Uniform() < 0.3)
            booked[Main(draw)] += draw.Whole(1, 3);

        booked[recheck] += draw.Whole(0, 1);
        return booked;
    }

    /// <summary>Two to five visits, each of any main kind; on every second day a recheck.</summary>
    private int[] EachByItself(Draw draw)
    {
        var booked = new int[Kinds.Count];
        for (var visits = draw.Whole(2, 5); visits > 0; visits--)
            booked[Main(draw)]++;

        booked[recheck] += draw.Whole(0, 1);
        return booked;
    }

    private int Main(Draw draw) => main[draw.Of(Weights)];
}
