using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Rules;

namespace Closeout.Turning;

/// <summary>The end of a business date: the next page, or why not yet.</summary>
public static class DayEnd
{
    /// <summary>Vans that are neither closed nor explained, in bay order.</summary>
    public static IReadOnlyList<Van> Open(Depot depot) => [.. depot.Setup.Vans.Where(v => !depot.IsDone(v.Code) && !depot.Explained.ContainsKey(v.Code))];

    /// <summary>The next date on which anybody is rostered; without a roster the next day.</summary>
    public static DateOnly Next(Depot depot)
    {
        var workdays = depot.Setup.Crew.SelectMany(t => t.Workdays).ToHashSet();
        var next = depot.Date.AddDays(1);
        while (workdays.Count > 0 && !workdays.Contains(next.DayOfWeek))
        {
            next = next.AddDays(1);
        }

        return next;
    }

    /// <summary>The page that follows; or a refusal while a van is open and nobody said why.</summary>
    public static (PageOpened? Page, Refusal? Refusal) Decide(Depot depot, DateOnly next, Code<Technician> lead)
    {
        if (Given.Lead(depot.Setup, lead, "ends the day") is { } refused)
        {
            return (null, refused);
        }

        if (next <= depot.Date)
        {
            return (null, LeadRefusal.NotAfter(next, depot.Date) with { About = "next" });
        }

        if (next > depot.Date.AddDays(PlanningWindow.MostDaysAhead))
        {
            return (null, LeadRefusal.TooFarAhead(next, depot.Date) with { About = "next" });
        }

        return Open(depot) is { Count: > 0 } open
            ? (null, LeadRefusal.VansOpen([.. open.Select(v => $"{v.Code} {v.Name}")]))
            : (NextPage.After(depot, next) with { EndedBy = depot.Setup.Find(lead)!.Code }, null);
    }
}
