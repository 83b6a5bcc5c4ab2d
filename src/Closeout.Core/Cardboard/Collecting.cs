using System.Globalization;

namespace Closeout.Cardboard;

/// <summary>The limits of a collecting box.</summary>
/// <remarks>
/// Universal waste may be kept for one year from the date on which the first of it was generated or received: 40 CFR
/// 273.15(a) for small handlers, 273.35(a) for large ones. The date may be shown by marking the box with the earliest date
/// of anything in it, 273.15(c). State rules and the site's own procedure come first. Other streams have no limit.
/// </remarks>
public static class Collecting
{
    /// <summary>From so many days before the limit on, the wall says so. Common practice: a pickup takes weeks to arrange.</summary>
    public const int WarnDays = 60;

    /// <summary>The streams that the depot has switched on, in their fixed order.</summary>
    public static IEnumerable<WasteStream> On(DepotSettings depot) => WasteStream.All.Where(s => depot.Streams.Contains(s.Code));

    /// <summary>
    /// The last day on which the box may be there: the same date a year later, of a 29 February the 28th. Null: no limit.
    /// </summary>
    public static DateOnly? ShipBy(CollectingBox box) => WasteStream.Of(box.Stream).IsUniversalWaste ? box.StartedOn.AddYears(1) : null;

    /// <summary>What to say of it on that date; null: nothing yet.</summary>
    public static string? Note(CollectingBox box, DateOnly today) => ShipBy(box) is not { } limit
        ? null
        : limit < today
            ? T($"{Name(box)}, begun {box.StartedOn:yyyy-MM-dd}, should have gone by {limit:yyyy-MM-dd}: ask the recycler at once")
            : limit <= today.AddDays(WarnDays)
                ? T($"{Name(box)}, begun {box.StartedOn:yyyy-MM-dd}, must go by {limit:yyyy-MM-dd}")
                : null;

    /// <summary>An amount in the stream's unit.</summary>
    public static string Amount(WasteStream stream, decimal amount, UnitSystem units) => stream.IsWeighed
        ? units.Weight((double)amount)
        : amount.ToString("0.##", CultureInfo.InvariantCulture) + (amount == 1 ? T(" piece") : T(" pieces"));

    /// <summary>All notes of the depot's boxes.</summary>
    public static IEnumerable<string> Notes(Depot depot) => depot.Yard.Collecting.Values
        .OrderBy(b => b.StartedOn)
        .ThenBy(b => b.Stream)
        .Select(b => Note(b, depot.Date))
        .OfType<string>();

    private static string Name(CollectingBox box) => T($"box of {WasteStream.Of(box.Stream).Description.ToLowerInvariant()}");
}
