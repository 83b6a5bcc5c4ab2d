using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

[Trait(Built.Starts, "closeout")]
public sealed class KioskWithoutTerminalTests
{
    [Fact]
    public void It_says_so_names_rehearse_and_exits_with_2()
    {
        using var temp = new TempFolder();
        Started.Closeout(temp.Path, "--book", "book", "load", SmallDay.Write(temp["day"])).Code.Should().Be(0);

        var kiosk = Started.Closeout(temp.Path, "--book", "book");

        kiosk.Code.Should().Be(2);
        kiosk.Err.Should().Contain("terminal").And.Contain("rehearse");
        kiosk.Out.Should().BeEmpty();
    }

    [Theory]
    [InlineData("--help", "rehearse")]
    [InlineData("--version", ".")]
    public void Help_and_version_are_told_as_everywhere(string option, string told)
    {
        using var temp = new TempFolder();

        Started.Closeout(temp.Path, option).Should().Match<Started>(s => s.Code == 0 && s.Out.Contains(told) && s.Err == "");
    }

    [Fact]
    public void Help_names_every_command_of_the_contract()
    {
        using var temp = new TempFolder();

        Started.Closeout(temp.Path, "--help").Out.Should().ContainAll("rehearse", "load", "wall", "restock", "shelf", "cardboard", "mileage", "check", "--book", "--date");
    }
}
