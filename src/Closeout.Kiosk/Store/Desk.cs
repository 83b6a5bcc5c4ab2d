using Closeout.Restock;

namespace Closeout.Store;

/// <summary>The only writer: decide, append, fold. What it returns as recorded is on disk.</summary>
/// <param name="clock">The clock of new entries; the wall's and the kiosk's is the system's, a rehearsal brings its own.</param>
public sealed class Desk(Book book, TimeProvider clock)
{
    private Tonight? tonight;

    /// <summary>The depot as far as it was read.</summary>
    public Depot Depot => book.Depot;

    /// <summary>The depot and what is worked out of it: made once for each entry.</summary>
    public Tonight Tonight => tonight is { } known && ReferenceEquals(known.Depot, book.Depot) ? known : tonight = new(book.Depot, tonight);

    /// <summary>Tomorrow's plan on the depot as it stands.</summary>
    public RestockPlan Plan => Tonight.Plan;

    /// <summary>The moment, in local time.</summary>
    public DateTimeOffset Now => clock.GetLocalNow();

    /// <summary>Records what the command comes to.</summary>
    /// <returns>Why not; null: recorded, and on disk.</returns>
    /// <exception cref="BookException">It could not be written.</exception>
    public Refusal? Record(ICommand command) => book.Record(command.Decide, Now);

    /// <summary>All entries of the open page.</summary>
    /// <exception cref="BookException">It cannot be read.</exception>
    public IReadOnlyList<Recorded> Entries() => book.Entries();

    /// <summary>What was found torn and set aside, in a sentence, told once; empty: nothing.</summary>
    public string SetAside() => book.TakeSaid();

    /// <summary>Takes in what other programs wrote. True when there was anything.</summary>
    public bool Refresh() => book.Refresh();
}
