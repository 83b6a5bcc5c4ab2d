using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Tests;

/// <summary>A depot small enough to reckon by hand: three vans, three items, three kit pieces, four people.</summary>
public static class Tiny
{
    /// <summary>2026-W47. T1 works until Friday, T2 until Thursday, T3 until Saturday.</summary>
    public static readonly DateOnly Monday = new(2026, 11, 16);
    public static readonly DateOnly Wednesday = Monday.AddDays(2);
    public static readonly DateOnly Friday = Monday.AddDays(4);
    public static readonly DateTimeOffset FiveOClock = new(2026, 11, 18, 17, 0, 0, TimeSpan.FromHours(-5));

    public static readonly Code<Van> B1 = new("B1");
    public static readonly Code<Van> B2 = new("B2");
    public static readonly Code<Van> B3 = new("B3");
    public static readonly Code<Technician> T1 = new("T1");
    public static readonly Code<Technician> T2 = new("T2");
    public static readonly Code<Technician> T3 = new("T3");
    public static readonly Code<Technician> Lead = new("L1");

    public static readonly Item Lamp = new(
        new("LAMP"), "LED lamp A19 2700 K", 1, 10, 0.2, new CartonBox(20, 10, 10, "32ECT-C"), 10, 40, 5, 5, 1, "rear left");

    public static readonly Item Shower = new(
        new("SHOWER"), "showerhead 1.5 gpm", 2, 4, 0.5, new CartonBox(12, 9, 6, "44ECT-C"), 4, 12, 10, 5, 2, "rear right");

    public static readonly Item Wrap = new(
        new("WRAP"), "pipe wrap, one piece", 3, 1, 0.3, new CartonBox(36, 4, 4, "32ECT-B"), 2, 6, 5, 5, 1, "rear left");

    public static readonly KitPiece Cones = new(new("CONES"), "traffic cones", 3, false, false);
    public static readonly KitPiece Extinguisher = new(new("EXT"), "fire extinguisher", 1, true, true);
    public static readonly KitPiece FirstAid = new(new("AID"), "first aid kit", 1, false, true);

    private static readonly DayOfWeek[] Week =
        [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday, DayOfWeek.Saturday];

    public static readonly DepotSettings Settings = new(
        "Tiny Row", new TimeOnly(16, 30), false, 0.98, 0.95, 0.90, 8, 80, DepotSettings.DefaultCardboardLbPerCuYd, null, null, []);

    public static readonly Setup Setup = new(
        Settings,
        [Lamp, Shower, Wrap],
        [Van("B1", 1, "Avocet", 1000), Van("B2", 2, "Bittern", 2000), Van("B3", 3, "Curlew", 3000)],
        [],
        [Cones, Extinguisher, FirstAid],
        [],
        [
            new(T1, "Tess Invented", false, B1, Week[..5]),
            new(T2, "Ugo Invented", false, B2, Week[..4]),
            new(T3, "Vera Invented", false, B3, Week[1..]),
            new(Lead, "Lee Invented", true, null, Week[..5]),
        ],
        [],
        []);

    /// <summary>A van with its service far off: every 5000 mi and 6 months, last at its present reading on 2026-10-01.</summary>
    public static Van Van(string code, int bay, string name, decimal odometerMi) =>
        new(new(code), bay, name, 2000, "petrol", odometerMi, 5000, 6, odometerMi, new DateOnly(2026, 10, 1));

    /// <summary>A page just opened, on Wednesday unless said.</summary>
    /// <param name="stock">As <see cref="TinyStock.Read"/> takes it.</param>
    /// <param name="carried">What a van brings from earlier evenings; nothing unless said.</param>
    public static Depot Opened(string stock = "", DateOnly? date = null, Setup? setup = null, Func<VanCarried, VanCarried>? carried = null, YardCarried? yard = null)
    {
        var with = setup ?? Setup;
        var vans = with.Vans.Select(VanCarried.New).Select(carried ?? (v => v)).ToList();
        var incidents = vans.SelectMany(v => v.Incidents).Select(i => i.Number).DefaultIfEmpty().Max();
        var page = new PageOpened(
            date ?? Wednesday, false, new Carried(with, TinyStock.Read(with, stock), vans, [], [], [], [], [], [], [], [], [], yard ?? YardCarried.Empty, incidents, [], []));
        return Depot.Open(new Recorded(1, FiveOClock, page));
    }
}
