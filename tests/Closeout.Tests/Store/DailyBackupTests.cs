using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class DailyBackupTests : IDisposable
{
    private readonly SmallBook book = new SmallBook().With(counts: 1);
    private readonly TempFolder temp = new();
    private readonly DayClock clock = new();

    private string Where => temp["backups"];

    public void Dispose()
    {
        book.Dispose();
        temp.Dispose();
    }

    [Fact]
    public void One_is_written_for_each_calendar_day_on_which_the_book_is_used()
    {
        var daily = new DailyBackup(book.Folder, Where, 14, clock);
        Run(daily).Should().BeEmpty();
        Names().Should().Equal("closeout-2026-03-04.zip");
        var first = File.ReadAllBytes(Path.Combine(Where, "closeout-2026-03-04.zip"));

        SmallBook.Count(book.Book, SmallBook.B1, kept: 2).Should().BeNull();
        Run(daily).Should().BeEmpty();
        Run(new DailyBackup(book.Folder, Where, 14, clock)).Should().BeEmpty("another kiosk finds that it is there");
        File.ReadAllBytes(Path.Combine(Where, "closeout-2026-03-04.zip")).Should().Equal(first);

        clock.Now = clock.Now.AddHours(8);
        Run(daily).Should().BeEmpty();
        Names().Should().Equal("closeout-2026-03-04.zip", "closeout-2026-03-05.zip");
        Restore.Into(new(temp["back"]), Path.Combine(Where, "closeout-2026-03-05.zip")).Entries.Should().Be(5);
    }

    [Fact]
    public void The_newest_are_kept_and_nothing_else_in_the_folder_is_touched()
    {
        var daily = new DailyBackup(book.Folder, Where, 3, clock);
        Directory.CreateDirectory(Where);
        File.WriteAllText(Path.Combine(Where, "closeout-2020-01-01.zip"), "somebody's own");
        File.WriteAllText(Path.Combine(Where, "notes.txt"), "mine");
        for (var day = 0; day < 6; day++)
        {
            Run(daily).Should().BeEmpty();
            clock.Now = clock.Now.AddDays(1);
        }

        Names().Should().Equal("closeout-2020-01-01.zip", "closeout-2026-03-07.zip", "closeout-2026-03-08.zip", "closeout-2026-03-09.zip", "notes.txt");
    }

    [Fact]
    public void A_clock_that_ran_ahead_never_costs_a_newer_backup_than_it_keeps()
    {
        var right = clock.Now;
        clock.Now = right.AddYears(4);
        for (var day = 0; day < 2; day++, clock.Now = clock.Now.AddDays(1))
        {
            Run(new DailyBackup(book.Folder, Where, 2, clock)).Should().BeEmpty();
        }

        clock.Now = right;
        for (var day = 0; day < 2; day++, clock.Now = clock.Now.AddDays(1))
        {
            SmallBook.Count(book.Book, SmallBook.B1, kept: 2 + day).Should().BeNull();
            Run(new DailyBackup(book.Folder, Where, 2, clock)).Should().BeEmpty();
            Names().Should().Contain($"closeout-2026-03-{4 + day:00}.zip", "it was made just now").And.HaveCount(2);
        }

        Names().Should().Equal(["closeout-2026-03-04.zip", "closeout-2026-03-05.zip"], "they hold more entries than those of 2030");
    }

    [Fact]
    public void One_alone_that_is_kept_is_the_one_just_made()
    {
        clock.Now = clock.Now.AddYears(4);
        Run(new DailyBackup(book.Folder, Where, 1, clock)).Should().BeEmpty();
        clock.Now = clock.Now.AddYears(-4);
        Run(new DailyBackup(book.Folder, Where, 1, clock)).Should().BeEmpty();

        Names().Should().Equal("closeout-2026-03-04.zip");
    }

    [Fact]
    public void A_clock_before_1980_is_no_reason_to_have_no_backup()
    {
        clock.Now = new(1970, 1, 5, 16, 30, 0, TimeSpan.Zero);

        Run(new DailyBackup(book.Folder, Where, 14, clock)).Should().BeEmpty();

        Names().Should().Equal("closeout-1970-01-05.zip");
        Restore.Into(new(temp["back"]), Path.Combine(Where, "closeout-1970-01-05.zip")).Made.Year.Should().Be(1970);
    }

    [Fact]
    public void A_fault_of_the_program_is_a_sentence_on_the_wall_and_ends_no_evening()
    {
        var daily = new DailyBackup(book.Folder, "a\0b", 14, clock);
        var session = new KioskSession(new Desk(book.Book, clock), new Archive(book.Folder), new Attachments(book.Folder), daily: daily);

        session.Refresh();
        daily.Finish(TimeSpan.FromSeconds(20));
        session.Refresh();

        session.Model.Said.Should().StartWith("Today's backup was not made, by a fault of this program (ArgumentException: ").And.EndWith("Make one by hand with: closeout backup --out FILE");
    }

    [Fact]
    public void None_is_written_when_none_is_to_be_kept()
    {
        Run(new DailyBackup(book.Folder, Where, 0, clock)).Should().BeEmpty();

        Directory.Exists(Where).Should().BeFalse();
    }

    [Fact]
    public void Two_books_that_share_a_folder_are_told_and_lose_nothing()
    {
        using var other = new SmallBook(second: -9);
        Run(new DailyBackup(other.Folder, Where, 1, clock)).Should().BeEmpty();

        Run(new DailyBackup(book.Folder, Where, 1, clock)).Should().Contain("closeout-2026-03-04.zip is a backup of another book. Give each book a folder of its own with --backups.");
        clock.Now = clock.Now.AddDays(1);
        Run(new DailyBackup(book.Folder, Where, 1, clock)).Should().BeEmpty();

        Names().Should().Equal(["closeout-2026-03-04.zip", "closeout-2026-03-05.zip"], "the other book's is not ours to remove");
    }

    [Fact]
    public void A_failure_is_told_once_and_tried_again_an_hour_later()
    {
        File.WriteAllText(Where, "a file where the folder should be");
        var daily = new DailyBackup(book.Folder, Where, 14, clock);

        Run(daily).Should().StartWith("Today's backup was not made. ");
        Run(daily).Should().BeEmpty("nothing was tried since");
        File.Delete(Where);
        Run(daily).Should().BeEmpty();
        Directory.Exists(Where).Should().BeFalse();
        clock.Now = clock.Now.AddMinutes(61);
        Run(daily).Should().BeEmpty();
        Names().Should().ContainSingle();
    }

    [Fact]
    public void A_damaged_backup_of_the_day_is_not_taken_for_one()
    {
        Directory.CreateDirectory(Where);
        File.WriteAllText(Path.Combine(Where, "closeout-2026-03-04.zip"), "half a file");

        Run(new DailyBackup(book.Folder, Where, 14, clock)).Should().StartWith("Today's backup was not made. The backup ").And.Contain("is refused");
    }

    [Fact]
    public void What_a_program_that_died_left_half_written_is_removed_after_a_day()
    {
        Directory.CreateDirectory(Where);
        var half = Path.Combine(Where, "closeout-2026-03-02.zip.0123456789abcdef0123456789abcdef.new");
        File.WriteAllText(half, "half");
        File.SetLastWriteTimeUtc(half, clock.Now.UtcDateTime.AddDays(-2));

        Run(new DailyBackup(book.Folder, Where, 14, clock)).Should().BeEmpty();

        Names().Should().Equal("closeout-2026-03-04.zip");
    }

    [Fact]
    public void The_kiosk_writes_it_and_says_a_failure_on_the_screen_without_taking_a_key_away()
    {
        File.WriteAllText(Where, "a file where the folder should be");
        var daily = new DailyBackup(book.Folder, Where, 14, clock);
        var session = new KioskSession(new Desk(book.Book, clock), new Archive(book.Folder), new Attachments(book.Folder), daily: daily);

        session.Refresh();
        daily.Finish(TimeSpan.FromSeconds(20));
        session.Refresh();

        session.Model.Said.Should().StartWith("Today's backup was not made. ");
        session.Show(80, 24).ToString().Should().Contain("!!  Today's backup was not made.");
        session.Press(new(Press.Down));
        session.Model.Said.Should().BeEmpty();
        session.Model.Screen.Should().BeOfType<WallScreen>().Which.Selected.Should().Be(1);
        File.Delete(Where);
        clock.Now = clock.Now.AddHours(2);
        session.Refresh();
        daily.Finish(TimeSpan.FromSeconds(20));
        session.Refresh();
        session.Model.Said.Should().BeEmpty();
        Names().Should().ContainSingle();
    }

    private static string Run(DailyBackup daily)
    {
        daily.Begin();
        daily.Finish(TimeSpan.FromSeconds(20));
        return daily.Failure();
    }

    private string[] Names() => [.. Directory.EnumerateFiles(Where).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    private sealed class DayClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 3, 4, 16, 30, 0, TimeSpan.Zero);

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
