using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>What stands above a form of the yard, or of a lead's desk at a van.</summary>
public static class YardText
{
    public static IEnumerable<string> About(Depot depot, DeskScreen s)
    {
        var van = s.Van is { } code ? depot.Setup.Van(code) : null;
        var name = van is null ? "the depot" : $"{van.Code} {van.Name}";
        return s.Task switch
        {
            DeskTask.Lift =>
            [
                Readiness.Of(depot, van!).Holds is { Count: > 0 } holds ? $"{name} is held: {string.Join("; ", holds)}" : $"{name} is not held.",
                Licensed,
            ],
            DeskTask.Hold => [$"{name} will not go out until a lead lifts it.", "Say why, so that whoever reads it in the morning understands."],
            DeskTask.Close =>
            [
                .. Incidents.Open(depot, van!.Code).Select(i => $"{Incidents.Words(i)}, since {i.Since:yyyy-MM-dd}; {Incidents.ToldWords(i)}").DefaultIfEmpty($"{name} has no open incident."),
                Licensed,
            ],
            DeskTask.WriteOff =>
            [
                LostBoxes.Words(depot, YardForms.Missing(depot, s.Van)) is { } words ? $"{name}: {words}: {string.Join(", ", YardForms.Missing(depot, s.Van).Select(m => $"{m.Item} {m.Boxes}"))}" : $"No box of {name} is missing.",
                "A box written off is no longer looked for. It counts as expected and not as flattened, so the totals stay true.",
            ],
            DeskTask.DepotBoxes =>
            [
                CardboardTotals.DepotRows(depot).ToList() is { Count: > 0 } rows
                    ? "Opened here tonight: " + string.Join(", ", rows.Select(r => $"{r.Item} {r.Flattened} of {r.Expected} flattened"))
                    : "No carton was opened here tonight; boxes of earlier evenings that turn up can be counted all the same.",
                "Knife away from you, blade in when done.",
            ],
            DeskTask.Pickup =>
            [
                FormattableString.Invariant($"The book has {depot.Setup.Units.Weight(Container.LoadedLb(depot))} in it, {Container.FullPercent(depot):0} % of the container. From now on it counts from empty."),
                $"With both numbers below, the weighed load says how dense your cardboard lies. Weights in {depot.Setup.Units.WeightUnit}.",
                "Keep clear while the truck reverses and lifts.",
            ],
            DeskTask.Ship =>
            [
                .. depot.Yard.Collecting.Values.OrderBy(b => b.StartedOn).Select(b => $"{b.Stream}: {Collecting.Amount(WasteStream.Of(b.Stream), b.Amount, depot.Setup.Units)} since {b.StartedOn:yyyy-MM-dd}").DefaultIfEmpty("No collecting box has anything in it."),
                "Universal waste goes only to a handler or recycler that may take it: 40 CFR 273.18, state rules, the site's own procedure.",
            ],
            _ => throw new InvalidOperationException($"nothing to say of {s.Task}"),
        };
    }

    private const string Licensed =
        "A damaged van, or one without its safety kit, goes out only when somebody licensed to say so said so, by local rules and the maker's instructions. The book records that you settled it, and why; it does not say that the van is safe.";
}
