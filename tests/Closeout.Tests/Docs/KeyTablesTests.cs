using System.Text.RegularExpressions;
using Closeout.Screens.Parts;
using Closeout.Tests.Screens;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>The tables of keys in the guides, each under a comment that names its screens, against the bindings of those screens.</summary>
public sealed partial class KeyTablesTests
{
    /// <summary>The ways to the screens of a table: keys pressed from the wall.</summary>
    private static readonly Dictionary<string, string[]> Ways = new()
    {
        ["wall"] = [""],
        ["van"] = ["B4{F7}"],
        ["people"] = ["{F9}"],
        ["yard"] = ["{F3}"],
        ["closeout"] = ["B3{Enter}{Enter}", "B3{Enter}{Enter}**", "B3{Enter}{Enter}**=", "B2{Enter}{Enter}**==n="],
    };

    private static readonly string[] Guides = ["lead.md", "technician.md"];

    public static IEnumerable<object[]> Tables => Guides.SelectMany(g => Table().Matches(Read(g)).Select(m => new object[] { g, m.Groups["name"].Value }));

    [Fact]
    public void Every_way_has_its_table() => Tables.Select(t => t[1]).Should().BeEquivalentTo(Ways.Keys);

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_key_of_a_table_is_one_of_its_screens(string guide, string name) =>
        Told(guide, name).Where(key => !Bindings(name).Any(b => b.Keys.Fit(Stroke(key)))).Should().BeEmpty();

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_key_that_a_key_line_tells_is_in_the_table(string guide, string name)
    {
        string[] everywhere = ["F1", "Esc", "Tab", "Up", "Down"];
        var told = Told(guide, name).Except(everywhere).Select(Stroke).ToList();

        Bindings(name).Where(b => b.Line is not null && !everywhere.Any(k => b.Keys.Fit(Stroke(k))) && !told.Any(b.Keys.Fit))
            .Select(b => b.Keys.Name).Should().BeEmpty();
    }

    private static List<Binding> Bindings(string name) => [.. Ways[name].SelectMany(way =>
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(way);
        return kiosk.Session.Model.Screen.Bindings(new(kiosk.Session.Desk.Tonight, kiosk.Clock.GetLocalNow(), ""));
    })];

    private static IEnumerable<string> Told(string guide, string name) => Table().Matches(Read(guide)).Single(m => m.Groups["name"].Value == name)
        .Groups["rows"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries).SelectMany(row => row.Split('|')[1].Split(',', StringSplitOptions.TrimEntries));

    private static Keystroke Stroke(string key) => key switch
    {
        "Ctrl+Q" => new(Press.Quit),
        "Esc" => new(Press.Escape),
        "PgUp" => new(Press.PageUp),
        "PgDn" => new(Press.PageDown),
        [var character] => new(Press.Character, character),
        _ => new(Enum.Parse<Press>(key)),
    };

    private static string Read(string guide) =>
        File.ReadAllText(Path.Combine(Repository.Root, "docs", "user-guide", guide)).ReplaceLineEndings("\n");

    [GeneratedRegex("^<!-- keys: (?<name>\\w+) -->\n\\| key .*\n.*\n(?<rows>(?:\\|.*\n)+)", RegexOptions.Multiline)]
    private static partial Regex Table();
}
