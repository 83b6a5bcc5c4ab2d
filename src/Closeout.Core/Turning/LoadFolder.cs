namespace Closeout.Turning;

/// <summary>
/// Load a day folder into a book that has one: into the open page, or, with a later date, as the next page. The faults were
/// told before; others may have written meanwhile, so the rules are asked once more.
/// </summary>
/// <param name="Given">With the codes in the book's own spelling.</param>
public sealed record LoadFolder(DayGiven Given) : ICommand
{
    public Decision Decide(Depot depot) =>
        Loading.Faults(depot, Given).Any() ? new Refusal("book-moved-on", T("The book changed while the folder was read. Load it again."))
        : Given.BusinessDate > depot.Date ? Loading.NextPageWith(depot, Given)
        : Given.Loaded(depot);
}
