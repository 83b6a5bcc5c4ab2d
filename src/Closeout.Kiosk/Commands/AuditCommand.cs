using Closeout.Files;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>audit --out FILE</c>: who did what when, from the pages themselves.</summary>
public static class AuditCommand
{
    /// <param name="date">Only that business date; null: the whole book.</param>
    public static int Run(BookFolder folder, DateOnly? date, string file)
    {
        // Each page is opened, not only read: so it is held to the pages beside it.
        var first = Book.Open(folder, date);
        Language.OfDepot(first.Depot.Setup.Depot);
        var dates = date is null ? folder.Dates : [first.Date];
        return Output.Write(file, English(() => AuditCsv.Write(dates.Select(d => (d, Book.Open(folder, d).Entries())))));
    }
}
