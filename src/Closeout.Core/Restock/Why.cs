using System.Globalization;

namespace Closeout.Restock;

/// <summary>Why a line of the plan says what it says, in words of a stock keeper, each a heading and a sentence.</summary>
public static class Why
{
    /// <param name="weight">Of the line's van.</param>
    public static IEnumerable<(string Heading, string Sentence)> Of(Setup setup, RestockLine l, VanWeight weight)
    {
        yield return (T("Booked"), Booked(l));
        yield return (T("Demand"), Demand(l));
        yield return (T("Promise"), l.Demand.Spread == Spread.None
            ? T($"no demand is booked, so only the van's low counts (priority {l.Item.Priority})")
            : T($"enough in {Percent(setup.Depot.Service(l.Item.Priority))} of such days (priority {l.Item.Priority}): that takes {l.Q}"));
        yield return (T("Limits"), Limits(l));
        foreach (var change in l.Overrides)
            yield return (T("Lead"), Change(change.Change));

        if (l.Cut is { } cut)
            yield return (T("Payload"), Payload(setup.Units, l, cut, weight));

        yield return (T("Aboard"),
            T($"{l.Aboard}{(l.Provisional ? T(" on record, not counted yet: provisional") : "")}, so {l.Need} "
                + $"{(l.Need == 1 ? T("is") : T("are"))} needed"));
        yield return (T("Given"), Given(l));
        if (l.Short > 0)
            yield return (T("Short"), T($"{l.Short}: the depot has no more; each unit went where it was most likely to be missed"));

        yield return (T("Missed"), T($"chance that the day needs more than the {l.Aboard + l.Units} then aboard: {Percent(l.MissChance)}"));
    }

    /// <summary>
    /// The chances of the demand as bars, from 0 to beyond what the van may carry, and where low, target and high lie.
    /// Each: the units of the bar, its chance, and its marks.
    /// </summary>
    /// <param name="most">Bars at the most, at least 2.</param>
    public static IReadOnlyList<(int From, int To, double Chance, string Marks)> Bars(RestockLine l, int most)
    {
        var end = Math.Max(Math.Max(l.High, l.Target.Units), l.Demand.Quantile(0.999)) + 1;
        var width = end / most + 1;
        var bars = new List<(int, int, double, string)>();
        for (var from = 0; from <= end; from += width)
        {
            var to = from + width - 1;
            var marks = new[] { (l.Low, T("low")), (l.Target.Units, T("target")), (l.High, T("high")),
                (l.Aboard, T("aboard")) }.Where(m => m.Item1 >= from && m.Item1 <= to).Select(m => m.Item2);
            bars.Add((from, to, l.Demand.AtMost(to) - l.Demand.AtMost(from - 1), string.Join(" ", marks)));
        }

        return bars;
    }

    public static string Percent(double chance) => chance is > 0 and < 0.0005
        ? T("below 0.1 %")
        : (100 * chance).ToString(chance is > 0.99 and < 1 ? "0.00" : "0.#", CultureInfo.InvariantCulture) + " %";

    private static string Booked(RestockLine l) => l.Booked.Visits.Count == 0
        ? T("no visit for this van")
        : string.Join(", ",
            l.Booked.Visits.Where(v => v.Visits > 0).Select(v =>
                T($"{v.Visits} {v.Kind} at {(v.Use.Weight > 0 ? Number(v.Use.Mean) : T("no planning rate"))} each")));

    private static string Demand(RestockLine l) => l.Demand.Spread switch
    {
        Spread.None => l.Booked.HasUnknownRate ? T("no planning rate and no visit on record, so none is foreseen") : T("none"),
        Spread.Poisson =>
            T($"about {Number(l.Demand.Mean)}, give or take {Number(Math.Sqrt(l.Demand.Mean))} (Poisson: mean {Number(l.Demand.Mean)})"),
        Spread.NegativeBinomial =>
            T(
                $"about {Number(l.Demand.Mean)}, give or take {Number(Math.Sqrt(l.Demand.Variance))}: lumpy (negative binomial: mean "
                    + $"{Number(l.Demand.Mean)}, variance {Number(l.Demand.Variance)})"),
        _ => throw new InvalidOperationException($"no such spread: {l.Demand.Spread}"),
    };

    private static string Limits(RestockLine l) =>
        T($"the van carries {l.Low} to {l.High}; target {l.Target.Units} ({Target.Words(l.Target.Basis)})")
        + (l.AboveHigh > 0 ? T($", {l.AboveHigh} less than the promise takes: plan a top-up at mid-day") : "");

    /// <summary>Both weights, whatever the reason is: all that was planned, what is aboard already, or what was loaded.</summary>
    private static string Payload(UnitSystem units, RestockLine l, PayloadCut cut, VanWeight weight)
    {
        var allowance = weight.AllowanceLb ?? throw new InvalidOperationException($"{l.Van.Code} was cut for weight and states no payload");
        var stock = weight.AboardLb > allowance + Restock.Payload.SameLb
            ? T($"the stock aboard weighs {units.Weight(weight.AboardLb)} already")
            : weight.UncutLb > allowance + Restock.Payload.SameLb
                ? T($"all that was planned would make {units.Weight(weight.UncutLb)} of stock")
            : T($"the stock weighs {units.Weight(weight.LoadedLb)} with what is planned");
        return T(
            $"{l.CutUnits} {(l.CutUnits == 1 ? T("is") : T("are"))} left out: {stock}, and {units.Weight(allowance)} is what the payload "
            + $"leaves for it ({units.Weight(weight.Van.PayloadLb)} less crew and kit {units.Weight(weight.CrewAndKitLb)})")
            + (l.Target != cut.Target
                ? T($"; so target {cut.Target.Units} ({Target.Words(cut.Target.Basis)}) is cut to {l.Target.Units}")
                : T("; so no carton is rounded up"));
    }

    private static string Given(RestockLine l)
    {
        var parts = new[]
        {
            l.Sealed > 0 ? T($"{l.Sealed} sealed {(l.Sealed == 1 ? T("carton") : T("cartons"))} of {l.Item.UnitsPerCarton}") : null,
            l.FromBin > 0 ? T($"{l.FromBin} loose from the bin") : null,
            l.FromOpened > 0 ? T($"{l.FromOpened} loose from a carton opened at the depot") : null,
        }.Where(p => p is not null).ToList();
        var more = l.Units - (l.Need - l.Short);
        return (parts.Count == 0
            ? T("nothing")
            : string.Join(", ", parts)) + (more > 0
            ? T($"; {more} more than needed, so that no carton is opened or more leftovers go out")
            : "");
    }

    private static string Change(PlanOverridden c) => c.Kind switch
    {
        OverrideKind.Target => T($"{c.Lead} set the target to {c.Units}: {c.Reason}"),
        OverrideKind.Extra => T($"{c.Lead} added {c.Units}: {c.Reason}"),
        OverrideKind.Exclude => T($"{c.Lead} excluded the van: {c.Reason}"),
        _ => throw new InvalidOperationException($"no such change: {c.Kind}"),
    };

    private static string Number(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
