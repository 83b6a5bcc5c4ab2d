using Closeout.Leads;

namespace Closeout.Turning;

/// <summary>A lead ends the business date: the next page is opened, or a refusal says why not yet.</summary>
public sealed record EndDay(DateOnly Next, Code<Technician> Lead) : ICommand
{
    public Decision Decide(Depot depot) =>
        Given.Lead(depot.Setup, Lead, T("ends the day")) is { } refused ? refused
        : Next <= depot.Date ? LeadRefusal.NotAfter(Next, depot.Date) with { About = "next" }
        : Next > depot.Date.AddDays(PlanningWindow.MostDaysAhead) ? LeadRefusal.TooFarAhead(Next, depot.Date) with { About = "next" }
        : DayEnd.Open(depot) is { Count: > 0 } open ? LeadRefusal.VansOpen([.. open.Select(v => $"{v.Code} {v.Name}")])
        : NextPage.After(depot, Next) with { EndedBy = depot.Setup.Find(Lead)!.Code };
}

/// <summary>What a lead looks at before the date ends.</summary>
public static class DayEnd
{
    /// <summary>Vans that are neither closed nor explained, in bay order.</summary>
    public static IReadOnlyList<Van> Open(Depot depot) =>
        [.. depot.Setup.Vans.Where(v => !depot.IsDone(v.Code) && !depot.Vans.Explained.ContainsKey(v.Code))];

    /// <summary>The next date on which anybody is rostered; without a roster the next day.</summary>
    public static DateOnly Next(Depot depot)
    {
        var workdays = depot.Setup.Crew.SelectMany(t => t.Workdays).ToHashSet();
        var next = depot.Date.AddDays(1);
        while (workdays.Count > 0 && !workdays.Contains(next.DayOfWeek))
            next = next.AddDays(1);

        return next;
    }
}
