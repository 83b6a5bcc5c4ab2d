using Closeout.People;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>
/// <c>first-pin LEAD</c>: a PIN for a lead while no other lead has one that opens anything. Whoever may run it has the book's files anyway.
/// </summary>
public static class FirstPinCommand
{
    public static int Run(string lead, BookFolder folder, Pins pins, TimeProvider clock) => Code<Technician>.IsValid(lead)
        ? Issue(Book.Open(folder), new(lead), pins, clock)
        : throw new UsageException(
            T($"LEAD is no code: found \"{lead}\", allowed 1 to 24 letters, digits, dots, underscores and hyphens."));

    /// <summary>At set-up: to the first lead of crew.csv.</summary>
    public static int AtSetUp(Book book, Pins pins, TimeProvider clock)
    {
        if (book.Depot.Setup.Crew.FirstOrDefault(t => t.IsLead) is { } lead)
            return Issue(book, lead.Code, pins, clock);

        return Say.Wrong(
            T("crew.csv has no lead, so nobody can issue a PIN at the kiosk. Load a crew.csv with one, then: closeout first-pin LEAD"),
            ExitCode.Done);
    }

    private static int Issue(Book book, Code<Technician> code, Pins pins, TimeProvider clock)
    {
        Language.OfDepot(book.Depot.Setup.Depot);
        if (book.Depot.Setup.Find(code) is not { } lead)
            return Say.Wrong(Refusal.NoSuchTechnician(code).Text);

        var pin = Pins.Draw(lead);
        return book.Record(new FirstPin(lead.Code, pins.Hash(pin)).Decide, clock.GetLocalNow()) is { } refusal
            ? Say.Wrong(refusal.Text)
            : Say.Done(T($"First PIN of lead {lead.Code} {lead.Name}: {pin}. It is shown once; write it down."));
    }
}
