using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;

namespace Closeout.Leads;

/// <summary>The rules of a lead's desk.</summary>
public static class LeadDecider
{
    /// <summary>Decides a command on the book as it stands. Everything it accepts, the fold takes.</summary>
    public static Decision Decide(Depot depot, LeadCommand command)
    {
        if (Given.Lead(depot.Setup, command.Lead, Does(command)) is { } refused)
        {
            return refused;
        }

        var lead = depot.Setup.Find(command.Lead)!;
        return command switch
        {
            CheckCloseout c => depot.Setup.Find(c.Van) is { } van ? Check(depot, van, lead) : Refusal.NoSuchVan(c.Van),
            Reopen c => depot.Setup.Find(c.Van) is { } van ? Open(depot, van, c, lead) : Refusal.NoSuchVan(c.Van),
            SignFor c => depot.Setup.Find(c.Van) is { } van ? Sign(depot, van, c, lead) : Refusal.NoSuchVan(c.Van),
            ExplainVan c => depot.Setup.Find(c.Van) is { } van ? Explain(depot, van, c, lead) : Refusal.NoSuchVan(c.Van),
            MoveBookings c => Move(depot, c, lead),
            _ => throw new InvalidOperationException($"no rule for {command.GetType().Name}"),
        };
    }

    /// <summary>Whether somebody may sign for another, before anything is confirmed as booked; null: yes.</summary>
    /// <param name="whom">Who did not sign; of a van that is in already, whoever brought it in.</param>
    public static Refusal? MaySignFor(Depot depot, Code<Van> van, Code<Technician> whom, string why, Code<Technician> lead) =>
        Given.Lead(depot.Setup, lead, "signs for somebody else")
        ?? (depot.Setup.Find(whom) is null ? Refusal.NoSuchTechnician(whom) with { About = "for" } : null)
        ?? Given.Words("why it is signed for somebody else", why)
        ?? (depot.Shift(van) is { } shift && shift.Technician != whom ? LeadRefusal.BroughtInBy(depot.Setup.Van(van), depot.Setup.Find(shift.Technician)!, whom) with { About = "for" } : null);

    private static string Does(LeadCommand command) => command switch
    {
        CheckCloseout => "checks a close-out",
        Reopen => "reopens a close-out",
        SignFor => "signs for somebody else",
        ExplainVan => "excuses a van",
        MoveBookings => "moves bookings",
        _ => throw new InvalidOperationException($"no words for {command.GetType().Name}"),
    };

    private static Decision Check(Depot depot, Van van, Technician lead) => depot.Shift(van.Code) switch
    {
        not { IsClosed: true } => LeadRefusal.NotSignedYet(van),
        { Checked: { } before } => LeadRefusal.CheckedAlready(van, before.Lead),
        var shift when shift.Technician == lead.Code || shift.SignedBy == lead.Code => LeadRefusal.OwnCloseout(van, lead),
        _ => new CloseoutChecked(van.Code, lead.Code),
    };

    private static Decision Open(Depot depot, Van van, Reopen c, Technician lead)
    {
        if (depot.Shift(van.Code) is not { IsClosed: true })
        {
            return LeadRefusal.NotSignedYet(van);
        }

        // What was loaded since was taken on these counts: changing them under it would be guessing.
        var loaded = depot.Loaded.Keys.Count(k => k.Item1 == van.Code);
        return loaded > 0 ? LeadRefusal.LoadedSince(van, loaded)
            : Given.Words("why it is reopened", c.Why) is { } silent ? silent
            : new CloseoutReopened(van.Code, c.Why.Trim(), lead.Code);
    }

    private static Decision Sign(Depot depot, Van van, SignFor c, Technician lead)
    {
        if (depot.Shift(van.Code) is not { } shift)
        {
            return Refusal.NotIn(van);
        }

        return shift switch
        {
            { IsClosed: true } => Refusal.AlreadyClosed(van, shift),
            _ when shift.Technician != c.For => LeadRefusal.BroughtInBy(van, depot.Setup.Find(shift.Technician)!, c.For) with { About = "for" },
            { Step: not Step.SignOff } => Refusal.TooEarly(van, shift.Step, Step.SignOff),
            _ => Given.Words("why it is signed for somebody else", c.Why) is { } silent ? silent : new SignedFor(van.Code, shift.Technician, c.Why.Trim(), lead.Code),
        };
    }

    private static Decision Explain(Depot depot, Van van, ExplainVan c, Technician lead) => (depot.Shift(van.Code), c.StayedIn) switch
    {
        ({ IsClosed: true } shift, _) => Refusal.AlreadyClosed(van, shift),
        ({ } shift, true) => Refusal.AlreadyIn(van, shift),
        _ => Given.Words("why it is not closed", c.Why) is { } silent ? silent : new VanExplained(van.Code, c.StayedIn, c.Why.Trim(), lead.Code),
    };

    private static Decision Move(Depot depot, MoveBookings c, Technician lead)
    {
        if (depot.Setup.Find(c.From) is not { } from)
        {
            return Refusal.NoSuchVan(c.From) with { About = "from" };
        }

        if (depot.Setup.Find(c.To) is not { } to)
        {
            return Refusal.NoSuchVan(c.To) with { About = "to" };
        }

        if (c.Date <= depot.Date)
        {
            return Restock.StockRefusal.DateIsOver(c.Date, depot.Date) with { About = "date" };
        }

        var visits = depot.Bookings.Where(b => b.Date == c.Date && b.Van == from.Code && b.Visits > 0 && (c.Kind is not { } kind || b.Kind == kind))
            .Select(b => new KindVisits(b.Kind, b.Visits)).ToList();
        return from.Code == to.Code || visits.Count == 0 ? LeadRefusal.NothingToMove(from, to, c.Date, visits.Sum(v => v.Visits)) with { About = "date" }
            : Given.Words("why the visits are moved", c.Why) is { } silent ? silent
            : new BookingsMoved(c.Date, from.Code, to.Code, visits, c.Why.Trim(), lead.Code);
    }
}
