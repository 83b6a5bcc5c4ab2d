using Closeout.Commands;
using Closeout.Words;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>Which language a command speaks: the one named, else the depot's.</summary>
public sealed class LanguageOptionTests : IDisposable
{
    private readonly TempFolder folder = new();

    [Fact]
    public void A_rehearsal_speaks_the_language_that_is_named_and_writes_the_same_files()
    {
        Rehearse(Repository.SampleDay, "en").Out.Should().Contain("BAY WALL");
        Rehearse(Repository.SampleDay, "es", "--language", "es").Out.Should().Contain("TABLERO").And.NotContain("BAY WALL");

        foreach (var file in Directory.EnumerateFiles(folder["en"], "*.csv"))
            File.ReadAllText(Path.Combine(folder["es"], Path.GetFileName(file))).Should().Be(File.ReadAllText(file), Path.GetFileName(file));
    }

    [Fact]
    public void Without_one_it_speaks_the_depots()
    {
        var day = SmallDay.Write(folder["day"]);
        File.AppendAllText(Path.Combine(day, "depot.csv"), "language,es\n");

        Rehearse(day, "out").Out.Should().Contain("TABLERO");
        Rehearse(day, "named", "--language", "en").Out.Should().Contain("BAY WALL", "what is named outranks it");
    }

    [Fact]
    public void A_command_over_a_book_speaks_the_language_of_its_depot()
    {
        var day = SmallDay.Write(folder["day"]);
        File.AppendAllText(Path.Combine(day, "depot.csv"), "language,es\n");

        Run("--book", folder["book"], "load", day).Out.Should().Contain("quedó lista").And.Contain("PIN");
        Run("--book", folder["book"], "wall").Out.Should().Contain("TABLERO");
        Run("--book", folder["book"], "photos", "--out", folder["photos"]).Out.Should().StartWith("Escrito");
    }

    [Fact]
    public void A_language_that_there_is_not_is_refused_with_those_that_there_are()
    {
        var said = Rehearse(Repository.SampleDay, "out", "--language", "fr");

        (said.Code, said.Err).Should().Be((2, $"--language is none: found fr, allowed en, es.{Environment.NewLine}"));
    }

    [Theory]
    [InlineData("es", "wall", "--language", "es")]
    [InlineData("es", "--language=es", "--help")]
    [InlineData(null, "--language")]
    [InlineData(null, "--language", "fr")]
    [InlineData(null, "wall")]
    public void The_help_looks_for_it_among_the_arguments(string? language, params string[] args) => Language.NamedIn(args).Should().Be(language);

    public void Dispose() => folder.Dispose();

    private Spoken Rehearse(string day, string into, params string[] more) => Run([.. more, "rehearse", day, "--out", folder[into]]);

    private static Spoken Run(params string[] args) => Spoken.By(() =>
        CommandLine.Build(TimeProvider.System).Parse(args).Invoke(new() { EnableDefaultExceptionHandler = false }));
}
