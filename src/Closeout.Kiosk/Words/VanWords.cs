using Closeout.Vans;

namespace Closeout.Words;

/// <summary>All there is to know of one van, a word and a sentence each: for the screen and for the morning sheet.</summary>
public static class VanWords
{
    public static IEnumerable<(string Word, string Sentence)> Of(Tonight t, Van van)
    {
        var (depot, plan, state) = (t.Depot, t.Plan, t.Van(van.Code));
        yield return (T("Morning"), Readiness.Words(state.Morning));
        foreach (var hold in Readiness.Standing(depot, van.Code))
            yield return (T("HELD"), T($"{hold.Said}, since {hold.Since:yyyy-MM-dd}"));

        yield return (T("Evening"), WallWords.Where(depot, state, null) + (state.With is { } with ? T($", with {with}") : ""));
        foreach (var incident in Incidents.Open(depot, van.Code))
        {
            yield return (T("Incident"),
                T($"{Incidents.Words(incident)}, since {incident.Since:yyyy-MM-dd}; "
                    + $"{Incidents.ToldWords(incident)}{(incident.Lifted ? T("; hold lifted") : "")}"));
        }

        foreach (var note in state.Notes.Except(
            Incidents.Open(depot, van.Code)
                .SelectMany(i => new[] { Incidents.Words(i), T($"{Incidents.Words(i)} since {i.Since:yyyy-MM-dd}") })))
        {
            yield return (T("Watch"), note);
        }

        foreach (var due in WhatIsDue(depot, van))
            yield return (T("Due"), due);

        if (DrivingHabit.Of(depot, van.Code) is { } habit)
        {
            yield return (T("Usual day"),
                T($"{depot.Setup.Units.Distance(habit.MedianMi)}; asked again beyond {depot.Setup.Units.Distance(habit.FarMi)}"));
        }

        if (FuelEconomy.Of(depot, van.Code) is { } economy)
            yield return (T("Fuel"), T($"takes {van.Fuel}; {economy.Words(depot.Setup.Units)}"));

        if (depot.Shift(van.Code) is { Photos.Count: > 0 and var photos })
            yield return (T("Photos"), Spell.Count(photos, T("photo"), T("photos")) + T(" attached tonight"));

        var toTake = plan.Lines.Where(l => l.Van == van && l.Units > 0).ToList();
        var shorts = plan.Lines.Where(l => l.Van == van && l.Short > 0).Select(l => $"{l.Item.Code} {l.Short}").ToList();
        var (boxed, single) = (toTake.Sum(l => l.Sealed), toTake.Sum(l => l.FromBin + l.FromOpened));
        var items = Spell.Count(toTake.Count, T("item"), T("items"));
        yield return (T("To load"),
            (toTake.Count == 0 ? T("nothing")
                : boxed == 1 ? T($"{items}, 1 sealed and {single} loose")
                : T($"{items}, {boxed} sealed and {single} loose"))
            + (shorts.Count == 0 ? "" : T($"; SHORT {string.Join(", ", shorts)}")));
    }

    /// <summary>What comes due for the van, with its dates, the soonest first.</summary>
    public static IEnumerable<string> WhatIsDue(Depot depot, Van van)
    {
        var units = depot.Setup.Units;
        var service = Service.Of(van);
        var dues = new List<(DateOnly On, string Words)>();
        if (Service.ExpectedOf(depot, van) is { } expected)
        {
            var by = new[
                ] { service.DueMi is { } mi ? T("at ") + units.Distance(mi) : null,
                service.DueOn is { } on ? T($"by {on:yyyy-MM-dd}") : null };
            dues.Add((expected, T($"service {string.Join(T(" or "), by.OfType<string>())}, expected {expected:yyyy-MM-dd}")));
        }
        else if (service.DueMi is { } mi)
        {
            yield return T($"service at {units.Distance(mi)}; the van's pace is not known yet");
        }

        dues.AddRange(KitCheck.Dates(depot, van.Code).Select(d => (d.On, d.Words(depot.Date))));
        foreach (var (_, words) in dues.OrderBy(d => d.On))
            yield return words;

        yield return Readiness.WeeklyCheckedOn(depot, van.Code) is { } last
            ? T($"weekly check, last {last:yyyy-MM-dd}")
            : T("weekly check, none in this book");
    }

    /// <summary>What to buy for the van's kit.</summary>
    public static IEnumerable<string> ToBuy(Depot depot, Van van) =>
        KitCheck.ToBuy(depot, van.Code).Select(b => $"{b.Pieces} {b.Piece.Description}");
}
