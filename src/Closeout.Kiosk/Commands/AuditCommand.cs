using Closeout.Files;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>audit --out FILE</c>: who did what when, from the pages themselves.</summary>
public static class AuditCommand
{
    /// <param name="date">Only that business date; null: the whole book.</param>
    public static int Run(BookFolder folder, DateOnly? date, string file)
    {
        var first = Book.Open(folder, date).Date;
        var dates = date is null ? folder.Dates : [first];
        Output.Write(file, AuditCsv.Write(dates.Select(d => (d, PageReader.Read(folder.Page(d), default).Entries))));
        return ExitCode.Done;
    }
}
