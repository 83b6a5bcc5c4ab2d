using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>Pictures as files of the book.</summary>
public sealed class AttachmentsTests : IDisposable
{
    private static readonly byte[] Png = [0x89, .. "PNG\r\n\u001a\n"u8, 1, 2, 3];
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 9];
    private static readonly byte[] Heic = [0, 0, 0, 24, .. "ftypheic"u8, 7];

    private readonly TempFolder temp = new();
    private readonly BookFolder book;
    private readonly Attachments attachments;

    public AttachmentsTests()
    {
        book = new BookFolder(temp["book"]);
        Directory.CreateDirectory(book.Path);
        attachments = new Attachments(book);
    }

    [Fact]
    public void The_bytes_that_come_out_are_those_that_went_in()
    {
        foreach (var bytes in new[] { Png, Jpeg, Heic })
        {
            var taken = attachments.Take(Put("x.bin", bytes));
            attachments.Read(taken.Sha256).Should().Equal(bytes, "a name proves nothing, the first bytes do");
            taken.Bytes.Should().Be(bytes.Length);
        }
    }

    [Fact]
    public void The_same_bytes_are_one_file_however_often_they_come()
    {
        var first = attachments.Take(Put("a.png", Png));
        var again = attachments.Take(Put("b.png", Png));

        (again.Sha256, again.Name).Should().Be((first.Sha256, "b.png"));
        Directory.GetFiles(book.Files).Should().ContainSingle().Which.Should().EndWith(first.Sha256);
    }

    [Fact]
    public void A_picture_that_cannot_be_taken_out_of_the_inbox_is_a_sentence()
    {
        Directory.CreateDirectory(Path.Combine(book.Inbox, "stays.png"));

        attachments.Done(Path.Combine(book.Inbox, "stays.png")).Should()
            .StartWith($"{Path.Combine(book.Inbox, "stays.png")} cannot be taken out of the inbox: ").And.EndWith("Take it out by hand, or the next van gets it too.");
    }

    [NeedsFact(Needs.Pipe)]
    public async Task A_pipe_among_pictures_is_passed_over_and_nobody_waits_for_it()
    {
        Directory.CreateDirectory(book.Inbox);
        File.WriteAllBytes(Path.Combine(book.Inbox, "a.png"), Png);
        System.Diagnostics.Process.Start("mkfifo", [Path.Combine(book.Inbox, "pipe.png")])!.WaitForExit();

        (await Task.Run(() => Attachments.At(book.Inbox)).WaitAsync(TimeSpan.FromSeconds(20))).Should().Equal(Path.Combine(book.Inbox, "a.png"));
    }

    [NeedsFact(Needs.Unix)]
    public void The_end_of_a_name_is_kept_in_whole_characters_that_steer_no_terminal()
    {
        attachments.Take(Put("dent\u001b[2J\u202e.png", Png)).Name.Should().Be("dent·[2J·.png");
        attachments.Take(Put("\U0001F69A" + new string('x', 75) + ".png", Png)).Name.Should().Be("x".PadRight(75, 'x') + ".png");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(Attachments.MostBytes + 1)]
    public void Nothing_and_too_much_are_refused_with_both_numbers(long length)
    {
        var path = Put("x.png", Png);
        using (var file = File.OpenWrite(path))
        {
            file.SetLength(length);
        }

        attachments.Invoking(a => a.Take(path)).Should().Throw<BookException>().WithMessage($"*has {length} bytes*");
        Directory.Exists(book.Files).Should().BeFalse();
    }

    [Fact]
    public void The_largest_picture_is_taken()
    {
        var path = Put("x.png", Png);
        using (var file = File.OpenWrite(path))
        {
            file.SetLength(Attachments.MostBytes);
        }

        attachments.Take(path).Bytes.Should().Be(Attachments.MostBytes);
    }

    [Fact]
    public void What_only_looks_like_a_picture_by_its_name_is_refused() =>
        attachments.Invoking(a => a.Take(Put("page.png", [.. "<html>"u8]))).Should().Throw<BookException>().WithMessage("*is not a photo: allowed are JPEG, PNG, WebP and HEIC*");

    [Fact]
    public void A_file_cut_below_its_first_bytes_is_no_picture()
    {
        for (var length = 1; length < 8; length++)
        {
            attachments.Invoking(a => a.Take(Put("x.png", Png[..length]))).Should().Throw<BookException>();
        }
    }

    [Fact]
    public void A_file_that_is_not_there_is_told() =>
        attachments.Invoking(a => a.Take(temp["none.png"])).Should().Throw<BookException>().WithMessage("*none.png cannot be attached*");

    [Fact]
    public void Of_a_folder_the_pictures_are_taken_by_name_and_the_rest_is_left()
    {
        Put("inbox/b.png", Png);
        Put("inbox/a.heic", Heic);
        Put("inbox/list.txt", [.. "no picture"u8]);
        Put("inbox/empty.png", []);
        Put("inbox/below/c.png", Png);

        Attachments.At(temp["inbox"]).Select(Path.GetFileName).Should().Equal("a.heic", "b.png");
    }

    [Theory]
    [InlineData("none")]
    [InlineData("hollow")]
    [InlineData("")]
    public void Nothing_at_a_path_says_what_to_type(string path)
    {
        Directory.CreateDirectory(temp["hollow"]);
        FluentActions.Invoking(() => Attachments.At(path.Length == 0 ? "" : temp[path])).Should().Throw<BookException>().WithMessage("There is no photo at *Type the name of a photo*");
    }

    [Fact]
    public void A_picture_that_was_changed_or_is_gone_is_told_and_attaching_it_again_mends_it()
    {
        var sha = attachments.Take(Put("a.png", Png)).Sha256;
        var kept = Path.Combine(book.Files, sha);
        File.SetAttributes(kept, FileAttributes.Normal);
        File.WriteAllBytes(kept, [.. Png, 0]);
        attachments.Invoking(a => a.Read(sha)).Should().Throw<BookException>().WithMessage("*is not as it was attached*");

        attachments.Take(temp["a.png"]);
        attachments.Read(sha).Should().Equal(Png);

        File.Delete(kept);
        attachments.Invoking(a => a.Read(sha)).Should().Throw<BookException>().WithMessage("*cannot be read*Restore it from a backup*");
    }

    [Fact]
    public void Of_a_very_long_name_the_end_is_kept()
    {
        var name = new string('n', 90) + ".png";
        attachments.Take(Put(name, Png)).Name.Should().Be(name[^80..]);
    }

    public void Dispose() => temp.Dispose();

    private string Put(string name, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(temp[name])!);
        File.WriteAllBytes(temp[name], bytes);
        return temp[name];
    }
}
