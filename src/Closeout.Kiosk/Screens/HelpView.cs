using Closeout.DayBook;

namespace Closeout.Screens;

/// <summary>The keys and words of a screen, on one page.</summary>
public static class HelpView
{
    public static void Draw(Sheet sheet, Depot depot, HelpScreen s)
    {
        View.Head(sheet, depot, "HELP", "");
        var row = 2;
        foreach (var line in Lines(s.Back).SelectMany(l => l.Length == 0 ? [""] : Sheet.Wrap(l, sheet.Width - 4)))
        {
            sheet.Write(row++, 2, line);
        }

        View.Keys(sheet, "any key goes back");
    }

    private static string[] Lines(Screen screen) => screen switch
    {
        WallScreen =>
        [
            "The bay wall: every van in bay order, who has it, where its close-out stands, and what it is for the morning.",
            "",
            "Type or scan a van's code, or choose it with Up and Down, then Enter. A van on the road asks who brings it in; a van half way goes on where it was left; a signed van shows its card.",
            "",
            "ready: nothing odd was confirmed. ready, note: read the notes before you drive. HELD: it may not go out until a lead lifts the hold. not closed: somebody still has to close it out.",
            "The wall repeats what people confirmed. It does not say that a van is safe.",
            "",
            "F2 tomorrow's plan   F3 the yard: cardboard, container, other waste   F4 load the chosen van   F5 deliveries and corrections   F6 how well the plan did   F7 all of the chosen van, and a lead's desk for it   F8 the day book, and the end of the day   F9 people and their PINs   Ctrl+Q quit: nothing is lost.",
        ],
        CloseoutScreen =>
        [
            "One question at a time. The answer most likely right is in the field: Enter accepts it, typing replaces it, Tab goes to the next field, Up goes back.",
            "",
            "Leftovers: cartons still sealed aboard, loose units into the bin, loose units kept aboard. = says as booked; * says that for all items left. / and a piece of the name finds an item; so does scanning its label.",
            "Cardboard: one box for each carton emptied. Mileage: the odometer, and fuel if you filled. Damage: N none, D describe. Safety kit: count and dates. Weekly check: part by part, when it is due. F8 attaches pictures.",
            "",
            "PgUp goes to an earlier step to change it; what you answered later stays. Every Enter is on disk before the screen moves on, so Esc, a power cut or a closed window loses nothing that was confirmed.",
            "",
            "!! asks once more when an answer looks wrong. The same answer again is recorded.",
        ],
        WhoScreen => ["The technician who closes the van out. The roster's name is in the field; type or scan another code to replace it. Any technician may close out any van."],
        TomorrowScreen or WhyScreen =>
        [
            "What each van lacks for tomorrow and where it comes from: sealed cartons from the shelf, loose units from the leftovers bin, loose units from cartons opened at the depot.",
            "",
            "basis: low (the van's least), booked (the visits booked need more), high (they need more than the van may carry), lead (a lead changed it), payload (more would be too heavy for the van). short: the depot cannot fill it. ?: the van is not closed, so nobody counted.",
            "",
            "Enter says why: the bookings, the demand that follows from them, the promise, the limits, what is given from where, and the chance that it is missed. # bars are the chances of the demand.",
            "F4 loads the van, F5 changes the line: a lead's, with a reason. Type a piece of a name to see only that. closeout restock --out FILE writes all of it; closeout picks --out DIR makes sheets to print.",
        ],
        LoadScreen =>
        [
            "The van's pick list in stow order. Type what you really took; Enter confirms the item, = confirms all the rest as shown.",
            "Weight: what the stock aboard weighs now and with this load, and what the van's payload leaves for stock once crew and kit are taken off. A plan that would be too heavy is cut, least needed first; what was cut stands below. The scale and the van's placard know better than the book.",
            "Only this moves stock in the book. A short pick is kept, and what is left is planned for the others. A van is loaded after its close-out.",
        ],
        DeskScreen s => DeskHelp.Lines(s.Task),
        IssuedScreen => ["The PIN that was drawn stands on the screen behind, once: Enter there leaves it, and nobody sees it again. Its owner reads it now and writes it down where nobody else looks. Lost: issue another."],
        PinScreen =>
        [
            "What is recorded in your name needs your PIN. At the desk it is remembered for two minutes after the last thing recorded in it, and not beyond somebody else's sign-off; a signature asks always.",
            "",
            "After a wrong one the kiosk waits: 1, 2, 4 seconds, up to 30. Ten in a row lock the PIN: a lead resets it, F9 on the wall and R. A lead without a PIN gets one from another lead.",
            "A PIN of your own has eight characters or more; six digits are drawn for you with I. No date, no code or name, no card or social-security number, nothing repeated, in a row or along a row of keys.",
            "It proves who confirmed. It does not say that a van is safe. Fuel PINs, card numbers and social-security numbers have no place here.",
        ],
        PeopleScreen =>
        [
            "Everybody of the crew, and whether a PIN is set, locked, or none. C takes another in place of your own, which is asked first. R resets one: a technician then takes a new one at the next sign-off. I issues six digits, shown once. Both are a lead's, with code and PIN.",
            "",
            "The first lead's PIN was shown at set-up. While no other lead has one that works, closeout first-pin LEAD issues another.",
        ],
        AccuracyScreen =>
        [
            "For each priority: how often demand stayed within the plan's target, against what was promised. emptied: nothing was left, so demand may have been more. Judged by the close-outs of the day that was planned for.",
        ],
        VanScreen =>
        [
            "All there is to know of one van: why it is held, its open incidents and who was told, what is due and when, what to load.",
            "A lead: L lifts its holds, H puts it on hold, C closes an incident, W writes off boxes that nobody found. K checks a signed close-out (not one's own), R opens it again, B closes it out for somebody, M moves its bookings to another van, X excuses it from tonight. Each with a reason that stays in the book. Lifting a hold leaves its incident open until it is closed.",
        ],
        DayBookScreen => ["Everything confirmed on this business date, who and when, the newest first. Up and Down choose an entry: all of it stands below the list. Type a van, a person, an item or a word to see only that. Nothing is ever edited: a correction is a new entry. closeout audit --out FILE writes the whole book.", "F5 ends the business date: a lead's, once every van is closed out or explained."],
        AttachScreen => ["Type the name of a picture or of a folder; with an empty field the kiosk takes what lies in the folder inbox of the book. Each picture is copied into the book under its checksum; closeout photos --out DIR writes them out again, byte for byte."],
        CardboardScreen => ["Tab goes on: tonight, weeks, months, days, vans, items, other waste. B counts the boxes of cartons opened here, P records a pickup by the hauler, S ships a collecting box, W writes off boxes that nobody found (a lead).", "", "Boxes expected follow from the cartons emptied; flattened is what was counted. Weight follows from the box's size and board, volume from the depot's own density."],
        _ => throw new InvalidOperationException($"no help for {screen.GetType().Name}"),
    };
}
