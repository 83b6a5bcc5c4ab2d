using Closeout.Screens.Forms;
using Closeout.Screens.Parts;
using Closeout.Screens.People;
using Closeout.Screens.Yard;

namespace Closeout.Screens;

/// <summary>The lead's screen: all vans in bay order, and the depot's totals below.</summary>
/// <param name="Typed">A van's code, as far as typed or scanned.</param>
public sealed record WallScreen(int Selected = 0, string Typed = "") : Screen
{
    private const int LongestCode = 24;

    private WallScreen Here => new(Selected);

    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        var depot = scene.Depot;
        var last = depot.Setup.Vans.Count - 1;
        Code<Van> chosen = depot.Setup.Vans[Math.Min(Selected, last)].Code;
        return
        [
            HelpKey(),
            new(Keys.F(2), "plan", _ => new PlanScreen(Here)) { Help = "tomorrow's plan" },
            new(Keys.F(3), "yard",
                _ => new(this, Act: new OpenAct(w => YardScreen.Open(w, Here)))) { Help = "the yard: cardboard, container, other waste" },
            new(Keys.F(4), "load", _ => new LoadScreen(chosen, Form.None, Here)) { Help = "load the chosen van" },
            new(Keys.F(5), "stock", _ => FormScreen.Of(StockForms.Delivery, scene, Here)) { Help = "deliveries and corrections" },
            new(Keys.F(6), "record", _ => new AccuracyScreen(Here)) { Help = "how well the plan did" },
            new(Keys.F(7), "van", _ => new VanScreen(chosen, Here)) { Help = "all of the chosen van, and a lead's desk for it" },
            new(Keys.F(8), "day",
                _ => new(this, Act: new OpenAct(w => DayBookScreen.Open(w, Here)))) { Help = "the day book, and the end of the day" },
            new(Keys.F(9), "PINs", _ => new PeopleScreen(Here)) { Help = "people and their PINs" },
            new(Keys.Of("^Q", Press.Quit), "", _ => this) { Help = "(Ctrl+Q) quits: nothing is lost" },
            new(Keys.Enter, null, _ => Opened(depot)) { Help = "opens the van" },
            new(Keys.Tab, null, _ => new WallScreen(Math.Min(last, Selected + 1))),
            new(Keys.Arrows, null,
                key => new WallScreen(key.Press == Press.End ? last : Math.Min(last, Scrolling.To(Selected, key.Press)))),
            new(Keys.Backspace, null, _ => this with { Typed = Typed.Length > 0 ? Typed[..^1] : "" }),
            new(Keys.Escape, null, _ => this with { Typed = "" }),
            new(Keys.Typing, null, key => Typing(depot, key.Character)),
        ];
    }

    public override IEnumerable<string> Help(Scene scene) =>
    [
        "The bay wall: every van in bay order, who has it, where its close-out stands, and what it is for the morning.",
        "",
        "Type or scan a van's code, or choose it with Up and Down, then Enter. A van on the road asks who brings it in; a van half way "
            + "goes on where it was left; a signed van shows its card.",
        "",
        "ready: nothing odd was confirmed. ready, note: read the notes before you drive. HELD: it may not go out until a lead lifts the "
            + "hold. not closed: somebody still has to close it out.",
        "The wall repeats what people confirmed. It does not say that a van is safe.",
    ];

    public override Screen Within(Depot depot) =>
        Selected < depot.Setup.Vans.Count ? this : new WallScreen(Math.Max(0, depot.Setup.Vans.Count - 1));

    public override Screen Choosing(Depot depot, Code<Van> van) =>
        new WallScreen(Math.Max(0, depot.Setup.Vans.Index().Where(v => v.Item.Code == van).Select(v => v.Index).FirstOrDefault()));

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var (depot, vans) = (scene.Depot, scene.Tonight.Vans);
        Frame.Head(sheet, depot, "BAY WALL", $"{WallWords.Closed(vans)} {Spell.Clock(scene.Now)}");
        sheet.Write(1, 1, "bay van             with   where it stands            morning", Look.Faint);

        var totals = Totals(sheet, scene.Tonight);
        var detail = Cells.Wrap($"{vans[Selected].Van.Code}: {WallWords.Morning(vans[Selected])}", sheet.Width - 4, 2);
        var room = Math.Max(1, sheet.Height - 6 - totals.Count - detail.Count);
        var top = Math.Clamp(Selected - room + 1, 0, Math.Max(0, vans.Count - room));
        for (var row = 0; row < room && top + row < vans.Count; row++)
        {
            var (state, here) = (vans[top + row], top + row == Selected);
            var look = here ? Look.Field : Look.Plain;
            sheet.Write(2 + row, 0, $"{(here ? ">" : " ")}{state.Van.Bay,3} ", look);
            sheet.Write(2 + row, 5, $"{state.Van.Code} {state.Van.Name}".PadRight(16), look, 15);
            sheet.Write(2 + row, 21, (state.With?.Text ?? "-").PadRight(6), look, 6);
            sheet.Write(2 + row, 28, WallWords.Where(depot, state, scene.Now).PadRight(26), look, 26);
            sheet.Write(2 + row, 55, WallWords.Morning(state), look);
        }

        var at = sheet.Height - 3 - totals.Count - detail.Count;
        foreach (var line in detail.Concat(totals))
            sheet.Write(at++, 1, line);

        var column = sheet.Write(sheet.Height - 2, 1, "Van to open: ");
        sheet.Write(sheet.Height - 2, column, $"[{Typed.PadRight(8)}]", Look.Field);
        sheet.Write(sheet.Height - 2, column + 12, "type or scan its code, or the arrows; Enter opens", Look.Faint);
        sheet.Caret = (sheet.Height - 2, column + 1 + Typed.Length);
    }

    private static List<string> Totals(Sheet sheet, Tonight tonight)
    {
        var lines = new List<string>();
        foreach (var (word, sentence) in tonight.Totals)
        {
            var begin = word.PadRight(11);
            foreach (var line in Cells.Wrap(sentence, sheet.Width - 14, 3))
            {
                lines.Add(begin + line);
                begin = new string(' ', 11);
            }
        }

        return lines;
    }

    private Reply Typing(Depot depot, char character)
    {
        if (Typed.Length >= LongestCode || !Code<Van>.IsValid(character.ToString()))
            return this;

        var typed = Typed + character;
        var fits = depot.Setup.Vans.Index().Where(v => v.Item.Code.Text.StartsWith(typed, StringComparison.OrdinalIgnoreCase));
        return new WallScreen(fits.Select(v => v.Index).FirstOrDefault(Selected), typed);
    }

    private Reply Opened(Depot depot)
    {
        var typed = Code<Van>.IsValid(Typed) ? new Code<Van>(Typed) : default;
        if (Typed.Length > 0 && depot.Setup.Find(typed) is null)
            return new(this with { Typed = "" }, Refusal.NoSuchVan(typed).Text);

        var van = Typed.Length > 0 ? depot.Setup.Find(typed)! : depot.Setup.Vans[Math.Min(Selected, depot.Setup.Vans.Count - 1)];
        return depot.Shift(van.Code) is null
            ? new WhoScreen(van.Code, WhoScreen.Fields(depot, van.Code), Here)
            : CloseoutScreen.Open(depot, van.Code, Here);
    }
}
