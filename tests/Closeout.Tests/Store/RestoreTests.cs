using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class RestoreTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 6, 12, 0, 0, TimeSpan.FromHours(-5));

    private readonly TempFolder temp = new();

    private string File_ => temp["backup.zip"];

    private BookFolder Target => new(temp["made", "for", "it"]);

    public void Dispose() => temp.Dispose();

    [Fact]
    public void Every_single_byte_of_a_backup_that_flips_is_found()
    {
        using var book = new SmallBook().With(counts: 1);
        Backup.Write(book.Folder, File_, Noon);
        var good = File.ReadAllBytes(File_);
        var missed = new List<string>();
        for (var at = 0; at < good.Length; at++)
        {
            foreach (var flip in new byte[] { 0x01, 0x20, 0x80 })
            {
                var bad = (byte[])good.Clone();
                bad[at] ^= flip;
                File.WriteAllBytes(File_, bad);
                if (!Refused().Contains("the checksum at its end does not fit"))
                {
                    missed.Add($"byte {at} by {flip:X2}");
                }
            }
        }

        missed.Should().BeEmpty();
        good.Length.Should().BeGreaterThan(1000);
        Nothing();
    }

    [Fact]
    public void A_backup_cut_anywhere_is_found()
    {
        using var book = new SmallBook();
        Backup.Write(book.Folder, File_, Noon);
        var good = File.ReadAllBytes(File_);
        for (var length = 0; length < good.Length; length += 37)
        {
            File.WriteAllBytes(File_, good[..length]);
            Refused().Should().Contain("the checksum at its end does not fit");
        }

        Nothing();
    }

    [Theory]
    [InlineData("../outside.txt")]
    [InlineData("pages/../../outside.jsonl")]
    [InlineData("/tmp/outside.jsonl")]
    [InlineData("C:\\outside.jsonl")]
    [InlineData("pages\\2026-03-04.jsonl")]
    [InlineData("pages/2026-03-04.jsonl/x")]
    [InlineData("pages/2026-02-30.jsonl")]
    [InlineData("pages/notes.txt")]
    [InlineData("archive/closeout.db")]
    [InlineData("last.txt")]
    [InlineData("lock")]
    [InlineData("files/photo.jpg")]
    [InlineData("torn/../../outside.txt")]
    [InlineData("torn/2026-03-04-after-7.txt\nx")]
    [InlineData("files/0000000000000000000000000000000000000000000000000000000000000000\n")]
    public void A_name_that_no_book_has_is_refused(string name)
    {
        using var book = new SmallBook();
        Backup.Write(book.Folder, File_, Noon);
        SealedZip.Write(File_, [.. SealedZip.Parts(File_), (name, "x"u8.ToArray(), null)], SealedZip.HeadOf(File_));

        Refused().Should().Contain("which is no part of a book");
        Nothing();
    }

    [Fact]
    public void A_forged_backup_whose_page_does_not_fit_its_checksum_is_refused()
    {
        using var book = new SmallBook();
        Backup.Write(book.Folder, File_, Noon);
        var parts = SealedZip.Parts(File_);
        parts[0] = (parts[0].Name, parts[0].Content, told => With(told, "sha", PageLine.Nothing));
        SealedZip.Write(File_, parts, SealedZip.HeadOf(File_));

        Refused().Should().Contain("pages/2026-03-04.jsonl in it is not as it was: its checksum does not fit");
        Nothing();
    }

    [Fact]
    public void A_forged_backup_with_a_bad_page_and_every_checksum_made_to_fit_is_refused_as_check_would()
    {
        using var book = new SmallBook().With(counts: 1);
        Backup.Write(book.Folder, File_, Noon);
        var parts = SealedZip.Parts(File_);
        var text = Encoding.UTF8.GetString(parts[0].Content).Replace("\"kept\":1", "\"kept\":9", StringComparison.Ordinal);
        SealedZip.Write(File_, [(parts[0].Name, Encoding.UTF8.GetBytes(text), null)], SealedZip.HeadOf(File_));

        Refused().Should().Contain("what is in it is no good book").And.Contain("2026-03-04.jsonl:4: the checksum does not fit");
        Nothing();
    }

    [Fact]
    public void Fewer_entries_than_it_says_are_refused()
    {
        using var book = new SmallBook().With(counts: 1);
        Backup.Write(book.Folder, File_, Noon);
        var parts = SealedZip.Parts(File_);
        var content = parts[0].Content;
        var cut = content[..(content.AsSpan(0, content.Length - 1).LastIndexOf((byte)'\n') + 1)];
        SealedZip.Write(File_, [(parts[0].Name, cut, null)], SealedZip.HeadOf(File_));

        Refused().Should().Contain("it says 4 entries and holds 3");
        Nothing();
    }

    [Fact]
    public void A_file_twice_one_unlisted_one_missing_and_no_list_at_all_are_refused()
    {
        using var book = new SmallBook();
        Backup.Write(book.Folder, File_, Noon);
        var (parts, head) = (SealedZip.Parts(File_), SealedZip.HeadOf(File_));

        SealedZip.Write(File_, [.. parts, .. parts], head);
        Refused().Should().Contain("twice");
        SealedZip.Write(File_, [.. parts, ("rehearsal.txt", [], _ => null)], head);
        Refused().Should().Contain("not those that backup.json lists");
        SealedZip.Write(File_, parts, all =>
        {
            all["files"]!.AsArray().Add(new JsonObject { ["name"] = "rehearsal.txt", ["bytes"] = 0, ["sha"] = PageLine.Nothing });
            return head(all);
        });
        Refused().Should().Contain("not those that backup.json lists");
        SealedZip.Write(File_, parts, _ => "");
        Refused().Should().Contain("it has no backup.json");
        Nothing();
    }

    [Theory]
    [InlineData("shopping list", "is not that of a backup")]
    [InlineData("[]", "is not that of a backup")]
    [InlineData("{}", "is not that of a backup")]
    [InlineData("{\"version\":\"2\"}", "is not that of a backup")]
    [InlineData("{\"version\":2}", "is not that of a backup")]
    [InlineData("{\"version\":2,\"version\":2,\"made\":\"2026-03-06T12:00:00-05:00\",\"book\":\"\",\"entries\":1,\"files\":[]}", "is not that of a backup")]
    [InlineData("{\"version\":2,\"made\":\"noon\",\"book\":\"\",\"entries\":1,\"files\":[]}", "is not that of a backup")]
    [InlineData("{\"version\":2,\"made\":\"2026-03-06T12:00:00-05:00\",\"book\":null,\"entries\":1,\"files\":[]}", "is not that of a backup")]
    [InlineData("{\"version\":2,\"made\":\"2026-03-06T12:00:00-05:00\",\"book\":\"\",\"entries\":1,\"files\":[null]}", "is not as such a file is written")]
    [InlineData("{\"version\":2,\"made\":\"2026-03-06T12:00:00-05:00\",\"book\":\"\",\"entries\":1,\"files\":[{\"name\":null,\"bytes\":0,\"sha\":\"\"}]}", "is not that of a backup")]
    [InlineData("{\"version\":2,\"made\":\"2026-03-06T12:00:00-05:00\",\"book\":\"\",\"entries\":1,\"files\":[],\"more\":1}", "is not that of a backup")]
    [InlineData("{\"version\":2,\"made\":\"2026-03-06T12:00:00-05:00\",\"book\":\"\",\"entries\":9999999999,\"files\":[]}", "is not that of a backup")]
    public void A_list_that_is_none_of_a_backup_is_refused(string manifest, string why)
    {
        SealedZip.Write(File_, [], _ => manifest);

        Refused().Should().Be($"The backup {File_} is refused: backup.json {why}. Nothing was written. Use another backup.");
        Nothing();
    }

    [Fact]
    public void A_part_longer_than_such_a_file_of_a_book_may_be_is_refused()
    {
        SealedZip.Write(File_, [("rehearsal.txt", new byte[4097], null)]);
        Refused().Should().Contain("rehearsal.txt has 4097 bytes; backup.json says 4097, and 4096 are allowed");
        SealedZip.Write(File_, [($"files/{PageLine.Nothing}", new byte[(20 << 20) + 1], null)]);
        Refused().Should().Contain("and 20971520 are allowed");
        Nothing();
    }

    [Fact]
    public void A_small_file_that_would_fill_the_disk_is_refused_before_anything_is_unpacked()
    {
        var zeros = new byte[70 << 20];
        SealedZip.Write(File_, [("pages/2026-03-04.jsonl", zeros, null)]);
        new FileInfo(File_).Length.Should().BeLessThan(200_000);

        Refused().Should().Contain("it would unpack to 73400320 bytes");
        Nothing();
    }

    [Fact]
    public void A_size_that_the_list_and_the_zip_tell_differently_is_refused()
    {
        SealedZip.Write(File_, [("pages/2026-03-04.jsonl", new byte[100], told => With(told, "bytes", 99))]);
        Refused().Should().Contain("has 100 bytes; backup.json says 99");
        SealedZip.Write(File_, [("pages/2026-03-04.jsonl", new byte[100], told => With(told, "bytes", long.MaxValue))]);
        Refused().Should().Contain("has 100 bytes");
        Nothing();
    }

    [Fact]
    public void A_backup_of_a_newer_version_is_named_as_one()
    {
        SealedZip.Write(File_, [("pages/2026-03-04.jsonl", new byte[100], null)], all => new JsonObject { ["version"] = 3, ["parts"] = all["files"]!.DeepClone() }.ToJsonString());

        Refused().Should().Contain("it is of version 3, and this program knows version 2: restore it with the version that made it, or a newer one");
        Nothing();
    }

    [Fact]
    public void Another_zip_file_an_empty_file_a_folder_and_no_file_are_refused_with_a_sentence()
    {
        using (var zip = ZipFile.Open(File_, ZipArchiveMode.Create))
        {
            zip.CreateEntry("letter.txt");
        }

        Refused().Should().Contain("or is no backup of this program");
        File.WriteAllBytes(File_, []);
        Refused().Should().Contain("or is no backup of this program");
        File.Delete(File_);
        Refused().Should().Be($"There is no backup {File_}.");
        Directory.CreateDirectory(File_);
        Refused().Should().StartWith($"The backup {File_} cannot be read: ");
        Nothing();
    }

    [Fact]
    public void An_empty_folder_gives_way_and_a_folder_that_holds_something_is_refused()
    {
        using var book = new SmallBook().With(counts: 1);
        Backup.Write(book.Folder, File_, Noon);
        Directory.CreateDirectory(Target.Path);

        Restore.Into(Target, File_);
        BookCheck.Of(Target).Entries.Should().Be(4);

        var before = File.ReadAllBytes(Target.Page(SmallDay.Date));
        var again = () => Spoken.By(() => Closeout.Commands.BackupCommand.Restore(Target, File_));
        again.Should().Throw<Closeout.Commands.UsageException>().WithMessage("*never written over anything*");
        File.ReadAllBytes(Target.Page(SmallDay.Date)).Should().Equal(before);
    }

    private string Refused()
    {
        try
        {
            Restore.Into(Target, File_);
            return "restored";
        }
        catch (BookException e)
        {
            return e.Message;
        }
    }

    private static JsonObject With(JsonObject told, string name, JsonNode value)
    {
        told[name] = value;
        return told;
    }

    /// <summary>Nothing was left behind, not even the folders above.</summary>
    private void Nothing() => Directory.EnumerateFileSystemEntries(temp.Path).Where(p => p != File_).Should().BeEmpty();
}
