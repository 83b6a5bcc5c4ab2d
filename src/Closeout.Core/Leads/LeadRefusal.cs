using System.Globalization;

namespace Closeout.Leads;

/// <summary>Why a lead's command was not recorded.</summary>
public static class LeadRefusal
{
    public static Refusal NotSignedYet(Van van) =>
        new("not-signed-yet",
            $"{van.Code} {van.Name} has 0 signed close-outs tonight, and 1 is needed. Choose a van that the wall shows as closed.");

    public static Refusal CheckedAlready(Van van, Code<Technician> by) =>
        new("checked-already", $"{van.Code} {van.Name} was checked by {by}: 1 check is enough. Choose another van.");

    public static Refusal OwnCloseout(Van van, Technician lead) =>
        new("own-closeout", $"{lead.Code} {lead.Name} closed out {van.Code} {van.Name}, and a check needs 2 people. Ask another lead.");

    public static Refusal LoadedSince(Van van, int items) =>
        new("loaded-since",
            $"{items} {(items == 1 ? "item was" : "items were")} loaded into {van.Code} {van.Name} since it was signed, and 0 may be "
                + "when it is reopened. Correct its counts instead.");

    public static Refusal NothingToMove(Van from, Van to, DateOnly date, int visits) =>
        new("nothing-to-move",
            string.Create(CultureInfo.InvariantCulture,
                $"From {from.Code} {from.Name} to {to.Code} {to.Name} on {date:yyyy-MM-dd} there "
                    + $"{(visits == 1 ? "is 1 visit" : $"are {visits} visits")} to move. Choose two different vans, and a date and kind "
                    + $"that are booked."));

    public static Refusal VansOpen(IReadOnlyList<string> vans) =>
        new("vans-open",
            $"{vans.Count} {(vans.Count == 1 ? "van is" : "vans are")} neither closed nor explained: {string.Join(", ", vans)}. Close "
                + "them out, or say of each why not.");

    public static Refusal NotAfter(DateOnly next, DateOnly today) =>
        new("not-after",
            string.Create(CultureInfo.InvariantCulture,
                $"The next business date cannot be {next:yyyy-MM-dd}: today is {today:yyyy-MM-dd}. Type a later date."));

    public static Refusal TooFarAhead(DateOnly next, DateOnly today) =>
        new("too-far-ahead",
            string.Create(CultureInfo.InvariantCulture,
                $"The next business date cannot be {next:yyyy-MM-dd}: that is {next.DayNumber - today.DayNumber} days after "
                    + $"{today:yyyy-MM-dd}, and {PlanningWindow.MostDaysAhead} are the most, for there is no way back. Type the date "
                    + $"anew."));

    public static Refusal BroughtInBy(Van van, Technician broughtIn, Code<Technician> typed) =>
        new("brought-in-by",
            $"{van.Code} {van.Name} was brought in by 1 person, {broughtIn.Code} {broughtIn.Name}, and {typed} was typed. Type "
                + $"{broughtIn.Code}: the close-out stays in that name.");
}
