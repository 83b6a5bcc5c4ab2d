using Closeout.DayBook;
using Closeout.People;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>Asks for a PIN: dots, never the characters. A new one that was drawn is shown once.</summary>
public static class PinView
{
    private const int Field = 24;

    /// <param name="isTold">Whether a sentence below says already what was refused.</param>
    public static void Draw(Sheet sheet, Desk desk, PinScreen s, bool isTold)
    {
        var depot = desk.Depot;
        var person = depot.Setup.Find(s.Person)!;
        View.Head(sheet, depot, "PIN", View.Clock(desk.Now));
        sheet.Write(2, 3, $"{person.Code} {person.Name}{(person.IsLead ? ", lead" : "")}: {What(depot, s)}", Look.Strong);
        var row = 4;
        foreach (var line in About(s).SelectMany(a => Sheet.Wrap(a, sheet.Width - 6)))
        {
            sheet.Write(row++, 3, line);
        }

        var shown = new string('•', Math.Min(s.Typed.Length, Field));
        var column = sheet.Write(row + 1, 3, "> " + Label(s.Stage) + "  ");
        sheet.Write(row + 1, column, $"[{shown.PadRight(Field)}]", Look.Field);
        sheet.Caret = (row + 1, column + 1 + Math.Min(shown.Length, Field - 1));
        if (s.Stage == PinStage.Ask && !isTold && PinTries.Now(depot, person, s.Kiosk, desk.Now) is { } wait)
        {
            row += 3;
            foreach (var line in Sheet.Wrap(wait.Text, sheet.Width - 6))
            {
                sheet.Write(row++, 3, line);
            }
        }

        sheet.Write(sheet.Height - 4, 3, "A PIN says who confirmed. It does not say that a van is safe.", Look.Faint);
        sheet.Write(sheet.Height - 3, 3, "Never type a fuel card's PIN, a card number or a social-security number here.", Look.Faint);
        View.Keys(sheet, $"Enter {(s.Stage == PinStage.Ask ? "take it" : "next")}   Backspace back   F1 help   Esc leave it, nothing is recorded");
    }

    public static void Draw(Sheet sheet, Depot depot, IssuedScreen s)
    {
        var person = depot.Setup.Find(s.Person)!;
        View.Head(sheet, depot, "A NEW PIN", "");
        sheet.Write(3, 3, $"The PIN of {person.Code} {person.Name} is {s.Pin}", Look.Strong);
        sheet.Write(5, 3, "It is shown once. Let nobody but its owner read it, and write it down where");
        sheet.Write(6, 3, "nobody else looks. The old one, if there was one, opens nothing any more.");
        View.Keys(sheet, "Enter it was read: back");
    }

    private static string What(Depot depot, PinScreen s) => s.Back switch
    {
        _ when s.Then is ChangePinAct => s.Stage == PinStage.Ask ? "takes another PIN" : "a new PIN",
        CloseoutScreen c => $"signs {c.Van} {depot.Setup.Van(c.Van).Name}",
        _ => "confirms what was typed",
    };

    private static string Label(PinStage stage) => stage switch
    {
        PinStage.Ask => "PIN",
        PinStage.Choose => "New PIN",
        PinStage.Again => "Once more",
        PinStage.Drawn => "Type it",
        _ => throw new InvalidOperationException($"no such stage: {stage}"),
    };

    private static IEnumerable<string> About(PinScreen s) => s.Stage switch
    {
        PinStage.Ask when s.Then is ChangePinAct => ["Your present PIN, then Enter. The new one is asked next; until it is taken the present one opens."],
        PinStage.Ask => ["Your own PIN, then Enter. What follows is recorded in your name."],
        PinStage.Choose =>
        [
            s.Old is null ? "No PIN is set yet, and your name is yours alone only with one." : "The present PIN opens until the new one is taken.",
            "I and Enter issues six digits; or type eight or more characters of your own, and Enter.",
            "Not taken: one or two characters or a pattern again and again, 1234, abcd, qwerty and the like, dates, your own code or name, card and social-security numbers.",
        ],
        PinStage.Again => ["The same once more, then Enter."],
        PinStage.Drawn => [$"Your PIN is {s.Chosen}", "It is shown once. Write it down where nobody else looks, then type it here."],
        _ => throw new InvalidOperationException($"no such stage: {s.Stage}"),
    };
}
