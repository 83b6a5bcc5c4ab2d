using System.Text.RegularExpressions;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>Names that could steer a terminal, through the program itself.</summary>
public sealed partial class SayTests
{
    private const string Odd = "a\x1b[2J\rb\u202e\u009bc";

    [Theory]
    [InlineData("--book", Odd, "check")]
    [InlineData("--book", Odd, "wall")]
    [InlineData("--book", "none", "restore", Odd)]
    [InlineData("--book", Odd, "backup", "--out", "x.zip")]
    [InlineData("load", Odd)]
    [InlineData("rehearse", "day", "--out", "day/kit.csv/" + Odd)]
    [InlineData("--date", Odd, "wall")]
    [InlineData("first-pin", Odd)]
    [InlineData(Odd)]
    [InlineData("wall", "--" + Odd)]
    [Trait(Built.Starts, "closeout")]
    public void A_name_given_as_an_argument_is_told_harmless(params string[] args)
    {
        using var temp = new TempFolder();
        SmallDay.Write(temp["day"]);

        var said = Started.Closeout(temp.Path, args);

        said.Code.Should().BeOneOf(2, 3);
        Harmful().IsMatch(said.Out + said.Err).Should().BeFalse(said.Out + said.Err);
        said.Err.Should().NotContain("   at ");
    }

    [NeedsFact(Needs.Unix)]
    [Trait(Built.Starts, "closeout")]
    public void Names_in_a_book_and_beside_its_pages_are_told_harmless()
    {
        using var temp = new TempFolder();
        SmallDay.Write(
            temp["day"],
            ("depot.csv", SmallDay.Text("depot.csv").Replace("Small Row", "\"Small\rRow\u202e\"", StringComparison.Ordinal)),
            ("vans.csv", SmallDay.Text("vans.csv").Replace("Knot", "\"Kn\rot\u2066\"", StringComparison.Ordinal)));
        string[] book = ["--book", "book"];
        var said = Started.Closeout(temp.Path, [.. book, "load", "day"]).Out;
        File.WriteAllText(temp["book", "pages", "odd\x1b[2J.txt"], "");

        said += Started.Closeout(temp.Path, [.. book, "check"]).Out;
        said += Started.Closeout(temp.Path, [.. book, "wall", "--final"]) is var wall ? wall.Out + wall.Err : "";
        said += Started.Closeout(temp.Path, [.. book, "audit", "--out", "-"]).Out;

        said.Should().Contain("Set up Small·Row·").And.Contain("B1 Kn·ot· is not closed");
        Harmful().IsMatch(said).Should().BeFalse();
    }

    [Fact]
    public void No_command_writes_a_sentence_but_by_Say() =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "Closeout.Kiosk"), "*.cs", SearchOption.AllDirectories)
            .Where(f => File.ReadAllText(f) is var code && (code.Contains("Console.Error", StringComparison.Ordinal) || code.Contains("Console.Out.WriteLine", StringComparison.Ordinal)))
            .Select(Path.GetFileName).Should().Equal("Say.cs");

    [GeneratedRegex("[\u0000-\u0009\u000b-\u000c\u000e-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]|\r(?!\n)")]
    private static partial Regex Harmful();
}
