namespace Closeout.Screens;

/// <summary>The keys and words of a screen, on one page.</summary>
public static class HelpView
{
    public static void Draw(Sheet sheet, HelpScreen s)
    {
        sheet.Write(0, 1, "HELP", Look.Strong);
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
            "F2 tomorrow's gaps   F3 cardboard totals   Ctrl+Q quit: nothing is lost.",
        ],
        CloseoutScreen =>
        [
            "One question at a time. The answer most likely right is in the field: Enter accepts it, typing replaces it, Tab goes to the next field, Up goes back.",
            "",
            "Leftovers: cartons still sealed aboard, loose units into the bin, loose units kept aboard. = says as booked; * says that for all items left. / and a piece of the name finds an item; so does scanning its label.",
            "Cardboard: one box for each carton emptied. Mileage: the odometer, and fuel if you filled. Damage: N none, D describe. Safety kit: count and date. Weekly check: when it is due.",
            "",
            "PgUp goes to an earlier step to change it; what you answered later stays. Every Enter is on disk before the screen moves on, so Esc, a power cut or a closed window loses nothing that was confirmed.",
            "",
            "!! asks once more when an answer looks wrong. The same answer again is recorded.",
        ],
        WhoScreen => ["The technician who closes the van out. The roster's name is in the field; type or scan another code to replace it. Any technician may close out any van."],
        TomorrowScreen =>
        [
            "What each van lacks for tomorrow and where it comes from: sealed cartons from the shelf, loose units from the leftovers bin, loose units from cartons opened at the depot.",
            "",
            "SHORT: the depot cannot fill it. provisional, or ?: the van is not closed; the numbers are the book's and nobody counted yet.",
            "Type a piece of a van's or an item's name to see only that. closeout restock --out FILE writes all of it.",
        ],
        CardboardScreen => ["Boxes expected follow from the cartons emptied; flattened is what was counted. Weight follows from the box's size and board, volume from the depot's own density."],
        _ => ["Esc goes back."],
    };
}
