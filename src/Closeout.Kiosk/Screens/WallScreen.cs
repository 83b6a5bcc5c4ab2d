using Closeout.Screens.Forms;
using Closeout.Screens.Parts;
using Closeout.Screens.People;
using Closeout.Screens.Yard;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>The lead's screen: all vans in bay order, and the depot's totals below.</summary>
/// <param name="Typed">A van's code or name, or who drives it, as far as typed or scanned.</param>
/// <param name="IsUrgentFirst">Whether the vans come first that somebody must see to; else in bay order.</param>
public sealed record WallScreen(int Selected = 0, string Typed = "", bool IsUrgentFirst = false) : Screen
{
    private const int LongestCode = 24;

    private WallScreen Here => this with { Typed = "" };

    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        var depot = scene.Depot;
        var last = depot.Setup.Vans.Count - 1;
        var chosen = Order(scene.Tonight)[Math.Min(Selected, last)].Van.Code;
        return
        [
            HelpKey(""),
            new(Keys.F(2), T("plan"), _ => new PlanScreen(Here)) { Help = T("tomorrow's plan") },
            new(Keys.F(3), T("recycling"),
                _ =>
                    new(this, Act: new OpenAct(w => YardScreen.Open(w, Here)))) { Help =
                        T("recycling: cardboard, container, other waste") },
            new(Keys.F(4), T("load"), _ => new LoadScreen(chosen, Form.None, Here)) { Help = T("load the chosen van") },
            new(Keys.F(5), T("stock"), _ => FormScreen.Of(StockForms.Delivery, scene, Here)) { Help = T("deliveries and corrections") },
            new(Keys.F(6), T("accuracy"), _ => new AccuracyScreen(Here)) { Help = T("how well the plan did") },
            new(Keys.F(7), T("van"), _ => new VanScreen(chosen, Here)) { Help = T("all of the chosen van, and a lead's desk for it") },
            new(Keys.F(8), T("day"),
                _ => new(this, Act: new OpenAct(w => DayBookScreen.Open(w, Here)))) { Help = T("the day book, and the end of the day") },
            new(Keys.F(9), T("PINs"), _ => new PeopleScreen(Here)) { Help = T("people and their PINs") },
            new(Keys.Of("^Q", Press.Quit), "", _ => this) { Help = T("(Ctrl+Q) quits: nothing is lost") },
            new(Keys.Enter, null, _ => Opened(scene.Tonight)) { Help = T("opens the van") },
            new(Keys.Tab, null, _ => this with { Selected = Math.Min(last, Selected + 1), Typed = "" }),
            new(Keys.Letter('*'), null, _ => this with { Selected = 0, IsUrgentFirst = !IsUrgentFirst })
                { Help = IsUrgentFirst ? T("vans in bay order") : T("vans first that somebody must see to") },
            new(Keys.Arrows, null,
                key =>
                    this with { Selected = key.Press == Press.End ? last : Math.Min(last, Scrolling.To(Selected, key.Press)), Typed = "" }),
            new(Keys.Backspace, null, _ => this with { Typed = Typed.Length > 0 ? Typed[..^1] : "" }),
            new(Keys.Escape, null, _ => this with { Typed = "" }),
            new(Keys.Typing, null, key => Typing(scene.Tonight, key.Character)),
        ];
    }

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T("The bay wall: every van in bay order, who has it, where its close-out stands, and what it is for the morning."),
        "",
        T(
            "Type or scan the code or name of a van, or your own code for the van you are rostered on; or choose with Up and Down. Enter "
                + "opens it. A van on the road asks who brings it in; a van half way goes on where it was left; a signed van shows its "
                + "card."),
        "",
        T(
            "READY: no problems reported. NOTES: read them before you drive. HELD: it may not go out until a lead lifts the hold. OPEN: "
                + "somebody still has to close it out."),
        T("The wall repeats what people confirmed. It does not say that a van is safe."),
    ];

    public override Reply Recorded(Scene scene, IReadOnlyList<ICommand> commands, string done) =>
        commands is [ComeIn come] ? CloseoutScreen.Open(scene.Depot, come.Van, Here) : base.Recorded(scene, commands, done);

    public override Screen Within(Depot depot) =>
        Selected < depot.Setup.Vans.Count ? this : this with { Selected = Math.Max(0, depot.Setup.Vans.Count - 1) };

    public override Screen Choosing(Depot depot, Code<Van> van) =>
        new WallScreen(depot.Setup.Vans.Index().Where(v => v.Item.Code == van).Select(v => v.Index).FirstOrDefault());

    protected override void Draw(Sheet sheet, Scene scene)
    {
        WallView.Draw(sheet, scene, Order(scene.Tonight), Selected);
        var column = sheet.Write(sheet.Height - 2, 1, T("Van to open: "));
        sheet.Write(sheet.Height - 2, column, $"[{(Typed.Length > 8 ? Typed[^8..] : Typed.PadRight(8))}]", Look.Field);
        sheet.Write(sheet.Height - 2, column + 12, T("code or name of a van, or your own code; Enter opens"), Look.Faint);
        sheet.Caret = (sheet.Height - 2, column + 1 + Math.Min(8, Typed.Length));
    }

    /// <summary>The vans in bay order, or those first that somebody must see to.</summary>
    private IReadOnlyList<VanState> Order(Tonight tonight) => IsUrgentFirst
        ? [
            .. tonight.Vans.OrderBy(v =>
                v.Morning switch { Morning.Held => 0, Morning.NotClosed => 1, Morning.ReadyWithNotes => 2, _ => 3 })]
        : tonight.Vans;

    private Reply Typing(Tonight tonight, char character)
    {
        if (Typed.Length >= LongestCode || char.IsControl(character) || (Typed.Length == 0 && character == ' '))
            return this;

        var typed = Typed + character;
        var at = Order(tonight).ToList().FindIndex(v => v.Van == Meant(tonight.Depot, typed));
        return this with { Typed = typed, Selected = at < 0 ? Selected : at };
    }

    /// <summary>
    /// The van that is meant: its code or name, as far as typed, or the code or name of who is rostered for it; null: none.
    /// </summary>
    private static Van? Meant(Depot depot, string typed)
    {
        bool Begins(string text) => text.StartsWith(typed, StringComparison.OrdinalIgnoreCase);
        return depot.Setup.Vans.FirstOrDefault(v => string.Equals(v.Code.Text, typed, StringComparison.OrdinalIgnoreCase))
            ?? depot.Setup.Vans.FirstOrDefault(v => Rostered(depot, v, typed) is not null)
            ?? depot.Setup.Vans.FirstOrDefault(v => Begins(v.Code.Text))
            ?? depot.Setup.Vans.FirstOrDefault(v => Begins(v.Name))
            ?? depot.Setup.Vans.FirstOrDefault(v => depot.Setup.Rostered(v.Code, depot.Date)?.Name.Split(' ')
                .Any(w => w.StartsWith(typed.TrimEnd(), StringComparison.OrdinalIgnoreCase)) == true);
    }

    /// <summary>Who is rostered for the van, where the code or the whole name was typed; null: another, or nobody.</summary>
    private static Technician? Rostered(Depot depot, Van van, string typed) => depot.Setup.Rostered(van.Code, depot.Date) is { } person
        && (string.Equals(person.Code.Text, typed, StringComparison.OrdinalIgnoreCase)
            || string.Equals(person.Name, typed.TrimEnd(), StringComparison.OrdinalIgnoreCase))
        ? person
        : null;

    private Reply Opened(Tonight tonight)
    {
        var depot = tonight.Depot;
        if (Typed.Length > 0 && Meant(depot, Typed) is null)
        {
            var person = depot.Setup.Crew.FirstOrDefault(c => Typed.Equals(c.Code.Text, StringComparison.OrdinalIgnoreCase)
                || Typed.TrimEnd().Equals(c.Name, StringComparison.OrdinalIgnoreCase));
            return new(this with { Typed = "" }, person is null
                ? T($"No van and nobody here is called {Typed}. Type a van's code or name, or your own code.")
                : T($"{person.Code} {person.Name} has no van today. Type the code or name of a van."));
        }

        var van = Typed.Length > 0 ? Meant(depot, Typed)! : Order(tonight)[Math.Min(Selected, depot.Setup.Vans.Count - 1)].Van;
        return depot.Shift(van.Code) is not null ? CloseoutScreen.Open(depot, van.Code, Here)
            : Typed.Length > 0 && Rostered(depot, van, Typed) is { } driver && van.Code.Text != driver.Code.Text
                ? new Reply(this, Act: new RecordAct([new ComeIn(van.Code, driver.Code)]))
            : new WhoScreen(van.Code, WhoScreen.Fields(depot, van.Code), Here);
    }
}
