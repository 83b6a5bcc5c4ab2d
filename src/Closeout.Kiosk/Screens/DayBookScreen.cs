using System.Globalization;
using Closeout.Screens.Forms;
using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>Who did what when, on the open business date, the newest first; below the list the chosen entry whole.</summary>
/// <param name="Back">The wall as it was left.</param>
/// <param name="Lines">Its entries in words, the newest first.</param>
/// <param name="Filter">Lines that do not contain it are left out.</param>
/// <param name="Selected">Of the lines left, the one that stands below them whole.</param>
public sealed record DayBookScreen(
    Screen Back, IReadOnlyList<(Recorded Recorded, DayBookLine Line)> Lines, string Filter = "", int Selected = 0) : Screen
{
    private const int LongestFilter = 24;

    /// <summary>Lines kept for the chosen entry, so that the list seldom changes its height.</summary>
    private const int Least = 2;

    public static DayBookScreen Open(World world, Screen back) => new(back, [.. DayBookWords.Of(world.Desk.Entries()).Reverse()]);

    public override IReadOnlyList<Binding> Bindings(Scene scene) =>
    [
        new(Keys.Typing, T("to filter"),
            key => Filter.Length < LongestFilter ? this with { Selected = 0, Filter = Filter + key.Character } : this),
        new(Keys.Arrows, T("choose"), key => this with { Selected = Scrolling.Within(Selected, key.Press, Filtered.Count) }),
        new(Keys.F(5), T("end the day"), _ => FormScreen.Of(DayForms.End, scene, Back)),
        new(Keys.F(4), T("take back"), _ => TakeBackForm.Of(scene, Back, MayGoBack(scene.Depot))) { Help = T("takes back an entry") },
        HelpKey(),
        new(Keys.Escape, T("back"), _ => Filter.Length > 0 ? this with { Filter = "", Selected = 0 } : Back),
        new(Keys.Backspace, null, _ => this with { Selected = 0, Filter = TextLine.WithoutLast(Filter) }),
    ];

    public override bool GivesWay => true;

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T(
            "Everything confirmed on this business date, who and when, the newest first. Up and Down choose an entry: all of it stands "
                + "below the list. Type a van, a person, an item or a word to see only that. Nothing is ever edited: a correction is a "
                + "new entry. closeout audit --out FILE writes the whole book."),
        T("F4 takes back the chosen entry: a load, a delivery, a pickup or a shipped box that was recorded by mistake tonight."),
        T("F5 ends the business date: a lead's, once every van is closed out or excused."),
    ];

    /// <summary>The lines that the filter leaves: a code that is just that, or a word in the sentence.</summary>
    private IReadOnlyList<(Recorded Recorded, DayBookLine Line)> Filtered => Filter.Length == 0
        ? Lines
        : [.. Lines.Where(l => Fits(l.Line))];

    private Recorded? Chosen => Filtered is { Count: > 0 } lines ? lines[Math.Clamp(Selected, 0, lines.Count - 1)].Recorded : null;

    /// <summary>The number of the chosen entry, where it may be taken back; null: it may not.</summary>
    private int? MayGoBack(Depot depot) => Chosen is { Number: var n } && Leads.TakeBack.Of(depot, n) is not null ? n : null;

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var lines = Filtered;
        Frame.Head(sheet, scene.Depot, T("DAY BOOK"), Spell.Count(lines.Count, T("entry"), T("entries")));
        sheet.Write(1, 1, T("entry  at     van   who   item             what"), Look.Faint);
        var at = Math.Clamp(Selected, 0, Math.Max(0, lines.Count - 1));
        var whole = lines.Count == 0 ? [] : Cells.Wrap(lines[at].Line.What, sheet.Width - 3);
        var below = Math.Max(Least, whole.Count);
        var room = Math.Max(1, sheet.Height - 5 - below);
        var top = Math.Clamp(at - room + 1, 0, Math.Max(0, lines.Count - room));
        foreach (var (row, (recorded, line)) in lines.Skip(top).Take(room).Index())
        {
            var look = top + row == at ? Look.Field : Look.Plain;
            sheet.Write(2 + row, 0, top + row == at ? ">" : " ", look);
            sheet.Write(2 + row, 1, recorded.Number.ToString(CultureInfo.InvariantCulture).PadLeft(5), look);
            sheet.Write(2 + row, 8, Spell.Clock(recorded.At), look);
            sheet.Write(2 + row, 15, line.Van ?? "-", look, 5);
            sheet.Write(2 + row, 21, line.Person ?? "-", look, 5);
            sheet.Write(2 + row, 27, line.Item ?? "-", look, 16);
            sheet.Write(2 + row, 44, Cells.Cut(line.What, sheet.Width - 45), look);
        }

        foreach (var (row, text) in whole.Index())
            sheet.Write(sheet.Height - 2 - below + row, 1, text);

        var column = sheet.Write(sheet.Height - 2, 1, T("Only: "));
        sheet.Write(sheet.Height - 2, column, $"[{Filter.PadRight(LongestFilter)}]", Look.Field);
        sheet.Write(sheet.Height - 2, column + 28, T("a van, a person, an item, or a word"), Look.Faint);
        sheet.Caret = (sheet.Height - 2, column + 1 + Filter.Length);
    }

    private bool Fits(DayBookLine line) =>
        new[] { line.Van, line.Person }.Any(c => string.Equals(c, Filter, StringComparison.OrdinalIgnoreCase))
        || line.What.Contains(Filter, StringComparison.OrdinalIgnoreCase)
        || (line.Item?.Contains(Filter, StringComparison.OrdinalIgnoreCase) ?? false);
}
