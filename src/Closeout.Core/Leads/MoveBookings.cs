using Closeout.Restock;

namespace Closeout.Leads;

/// <summary>Move visits booked for one van to another.</summary>
/// <param name="Kind">Null: all kinds.</param>
public sealed record MoveBookings(
    DateOnly Date, Code<Van> From, Code<Van> To, Code<VisitKind>? Kind, string Why, Code<Technician> Lead) : LeadCommand(Lead)
{
    protected override string Does => T("moves bookings");

    protected override Decision Decide(Depot depot, Technician lead)
    {
        if (depot.Setup.Find(From) is not { } from)
            return Refusal.NoSuchVan(From) with { About = "from" };

        if (depot.Setup.Find(To) is not { } to)
            return Refusal.NoSuchVan(To) with { About = "to" };

        var visits = Visits(depot, from);
        return Date <= depot.Date ? StockRefusal.DateIsOver(Date, depot.Date) with { About = "date" }
            : from.Code == to.Code || visits.Count == 0
                ? LeadRefusal.NothingToMove(from, to, Date, visits.Sum(v => v.Visits)) with { About = "date" }
            : Given.Words(T("why the visits are moved"), Why) is { } silent ? silent
            : new BookingsMoved(Date, from.Code, to.Code, visits, Why.Trim(), lead.Code);
    }

    private IReadOnlyList<KindVisits> Visits(Depot depot, Van from) => [.. depot.Planning.Bookings
        .Where(b => b.Date == Date && b.Van == from.Code && b.Visits > 0 && (Kind is not { } kind || b.Kind == kind))
        .Select(b => new KindVisits(b.Kind, b.Visits))];
}
