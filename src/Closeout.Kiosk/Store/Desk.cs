using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.People;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts;
using Closeout.Turning;
using Closeout.Vans;

namespace Closeout.Store;

/// <summary>The only writer: decide, append, fold. What it returns as recorded is on disk.</summary>
/// <param name="clock">The clock of new entries; the wall's and the kiosk's is the system's, a rehearsal brings its own.</param>
public sealed class Desk(Book book, TimeProvider clock)
{
    private (int Number, RestockPlan Plan)? planned;

    /// <summary>The depot as far as it was read.</summary>
    public Depot Depot => book.Depot;

    /// <summary>The moment, in local time.</summary>
    public DateTimeOffset Now => clock.GetLocalNow();

    /// <summary>Tomorrow's plan on the depot as it stands; made once per state.</summary>
    public RestockPlan Plan
    {
        get
        {
            if (planned is not { } known || known.Number != Depot.Number)
            {
                planned = known = (Depot.Number, RestockPlan.For(Depot));
            }

            return known.Plan;
        }
    }

    /// <summary>Records what the command comes to.</summary>
    /// <returns>Why not; null: recorded, and on disk.</returns>
    /// <exception cref="BookException">It could not be written.</exception>
    public Refusal? Record(Command command) => book.Record(depot => Decider.Decide(depot, command), Now);

    /// <summary>Records what the stock command comes to.</summary>
    /// <returns>Why not; null: recorded, and on disk.</returns>
    /// <exception cref="BookException">It could not be written.</exception>
    public Refusal? Record(StockCommand command) => book.Record(depot => StockDecider.Decide(depot, command), Now);

    /// <summary>Records what the command of the yard comes to.</summary>
    /// <returns>Why not; null: recorded, and on disk.</returns>
    /// <exception cref="BookException">It could not be written.</exception>
    public Refusal? Record(YardCommand command) => book.Record(depot => YardDecider.Decide(depot, command), Now);

    /// <summary>Records what a lead's command of a van comes to.</summary>
    /// <returns>Why not; null: recorded, and on disk.</returns>
    /// <exception cref="BookException">It could not be written.</exception>
    public Refusal? Record(VanCommand command) => book.Record(depot => VanDesk.Decide(depot, command), Now);

    /// <summary>Records what the command of the people comes to.</summary>
    /// <returns>Why not; null: recorded, and on disk.</returns>
    /// <exception cref="BookException">It could not be written.</exception>
    public Refusal? Record(PinCommand command) => book.Record(depot => PinDesk.Decide(depot, command), Now);

    /// <summary>Records what a lead's command comes to.</summary>
    /// <returns>Why not; null: recorded, and on disk.</returns>
    /// <exception cref="BookException">It could not be written.</exception>
    public Refusal? Record(LeadCommand command) => book.Record(depot => LeadDecider.Decide(depot, command), Now);

    /// <summary>Closes a van out for somebody: what was not answered is as booked, one entry each, then the lead's name. The lead is looked at first: nothing is half done.</summary>
    /// <returns>Why not; null: it is closed.</returns>
    /// <exception cref="BookException">It could not be written: what was confirmed before stands.</exception>
    public Refusal? CloseFor(SignFor sign)
    {
        if (LeadDecider.MaySignFor(Depot, sign.Van, sign.For, sign.Why, sign.Lead) is { } refused)
        {
            return refused;
        }

        if (Depot.Shift(sign.Van) is null && Record(new ComeIn(sign.Van, sign.For)) is { } notIn)
        {
            return notIn;
        }

        while (Depot.Shift(sign.Van) is { Step: < Step.SignOff })
        {
            if (Record(AsBooked.Answer(Depot, sign.Van)) is { } refusal)
            {
                return refusal;
            }
        }

        return Record(sign);
    }

    /// <summary>Ends the business date: the next page is written whole, and the old one never again.</summary>
    /// <returns>Why not; null: the next page is open.</returns>
    /// <exception cref="BookException">It could not be written: the old page is open still.</exception>
    public Refusal? EndDay(DateOnly next, Code<Technician> lead) => book.Turn(depot => DayEnd.Decide(depot, next, lead), Now);

    /// <summary>All entries of the open page.</summary>
    /// <exception cref="BookException">It cannot be read.</exception>
    public IReadOnlyList<Recorded> Entries() => book.Entries();

    /// <summary>What was found torn and set aside, in a sentence, told once; empty: nothing.</summary>
    public string SetAside() => book.TakeSaid();

    /// <summary>Takes in what other programs wrote. True when there was anything.</summary>
    public bool Refresh() => book.Refresh();
}
