namespace Closeout.Screens;

/// <summary>The help of a form: what it records, and what follows from that.</summary>
public static class DeskHelp
{
    private const string Keys = "Enter goes to the next field and records at the last, Up goes back, Esc leaves it: nothing is recorded then.";

    public static string[] Lines(DeskTask task) => [.. About(task), "", Keys + (IsLeads(task) ? " A lead's code, and that lead's PIN, stand under it." : " Your own code, and your PIN, stand under it.")];

    private static bool IsLeads(DeskTask task) => task is not (DeskTask.Delivery or DeskTask.Correction or DeskTask.DepotBoxes or DeskTask.Pickup or DeskTask.Ship);

    private static string[] About(DeskTask task) => task switch
    {
        DeskTask.Change =>
        [
            "A lead's change of one line of the plan, for one van and item, or of a whole van. T sets the target, M adds so many once, X leaves the van out, W withdraws what was changed.",
            "It stands for its date until it is withdrawn, however often the plan is made anew. An empty date is the plan's own.",
        ],
        DeskTask.Delivery =>
        [
            "A delivery goes onto the shelf, in sealed cartons, and fills the oldest order of the item. Type or scan the code on the carton label, then how many came.",
            "F5 changes to a corrected count.",
        ],
        DeskTask.Correction =>
        [
            "A corrected count makes the book follow what somebody counted: on the shelf sealed cartons, in the bin loose units, in a van either. One count at a time.",
            "The difference goes to unexplained, with your reason, and stays visible. F5 changes to a delivery.",
        ],
        DeskTask.Lift => ["A hold is lifted by a lead, with a reason that stays on the wall. All holds of the van are lifted; an incident stays open until it is closed, C on the van's page.", "The book repeats what people confirmed. It does not say that a van is safe."],
        DeskTask.Hold => ["A hold keeps a van in: the wall says HELD and the reason, until a lead lifts it, L on the van's page."],
        DeskTask.Close => ["An incident is closed once it was seen to, with how. Its number stands on the van's page. The hold that came of it ends with it."],
        DeskTask.WriteOff => ["Boxes that nobody found are no longer looked for. They count as expected and not as flattened, so that the totals stay true. With the field of boxes empty all of the item that are missing are written off."],
        DeskTask.DepotBoxes => ["Boxes of cartons that were opened here, at loading, one for each. What is typed replaces what was counted of the item tonight."],
        DeskTask.Pickup => ["The hauler emptied the container: it begins empty again. How full it was by eye, and what it weighed on the hauler's slip, if either is known; the book sets its own figure beside them."],
        DeskTask.Ship => ["A collecting box goes to a recycler: the next of its stream begins with the next piece. Who took it, and the number of the slip, stay in the book."],
        DeskTask.ResetPin => ["A PIN that is locked or forgotten is taken away, and its failures with it. A technician takes a new one at the next sign-off; to a lead another lead issues one, I on the same screen."],
        DeskTask.IssuePin =>
        [
            "Six digits are drawn and shown once, on the next screen: let their owner stand beside you. They are in no file. What the person had before opens nothing any more, and a lock is gone.",
            "Whoever has one takes another of his own with C on the same screen.",
        ],
        DeskTask.Check => ["Four eyes: a lead looks over a signed close-out, its card and the van's page, and confirms that. Whoever brought the van in or signed it cannot check it."],
        DeskTask.Reopen => ["A signed close-out goes back to its sign-off: every answer may be changed, and it must be signed again. Not once anything was loaded into the van: correct its counts then, F5 on the wall."],
        DeskTask.Behalf => ["A van is closed out for somebody who cannot: what was not answered is confirmed as booked, leftovers by the book, not driven, no damage, kit all there. The wall says so, with your name."],
        DeskTask.Excuse => ["A van that is not closed out tonight is explained, so that the day can end. Y: it never went out, so what the book has aboard is aboard. N: it is out or half way, and nobody counted it."],
        DeskTask.Move => ["Bookings of one date go from one van to another, all of them or those of one kind of visit. The plan follows at once, unless somebody changed it by hand."],
        DeskTask.EndDay => ["The business date ends once every van is closed out or explained. The next page takes over stock, odometers, holds, incidents, boxes missing and bookings. The page of today is never written again: there is no way back."],
        _ => throw new InvalidOperationException($"no help for {task}"),
    };
}
