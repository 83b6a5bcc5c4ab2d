using System.Diagnostics;
using Closeout.Commands;
using Closeout.Screens;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>A pipe, a device, a folder or a file without end in the place of one of a book's own: a sentence that names it, and never a wait, an exception or a machine without memory.</summary>
public sealed class NoPlainBookTests : IDisposable
{
    private const long Long = 3L << 30;
    private const string Page = "pages/2026-03-06.jsonl";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly LongBook book = new();

    /// <summary>Commands that open a book, each in another way.</summary>
    private static readonly string[] Commands =
        ["wall", "check", "recycling --out OUT/r.csv", "photos --out OUT/photos", "backup --out OUT/b.zip", "check --repair --out OUT/saved", "archive", "load DAY"];

    public static TheoryData<string, string> InPlaceOf
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var file in new[] { "pages/2026-03-05.jsonl", Page, "last.txt", "lock", "archive/lock", "archive/closeout.db", "archive/closeout-log.db", "archive/closeout.db.sha256", "files/", "torn/" })
            {
                foreach (var what in new[] { "pipe", "folder", "device", "too long" })
                {
                    data.Add(file, what);
                }
            }

            return data;
        }
    }

    public void Dispose() => book.Dispose();

    [Theory]
    [MemberData(nameof(InPlaceOf))]
    public void Every_command_ends_with_an_answer_or_a_sentence_that_names_it(string file, string what)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var place = Path.Combine(book.Folder.Path, file);
        place = file.EndsWith('/') ? Directory.EnumerateFiles(place).First() : place;
        Put(place, what);
        var (out_, day) = (book.Temp["out"], SmallDay.Write(book.Temp["day"], ("depot.csv", SmallDay.Text("depot.csv").Replace("2026-03-04", "2026-03-06", StringComparison.Ordinal) + "streams,lamps\n")));
        Directory.CreateDirectory(out_);
        foreach (var command in Commands)
        {
            var said = Within(() => Run(command.Replace("OUT", out_, StringComparison.Ordinal).Replace("DAY", day, StringComparison.Ordinal).Split(' ')), command);

            said.Code.Should().BeOneOf([0, 1, 3], command);
            if (said.Code != 0)
            {
                (said.Out + said.Err).Should().ContainAny([place, Path.GetFileName(place)], command).And.NotContain("   at ");
            }
        }
    }

    [Theory]
    [InlineData("pipe", " is a pipe or a device, and no file.")]
    [InlineData("device", " is a pipe or a device, and no file.")]
    [InlineData("folder", " is a folder, and no file.")]
    [InlineData("linked folder", " is a folder, and no file.")]
    [InlineData("too long", " has 3221225472 bytes, and 268435456 are the most.")]
    public void A_page_is_named_with_what_it_is_and_what_to_do(string what, string found)
    {
        var place = Path.Combine(book.Folder.Path, Page);
        Put(place, what);

        Within(() => Run("wall")).Err.Should().Be($"The page {place} cannot be read: {place}{found} {BookException.Remedy}\n");
        Within(() => Run("check")).Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains(place + found));
        Within(() => Run("check", "--repair", "--out", book.Temp["saved"])).Should().Match<Spoken>(s => s.Code == 1 && s.Out.Contains($"{place}:1: the page cannot be read: {place}{found}"));
        BookCheck.Of(new(book.Temp["saved"])).Fault.Should().BeNull();
    }

    [Theory]
    [InlineData("last.txt", "pipe", "is a pipe or a device, and no file.")]
    [InlineData("last.txt", "too long", "has 3221225472 bytes, and 4096 are the most.")]
    [InlineData("lock", "device", "is a pipe or a device, and no file.")]
    [InlineData("archive/lock", "pipe", "is a pipe or a device, and no file.")]
    [InlineData("archive/closeout.db", "pipe", "is a pipe or a device, and no file.")]
    [InlineData("archive/closeout-log.db", "folder", "is a folder, and no file.")]
    [InlineData("archive/closeout.db.sha256", "device", "is a pipe or a device, and no file.")]
    public void What_may_be_taken_away_is_said(string file, string what, string found)
    {
        var place = Path.Combine(book.Folder.Path, file);
        Put(place, what);
        var command = file.StartsWith("archive", StringComparison.Ordinal) ? "recycling --out -" : file == "lock" ? "backup --out " + book.Temp["b.zip"] : "wall";

        var said = Within(() => Run(command.Split(' ')));

        said.Should().Match<Spoken>(s => s.Code == 3 && s.Err.Contains($"{place} {found}") && s.Err.Contains("take it away", StringComparison.OrdinalIgnoreCase), said.Out + said.Err);
        Remove(place);
        Within(() => Run(command.Split(' '))).Code.Should().Be(0, "it was in the way, and nothing else was");
    }

    [Theory]
    [InlineData("pipe")]
    [InlineData("too long")]
    public void An_archive_that_is_none_is_noted_by_check(string what)
    {
        Put(Path.Combine(book.Folder.Archive, "lock"), "pipe");
        Put(Path.Combine(book.Folder.Archive, "closeout.db"), what);

        var said = Within(() => Run("check"));

        said.Code.Should().Be(0, said.Err);
        said.Out.Should().Contain($"The archive at {book.Folder.Archive} was not asked what it has seen. ");
    }

    [Theory]
    [InlineData("pipe", "is a pipe or a device, and no file.")]
    [InlineData("too long", "has 3221225472 bytes, and 20971520 are the most.")]
    public void An_attachment_is_told_with_what_it_is(string what, string found)
    {
        var place = Directory.EnumerateFiles(book.Folder.Files).First();
        Put(place, what);

        Within(() => Run("check")).Should().Match<Spoken>(s => s.Code == 1 && s.Err.StartsWith($"{place}: the attachment cannot be read: {place} {found} "));
        Within(() => Run("photos", "--out", book.Temp["photos"])).Should().Match<Spoken>(s => s.Code == 3 && s.Err.Contains($"{place} {found}"));
        Within(() => Run("backup", "--out", book.Temp["b.zip"])).Should().Match<Spoken>(s => s.Code == 3 && s.Err.Contains($"{place} {found}"));
        File.Exists(book.Temp["b.zip"]).Should().BeFalse();
    }

    [Fact]
    public void A_kiosk_that_is_open_says_so_when_a_page_or_the_lock_becomes_a_pipe()
    {
        var kiosk = new KioskSession(new Desk(Book.Open(book.Folder), TimeProvider.System), new Archive(book.Folder), new Attachments(book.Folder));
        foreach (var file in new[] { "lock", Page })
        {
            var place = Path.Combine(book.Folder.Path, file);
            Put(place, "pipe");
            var recording = () => kiosk.Desk.Record(new Closeout.Restock.ReceiveDelivery(SmallBook.Lamp, 6, new("L1")));

            Within(() => Spoken.By(() => recording.Should().Throw<BookException>().Which.Message.Contains($"{place} is a pipe or a device, and no file.", StringComparison.Ordinal) ? 0 : 1)).Code.Should().Be(0);
            if (file == Page)
            {
                Within(() => Spoken.By(() => kiosk.Refresh() ? 0 : 1));
                kiosk.Model.Said.Should().Contain($"{place} is a pipe or a device, and no file.");
            }

            Remove(place);
        }
    }

    [Fact]
    public void A_seat_is_told_or_free()
    {
        Directory.CreateDirectory(book.Folder.Seats);
        using var seats = new VanSeats(book.Folder, "bay");
        Put(Path.Combine(book.Folder.Seats, "B1.lock"), "pipe");
        Put(Path.Combine(book.Folder.Seats, "B2.txt"), "pipe");
        using var held = new FileStream(Path.Combine(book.Folder.Seats, "B2.lock"), FileMode.Create, FileAccess.ReadWrite, FileShare.None);

        Within(() => Spoken.By(() => seats.Elsewhere(SmallBook.B1) is null && seats.Elsewhere(SmallBook.B2) == "another kiosk" ? 0 : 1)).Code.Should().Be(0);
        FluentActions.Invoking(() => seats.Take(SmallBook.B1, SmallBook.At(0))).Should().Throw<BookException>().WithMessage("*B1.lock is a pipe or a device, and no file.*ake it away*");
        seats.Take(SmallBook.B2, SmallBook.At(0)).Should().Be("another kiosk");
    }

    [Fact]
    public void A_backup_that_is_none_stops_no_daily_backup_and_no_restore_waits_for_it()
    {
        Directory.CreateDirectory(book.Folder.Backups);
        Put(Path.Combine(book.Folder.Backups, "closeout-2020-01-01.zip"), "pipe");
        var daily = new DailyBackup(book.Folder, book.Folder.Backups, 1, TimeProvider.System);

        Within(() => Spoken.By(() =>
        {
            daily.Begin();
            daily.Finish(Patience);
            return daily.Failure().Length;
        })).Code.Should().Be(0);
        Put(book.Temp["b.zip"], "pipe");
        Within(() => Run("restore", book.Temp["b.zip"])).Code.Should().NotBe(0);
        Within(() => Spoken.By(() => CommandLine.Build(TimeProvider.System).Parse(["--book", book.Temp["back"], "restore", "/dev/zero"]).Invoke())).Err.Should().Contain("/dev/zero is a pipe or a device, and no file.");
    }

    [Fact]
    public void A_page_never_becomes_longer_than_is_read() =>
        FluentActions.Invoking(() => PageFile.MustFit("p.jsonl", PageFile.MostBytes + 1)).Should().Throw<BookException>()
            .WithMessage("NOT recorded: p.jsonl would have 268435457 bytes, and 268435456 are the most. *");

    private static void Put(string place, string what)
    {
        Remove(place);
        switch (what)
        {
            case "pipe":
                Process.Start("mkfifo", [place])!.WaitForExit();
                break;
            case "folder":
                Directory.CreateDirectory(place);
                break;
            case "linked folder":
                Directory.CreateSymbolicLink(place, "/usr");
                break;
            case "device":
                File.CreateSymbolicLink(place, "/dev/zero");
                break;
            case "too long":
                using (var file = File.Create(place))
                {
                    file.SetLength(Long);
                }

                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(what), what, null);
        }
    }

    private static void Remove(string place)
    {
        if (Directory.Exists(place))
        {
            Directory.Delete(place);
        }

        File.Delete(place);
    }

    private Spoken Run(params string[] args) =>
        Spoken.By(() => CommandLine.Build(TimeProvider.System).Parse(["--book", book.Folder.Path, .. args]).Invoke(new() { EnableDefaultExceptionHandler = false }));

    private static Spoken Within(Func<Spoken> act, string because = "")
    {
        var acting = Task.Run(act);
        acting.Wait(Patience).Should().BeTrue($"it never waits {because}");
        return acting.Result;
    }
}
