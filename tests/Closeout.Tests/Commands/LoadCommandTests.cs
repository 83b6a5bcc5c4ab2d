using Closeout.Commands;
using Closeout.Store;
using Closeout.Tests.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

public sealed class LoadCommandTests
{
    [Fact]
    public void The_days_backup_is_finished_also_where_the_archive_cannot_be_brought_up()
    {
        using var book = new SmallBook().Closed(SmallBook.B1, SmallBook.B2);
        using var temp = new TempFolder();
        var day = SmallDay.Write(temp["day"], ("depot.csv", SmallDay.Text("depot.csv").Replace("2026-03-04", "2026-03-05", StringComparison.Ordinal)));
        Directory.CreateDirectory(Path.Combine(book.Folder.Archive, "closeout.db"));
        var daily = new DailyBackup(book.Folder, temp["backups"], 14, TimeProvider.System);

        FluentActions.Invoking(() => LoadCommand.Run(day, book.Folder, null, TimeProvider.System, daily, new Pins(1))).Should().Throw<BookException>().WithMessage("The archive at *");

        Directory.EnumerateFiles(temp["backups"]).Should().ContainSingle().Which.Should().EndWith(".zip");
        book.Folder.Dates.Should().HaveCount(2, "the page was opened all the same");
    }
}
