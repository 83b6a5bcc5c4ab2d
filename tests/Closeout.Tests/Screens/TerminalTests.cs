using System.Diagnostics;
using System.Text.RegularExpressions;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>The real program in a pseudo-terminal: it leaves the terminal as it was found on every way out.</summary>
public sealed partial class TerminalTests
{
    private const string LeaveAlternateScreen = "\u001b[?1049l";
    private const string ShowCursor = "\u001b[?25h";

    private static string Program => string.Join(' ', Built.Words(Built.Closeout));

    [NeedsTheory(Needs.Terminal)]
    [InlineData("quit", 0)]
    [InlineData("TERM", 143)]
    [InlineData("INT", 130)]
    [InlineData("HUP", 129)]
    [Trait(Built.Starts, "closeout")]
    public void The_terminal_is_left_as_it_was_found(string way, int code)
    {
        using var folder = new TempFolder();
        using var kiosk = new SampleKiosk();
        using var pty = new Pty(folder, $"{Program} --book {kiosk.Folder.Path}");
        pty.Await("Van to open");

        _ = way == "quit" ? pty.Type("\u0011") : pty.Signal(way);

        pty.Code().Should().Be(code);
        pty.Seen.LastIndexOf(LeaveAlternateScreen, StringComparison.Ordinal).Should().BeGreaterThan(pty.Seen.LastIndexOf("Van to open", StringComparison.Ordinal));
        pty.Seen.LastIndexOf(ShowCursor, StringComparison.Ordinal).Should().BeGreaterThan(pty.Seen.LastIndexOf("\u001b[?25l", StringComparison.Ordinal));
        File.ReadAllText(pty.After).Should().Be(File.ReadAllText(pty.Before));
    }

    [NeedsTheory(Needs.Terminal)]
    [InlineData("")]
    [InlineData("trap \"\" HUP;")]
    [Trait(Built.Starts, "closeout")]
    public void A_cut_line_ends_the_program_soon_and_keeps_what_was_confirmed(string before)
    {
        using var folder = new TempFolder();
        using var kiosk = new SampleKiosk();
        using var pty = new Pty(folder, $"{Program} --book {kiosk.Folder.Path}", before);
        pty.Await("Van to open").Type("B3\r").Await("Who closes it out").Type("\r").Await("TALLY CARD");
        var id = pty.Id;

        pty.HangUp();

        var waited = Stopwatch.StartNew();
        while (Directory.Exists($"/proc/{id}") && waited.Elapsed.TotalSeconds < 10)
        {
            Thread.Sleep(50);
        }

        Directory.Exists($"/proc/{id}").Should().BeFalse("it does not spin on a terminal that is gone");
        Book.Open(kiosk.Folder).Depot.Shift(new("B3")).Should().NotBeNull();
    }

    [NeedsFact(Needs.Terminal)]
    [Trait(Built.Starts, "closeout")]
    public void With_nothing_on_its_standard_input_it_takes_the_keys_of_the_terminal_and_stays()
    {
        using var folder = new TempFolder();
        using var kiosk = new SampleKiosk();
        using var pty = new Pty(folder, $"{Program} --book {kiosk.Folder.Path} < /dev/null", "DOTNET_GCgen0size=0x10000");
        pty.Await("Van to open");

        // Memory is collected at every turn here: the handle of the terminal must be held by somebody.
        Thread.Sleep(TimeSpan.FromSeconds(4));

        pty.Type("B3\r").Await("Who closes it out").Type("\u0011").Code().Should().Be(0);
    }

