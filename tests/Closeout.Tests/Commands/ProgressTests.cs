using System.Text.RegularExpressions;
using Closeout.Commands;
using Closeout.Store;
using Closeout.Tests.Store;
using Closeout.Words;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>Whoever waits at a terminal is told how far a command is; nothing of it stays, and a pipe never gets it.</summary>
public sealed class ProgressTests
{
    private const string Clear = "\r\u001b[K";

    [Fact]
    public void Within_a_second_nothing_is_said_and_then_at_most_five_times_a_second()
    {
        var (clock, terminal) = (new StepClock(), new StringWriter());
        using var progress = new Progress(clock, terminal, () => 80);
        for (var tenth = 0; tenth <= 20; tenth++)
        {
            progress.Tell(() => $"at {tenth}");
            clock.Pass(0.1);
        }

        terminal.ToString().Should().Be(string.Concat(new[] { 10, 12, 14, 16, 18, 20 }.Select(t => $"{Clear}at {t}")));
    }

    [Fact]
    public void The_line_is_taken_away_once()
    {
        var (clock, terminal) = (new StepClock(), new StringWriter());
        using (var progress = new Progress(clock, terminal, () => 80))
        {
            clock.Pass(1);
            progress.Tell(() => "x");
            progress.Erase();
            progress.Erase();
        }

        terminal.ToString().Should().Be($"{Clear}x{Clear}");
    }

    [Theory]
    [InlineData(80, "a b·c")]
    [InlineData(4, "a b")]
    [InlineData(1, "")]
    [InlineData(0, "a b·c")]    // it does not say how wide it is
    public void The_line_fits_the_terminal_and_steers_nothing(int columns, string shown)
    {
        var (clock, terminal) = (new StepClock(), new StringWriter());
        using var progress = new Progress(clock, terminal, () => columns);
        clock.Pass(1);

        progress.Tell(() => "a b\nc");

        terminal.ToString().Should().Be(Clear + shown);
    }

    [Theory]
    [InlineData(0.25, 6)]
    [InlineData(0.9, 1)]
    [InlineData(1, 1)]
    [InlineData(0, 1)]
    public void What_is_left_goes_as_quickly_as_what_is_done(double done, int left)
    {
        var (clock, terminal) = (new StepClock(), new StringWriter());
        using var progress = new Progress(clock, terminal, () => 80);
        clock.Pass(2);

        progress.Tell(done, s => $"{s} s");

        terminal.ToString().Should().Be($"{Clear}{left} s");
    }

    [Fact]
    public void Without_a_terminal_no_sentence_is_made()
    {
        var clock = new StepClock();
        using var progress = new Progress(clock, null, () => 80);
        clock.Pass(10);

        progress.Tell(() => throw new InvalidOperationException("nobody looks"));
    }

    [Theory]
    [InlineData("en", @"Reading stock\.csv, file \d+ of \d+: 0 rows, about \d+ s left\.", "Writing the book.")]
    [InlineData("es", @"Leyendo stock\.csv, archivo \d+ de \d+: 0 filas, quedan unos \d+ s\.", "Escribiendo el libro.")]
    public void A_load_that_takes_long_says_file_rows_and_time_left_and_takes_it_away(string language, string reading, string writing)
    {
        using var temp = new TempFolder();
        var (day, terminal, target) = (SmallDay.Write(temp["day"]), new StringWriter(), BookFolder.At(temp["book"]));
        var daily = new DailyBackup(target, temp["backups"], 0, TimeProvider.System);

        var said = Spoken.By(() => Language.Choosing(language, () =>
            LoadCommand.Run(day, target, null, TimeProvider.System, daily, new Pins(1), new(new StepClock(1), terminal, () => 120))));

        said.Code.Should().Be(0);
        terminal.ToString().Should().MatchRegex(reading).And.Contain(writing).And.EndWith(Clear);
        (said.Out + said.Err).Should().NotContain("\u001b").And.NotMatchRegex(reading);
    }

    [Fact]
    public void A_rehearsal_that_takes_long_says_each_answer_and_file_and_takes_it_away()
    {
        using var temp = new TempFolder();
        var terminal = new StringWriter();

        var said = Spoken.By(() => RehearseCommand.Run(Repository.SampleDay, temp["out"], null, null, final: false, new(new StepClock(1), terminal, () => 120)));

        said.Code.Should().Be(0);
        terminal.ToString().Should().Contain("Playing the evening: answer 1 of ").And.Contain("Writing moves.csv, file 11 of 11.").And.EndWith(Clear);
        said.Err.Should().BeEmpty();
        Regex.Count(said.Out, "\u001b").Should().Be(0);
    }

    [Fact]
    public void A_check_that_takes_long_says_each_page()
    {
        using var book = new SmallBook();
        var terminal = new StringWriter();

        Spoken.By(() => CheckCommand.Run(book.Folder, new(new StepClock(1), terminal, () => 80))).Code.Should().Be(0);

        terminal.ToString().Should().Be($"{Clear}Checking the book: page 1 of 1, about 1 s left.{Clear}");
    }

    /// <summary>Stands until it is told, or goes on by so many seconds each time that somebody looks.</summary>
    private sealed class StepClock(double each = 0) : TimeProvider
    {
        private TimeSpan passed;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => (passed += TimeSpan.FromSeconds(each)).Ticks;

        public void Pass(double seconds) => passed += TimeSpan.FromSeconds(seconds);
    }
}
