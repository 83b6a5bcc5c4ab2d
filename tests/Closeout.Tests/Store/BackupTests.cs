using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using Closeout.Facts;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class BackupTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 6, 12, 0, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void A_restored_book_is_the_book_with_its_attachments_and_what_was_set_aside()
    {
        using var book = new LongBook();
        var (file, back) = (book.Temp["b.zip"], new BookFolder(book.Temp["back"]));

        var made = Backup.Write(book.Folder, file, Noon);
        Restore.Into(back, file).Should().BeEquivalentTo(made);

        made.Entries.Should().Be(book.Entries);
        made.Pages.Should().Equal(LongBook.Dates);
        LongBook.Pages(back).Should().BeEquivalentTo(LongBook.Pages(book.Folder));
        Names(back.Files).Should().Equal(Names(book.Folder.Files)).And.HaveCount(2);
        Names(back.TornLines).Should().Equal(Names(book.Folder.TornLines)).And.HaveCount(1);
        BookCheck.Of(back).Should().Match<BookChecked>(c => c.Fault == null && c.Entries == book.Entries);
        Directory.Exists(back.Archive).Should().BeFalse("the archive is made from the pages, and is not copied");
        Book.Open(back).Depot.Number.Should().Be(book.Entries);
    }

    [Fact]
    public void A_backup_taken_while_another_program_appends_holds_a_good_book_with_all_up_to_some_moment()
    {
        using var book = new SmallBook().With(counts: 0);
        using var temp = new TempFolder();
        using var writer = Begin(book, 100_000);
        writer.StandardInput.WriteLine();
        var made = new List<BackupManifest>();
        for (var i = 0; i < 6; i++)
        {
            made.Add(Backup.Write(book.Folder, temp[$"{i}.zip"], Noon));

            // From here on: what grew while the backup was taken may be in it.
            var before = new FileInfo(book.Page).Length;
            SpinWait.SpinUntil(() => new FileInfo(book.Page).Length > before + 2000, TimeSpan.FromSeconds(20)).Should().BeTrue("the writer goes on all the while");
        }

        writer.Kill();
        writer.WaitForExit();
        var whole = File.ReadAllBytes(book.Page);
        for (var i = 0; i < made.Count; i++)
        {
            var back = new BookFolder(temp[$"{i}"]);
            Restore.Into(back, temp[$"{i}.zip"]);

            BookCheck.Of(back).Should().Match<BookChecked>(c => c.Fault == null && c.Entries == made[i].Entries);
            whole.Should().StartWith(File.ReadAllBytes(back.Page(SmallDay.Date)));
        }

        made.Select(m => m.Entries).Should().BeInAscendingOrder().And.OnlyHaveUniqueItems("the book grew between any two of them");
        made[0].Entries.Should().BeGreaterThan(3);
    }

    [Fact]
    public void A_line_that_is_just_being_written_is_left_out()
    {
        using var book = new SmallBook().With(counts: 2);
        using var temp = new TempFolder();
        var whole = book.Bytes;
        File.AppendAllText(book.Page, "{\"n\":6,\"prev\":\"");

        Backup.Write(book.Folder, temp["b.zip"], Noon).Entries.Should().Be(5);

        Restore.Into(new BookFolder(temp["back"]), temp["b.zip"]);
        File.ReadAllBytes(new BookFolder(temp["back"]).Page(SmallDay.Date)).Should().Equal(whole);
    }

    [Fact]
    public void A_damaged_book_is_not_backed_up_and_nothing_is_left_behind()
    {
        using var book = new LongBook();
        var bytes = File.ReadAllBytes(book.Folder.Page(LongBook.Second));
        bytes[bytes.Length / 2] ^= 4;
        File.WriteAllBytes(book.Folder.Page(LongBook.Second), bytes);

        Refused(book).Should().StartWith("The book is damaged, and a backup of it would be too, so none was written. ").And.Contain($"{book.Folder.Page(LongBook.Second)}:").And.Contain("--repair");
    }

    [Fact]
    public void A_book_that_lost_its_last_lines_is_not_backed_up()
    {
        using var book = new LongBook();
        var lines = LongBook.Lines(book.Folder.Page(LongBook.Third));
        LongBook.Write(book.Folder.Page(LongBook.Third), lines[..^2]);

        Refused(book).Should().Contain($"entries {book.Entries - 1} to {book.Entries} are missing at the end: the book has had them");
    }

    [Fact]
    public void A_damaged_attachment_is_told_by_check_and_is_not_backed_up()
    {
        using var book = new LongBook();
        var file = Directory.EnumerateFiles(book.Folder.Files).First();
        File.AppendAllText(file, "!");

        BookCheck.Of(book.Folder).Fault.Should().StartWith($"{file}: the attachment is not as it was");
        Refused(book).Should().Contain(file);
    }

    [Fact]
    public void A_picture_that_is_gone_is_told_by_check_at_the_entry_that_attached_it()
    {
        using var book = new LongBook();
        var attached = LongBook.All(book.Folder).First(e => e.Entry is PhotoAttached);
        File.Delete(Path.Combine(book.Folder.Files, ((PhotoAttached)attached.Entry).Sha256));

        BookCheck.Of(book.Folder).Fault.Should().MatchRegex($@"2026-03-06\.jsonl:\d+: entry {attached.Number} attached [0-9a-f]{{64}}, and there is no such file\.");
        Refused(book).Should().Contain($"entry {attached.Number} attached ");
    }

    [Fact]
    public void A_file_with_another_name_among_the_attachments_is_noted_and_not_kept()
    {
        using var book = new LongBook();
        File.WriteAllText(Path.Combine(book.Folder.Files, "holiday.jpg"), "sea");

        BookCheck.Of(book.Folder).Should().Match<BookChecked>(c => c.Fault == null && c.Notes.Single().Contains("holiday.jpg"));
        Backup.Write(book.Folder, book.Temp["b.zip"], Noon).Parts.Should().NotContain(p => p.Name.Contains("holiday"));
    }

    [Fact]
    public void An_existing_file_is_never_replaced()
    {
        using var book = new LongBook();
        File.WriteAllText(book.Temp["b.zip"], "mine");

        var writing = () => Backup.Write(book.Folder, book.Temp["b.zip"], Noon);

        writing.Should().Throw<BookException>();
        File.ReadAllText(book.Temp["b.zip"]).Should().Be("mine");
        Directory.EnumerateFiles(book.Temp.Path, "*.new").Should().BeEmpty();
    }

    [Fact]
    public void Its_last_64_bytes_are_the_sha_256_of_all_before_them_and_any_zip_program_reads_it()
    {
        using var book = new LongBook();
        Backup.Write(book.Folder, book.Temp["b.zip"], Noon);
        var bytes = File.ReadAllBytes(book.Temp["b.zip"]);

        System.Text.Encoding.ASCII.GetString(bytes[^64..]).Should().Be(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes[..^64])));
        using var zip = ZipFile.OpenRead(book.Temp["b.zip"]);
        zip.Entries.Select(e => e.FullName).Should().Contain(["pages/2026-03-04.jsonl", "pages/2026-03-06.jsonl", "torn/2026-03-04-after-7.txt", "backup.json"]);
    }

    private static string Refused(LongBook book)
    {
        var writing = () => Backup.Write(book.Folder, book.Temp["b.zip"], Noon);

        var told = writing.Should().Throw<BookException>().Which.Message;
        Directory.EnumerateFiles(book.Temp.Path).Should().BeEmpty();
        return told;
    }

    private static string[] Names(string folder) => [.. Directory.EnumerateFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    private static Process Begin(SmallBook book, int counts)
    {
        var program = Started.Begin(Built.Appender, Path.GetTempPath(), book.Folder.Path, "B1", "LAMP", counts.ToString(CultureInfo.InvariantCulture));
        program.StandardOutput.ReadLine().Should().Be("1");
        program.StandardOutput.ReadToEndAsync();
        return program;
    }
}
