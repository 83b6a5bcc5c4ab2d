using System.Text.RegularExpressions;
using Closeout.Faults.Kill;
using Closeout.Tests.Commands;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>
/// What a person sees on a terminal of 80 x 24: the kiosk, as a program, on the book of the rehearsed sample day, against committed
/// pictures. They are made anew with UPDATE_GOLDEN=1, as those of <see cref="GoldenScreens"/>.
/// </summary>
[Trait(Built.Starts, "closeout")]
public sealed partial class SeenInTerminalTests(SampleDayTests.Rehearsed rehearsed) : IClassFixture<SampleDayTests.Rehearsed>
{
    [NeedsTheory(Needs.Terminal)]
    [InlineData("wall", "")]
    [InlineData("plan", "\u001bOQ")]
    [InlineData("weeks", "\u001b[13~\t")]
    [InlineData("who", "B5\r")]
    [InlineData("wall-es", "", "--language", "es")]
    public void A_screen_is_seen_as_its_picture(string name, string keys, params string[] options)
    {
        var picture = Repository.Golden("terminal", name + ".txt");
        using var terminal = new KioskInTerminal(rehearsed.Temp["out", "book"], options);
        terminal.Await(s => s.Contains("F1 F2", StringComparison.Ordinal), TimeSpan.FromSeconds(60)).Should().BeTrue(terminal.Seen);
        terminal.Type(keys);
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
        {
            Thread.Sleep(TimeSpan.FromSeconds(5));
            File.WriteAllText(picture, AtNoTime(terminal.Seen));
        }

        terminal.Await(s => AtNoTime(s) == File.ReadAllText(picture), TimeSpan.FromSeconds(30));

        AtNoTime(terminal.Seen).Should().Be(File.ReadAllText(picture));
    }

    /// <summary>Without what the clock of the machine changes: the time above, and how late the one van is that is out.</summary>
    private static string AtNoTime(string screen) => Late().Replace(Time().Replace(screen, "--:--", 1), m => "○".PadRight(m.Length));

    [GeneratedRegex("[0-9]{2}:[0-9]{2}(?=\n)")]
    private static partial Regex Time();

    [GeneratedRegex("○ [^A-Z]*")]
    private static partial Regex Late();
}
