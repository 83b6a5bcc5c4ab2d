namespace Closeout.Leads;

/// <summary>Why a lead's command was not recorded.</summary>
public static class LeadRefusal
{
    public static Refusal NotSignedYet(Van van) =>
        new("not-signed-yet", T($"{van.Code} {van.Name} is not signed off yet."));

    public static Refusal CheckedAlready(Van van, Code<Technician> by) =>
        new("checked-already", T($"{van.Code} {van.Name} was already checked by {by}."));

    public static Refusal OwnCloseout(Van van, Technician lead) =>
        new("own-closeout", T($"{lead.Code} {lead.Name} closed out {van.Code} {van.Name}. A second person must check it."));

    public static Refusal LoadedSince(Van van, int items) =>
        new("loaded-since",
            T($"{van.Code} {van.Name} was already loaded ({items} {(items == 1 ? T("item") : T("items"))}), so it cannot be reopened. "
                    + $"Correct its counts instead."));

    public static Refusal NothingToMove(Van from, Van to, DateOnly date, int visits) =>
        new("nothing-to-move",
            T($"{visits} booked {(visits == 1 ? T("visit") : T("visits"))} can move from {from.Code} {from.Name} to {to.Code} {to.Name} on "
                    + $"{date:yyyy-MM-dd}. Choose two different vans, and a date and kind that are booked."));

    public static Refusal VansOpen(IReadOnlyList<string> vans) =>
        new("vans-open", T($"Close or excuse each van first. Still open: {string.Join(", ", vans)}."));

    public static Refusal NotAfter(DateOnly next, DateOnly today) =>
        new("not-after",
            T($"The next date cannot be {next:yyyy-MM-dd}; today is {today:yyyy-MM-dd}. Type a later date."));

    public static Refusal TooFarAhead(DateOnly next, DateOnly today) =>
        new("too-far-ahead",
            T(
                $"{next:yyyy-MM-dd} is {next.DayNumber - today.DayNumber} days after {today:yyyy-MM-dd}. The limit is "
                    + $"{PlanningWindow.MostDaysAhead}, because there is no way back."));

    public static Refusal BroughtInBy(Van van, Technician broughtIn, Code<Technician> typed) =>
        new("brought-in-by",
            T(
                $"{van.Code} {van.Name} was brought in by {broughtIn.Code} {broughtIn.Name}, not {typed}. The close-out stays in that "
                    + $"name: type {broughtIn.Code}."));

    public static Refusal NotToTakeBack(int entry) =>
        new("not-to-take-back",
            T($"Entry {entry} cannot be taken back. Only tonight's loads, deliveries, pickups and shipped boxes can, while nothing was "
                + $"built on them. Else correct the count: F5 on the wall."));

    public static Refusal NotWhoRecorded(int entry, Code<Technician> by) =>
        new("not-who-recorded", T($"Entry {entry} was recorded by {by}. Only {by} or a lead takes it back."));

    public static Refusal WhichItem(int entry, IReadOnlyList<Code<Item>> items) =>
        new("which-item", T($"Entry {entry} has several items. Say which: {string.Join(", ", items)}."));

    public static Refusal NoLongerThere(int entry, Move gone, int left) =>
        new("no-longer-there",
            T($"Entry {entry} cannot be taken back: {gone.From} has {left} of {gone.Item} left, and {gone.Units} would go. Correct the "
                + $"count instead: F5 on the wall."));

    public static Refusal NextBoxBegun(int entry, WasteStream stream) =>
        new("next-box-begun",
            T($"Entry {entry} cannot be taken back: a new box of {stream.Description} has begun since. Tell the lead."));
}