    [NeedsFact(Needs.Terminal)]
    [Trait(Built.Starts, "closeout")]
    public void A_scanner_and_a_typist_close_out_a_van_through_the_real_program()
    {
        using var folder = new TempFolder();
        using var kiosk = new SampleKiosk();
        using var pty = new Pty(folder, $"{Program} --book {kiosk.Folder.Path}");
        pty.Await("Van to open").Type("B3\r").Await("Who closes it out").Type("T14\r").Await("item 1 of 21");

        pty.Type("LED-G25\r").Await("item 14 of 21").Type("1\r").Type("4\r").Type("0\r").Await("GAP 2");
        pty.Type("*").Await("again").Type("*").Await("Flatten and count").Type("=").Await("Odometer now").Type("28153\r\r").Await("Walk once").Type("n").Await("safety kit there")
            .Type("=").Await("Sign with your code").Type("\r").Await("Your own PIN").Type(kiosk.PinOf("T14") + "\r").Await("Good night").Type("\u0011");

        pty.Code().Should().Be(0);
        var depot = Book.Open(kiosk.Folder).Depot;
        depot.Shift(new("B3"))!.IsClosed.Should().BeTrue();
        depot.Shift(new("B3"))!.Technician.Text.Should().Be("T14");
        depot.Shift(new("B3"))!.Counts[new("LED-G25")].Gap.Should().Be(2);
    }

    [NeedsFact(Needs.Terminal)]
    [Trait(Built.Starts, "closeout")]
    public void What_is_pasted_is_typed_its_line_end_is_no_Enter_and_an_emoji_is_refused_with_a_word()
    {
        using var folder = new TempFolder();
        using var kiosk = new SampleKiosk();
        using var pty = new Pty(folder, $"{Program} --book {kiosk.Folder.Path}");
        pty.Await("Van to open").Type("\U0001F690").Await("U+FFFF");

        pty.Type("\u001b[200~B3\r\u001b[201~").Type("\r").Await("Who closes it out").Type("\u001b[200~T14\r\n\u001b[201~").Type("\r").Await("item 1 of 21").Type("\u0011");

        pty.Code().Should().Be(0);
        Book.Open(kiosk.Folder).Depot.Shift(new("B3"))!.Technician.Text.Should().Be("T14", "the roster's name stood there until the paste replaced it");
    }

    [NeedsTheory(Needs.Terminal)]
    [InlineData("NO_COLOR=1", "", false)]
    [InlineData("TERM=dumb", "", false)]
    [InlineData("", "--no-color", false)]
    [InlineData("NO_COLOR=", "", true)]
    [Trait(Built.Starts, "closeout")]
    public void Colors_are_the_terminals_own_sixteen_and_none_where_none_are_wanted(string environment, string option, bool sent)
    {
        using var folder = new TempFolder();
        using var kiosk = new SampleKiosk();
        using var pty = new Pty(folder, $"{Program} --book {kiosk.Folder.Path} {option}", environment);
        pty.Await("Van to open").Type("B9\r").Await("No van").Type("\u0011");

        pty.Code().Should().Be(0);
        ColourCode().Matches(pty.Seen).Should().HaveCountGreaterThanOrEqualTo(sent ? 1 : 0).And.HaveCountLessThanOrEqualTo(sent ? int.MaxValue : 0);
        OtherColour().Matches(pty.Seen).Should().BeEmpty("a color by number or by its parts would not follow the terminal's theme");
    }

    [NeedsFact(Needs.Terminal)]
    public void An_error_of_our_own_is_told_on_the_restored_terminal()
    {
        using var folder = new TempFolder();
        using var pty = new Pty(folder, string.Join(' ', Built.Words(Built.Appender)) + " faulty-kiosk");
        pty.Await("Van to open").Type("\u001b[13~");

        pty.Code().Should().NotBe(0);
        pty.Seen.IndexOf("NullReferenceException", StringComparison.Ordinal).Should()
            .BeGreaterThan(pty.Seen.LastIndexOf(LeaveAlternateScreen, StringComparison.Ordinal), "the error stands behind the restored screen");
        File.ReadAllText(pty.After).Should().Be(File.ReadAllText(pty.Before));
    }

    /// <summary>Select-graphic-rendition codes that name one of the sixteen colors: 30-37, 40-47, 90-97, 100-107.</summary>
    [GeneratedRegex(@"\x1b\[(?:[0-9;]*;)?(?:3[0-7]|4[0-7]|9[0-7]|10[0-7])(?:;[0-9;]*)?m")]
    private static partial Regex ColourCode();

    /// <summary>Codes that name a color beyond them: 38 and 48.</summary>
    [GeneratedRegex(@"\x1b\[(?:[0-9;]*;)?[34]8;[0-9;]*m")]
    private static partial Regex OtherColour();
}
