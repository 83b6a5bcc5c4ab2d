using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

[Trait(Built.Starts, "closeout")]
public sealed class OddNamesTests
{
    [Theory]
    [InlineData("--book", "book", "restock", "--out", "")]
    [InlineData("--book", "book", "mileage", "--out", "")]
    [InlineData("rehearse", "day", "--out", "")]
    [InlineData("rehearse", "day", "--out", "out", "--book", "")]
    [InlineData("--book", "", "load", "day")]
    public void An_empty_name_is_bad_usage_and_no_crash(params string[] args)
    {
        using var temp = new TempFolder();
        SmallDay.Write(temp["day"]);
        if (args[^1].Length == 0 && args[0] == "--book")
        {
            Started.Closeout(temp.Path, "--book", "book", "load", "day").Code.Should().Be(0);
        }

        var before = Everything(temp);

        var said = Started.Closeout(temp.Path, args);

        said.Code.Should().Be(2);
        said.Err.Should().NotContain("   at ").And.NotBeEmpty();
        Everything(temp).Should().Equal(before, "the working folder is not a book");
    }

    [Theory]
    [InlineData("mine.new", "--book", "mine")]
    [InlineData("out/book.new", "--out", "out")]
    public void A_folder_that_happens_to_be_named_like_a_book_and_new_is_not_touched(string folder, params string[] args)
    {
        using var temp = new TempFolder();
        SmallDay.Write(temp["day"]);
        Directory.CreateDirectory(temp[folder]);
        File.WriteAllText(temp[folder, "letter.txt"], "Dear diary");
        string[] named = args[0] == "--out" ? args : ["--out", "out", .. args];

        Started.Closeout(temp.Path, ["rehearse", "day", .. named]);

        File.Exists(temp[folder, "letter.txt"]).Should().BeTrue("nobody said that it may be deleted");
    }

    private static IEnumerable<string> Everything(TempFolder temp) => Directory.EnumerateFileSystemEntries(temp.Path, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal);
}
