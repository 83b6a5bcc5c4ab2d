using Closeout.Screens.Parts;
using Closeout.Turning;

namespace Closeout.Screens.Forms;

/// <summary>The form that ends the business date.</summary>
public static class DayForms
{
    public static DeskForm End => new(T("END THE DAY"))
    {
        Fields = a =>
            [DeskFields.Date("next", T("Next business date"), DayEnd.Next(a.Depot), T("Type the next business date as YYYY-MM-DD."))],
        About = f =>
        [
            DayEnd.Open(f.Depot) is { Count: > 0 } open
                ? T($"Neither closed nor excused: {string.Join(", ", open.Select(v => $"{v.Code} {v.Name}"))}. Close them out, or "
                    + $"excuse each: F7 on the wall, then X.")
                : T("Every van is closed out or excused."),
            T("The next page takes over balances, odometers, holds, incidents, boxes missing, bookings. This page is never written again."),
        ],
        Help = [
            T(
                "The business date ends once every van is closed out or excused. The next page takes over stock, odometers, holds, "
                    + "incidents, boxes missing and bookings. The page of today is never written again: there is no way back.")],
        Answer = (f, lead) => new EndDayAct(new(f.Date("next")!.Value, lead)),
    };
}

/// <summary>
/// End the business date, unless a van is being walked elsewhere: what is typed there and not yet confirmed would be lost with the date.
/// </summary>
public sealed record EndDayAct(EndDay Command) : Act
{
    public override Reply Do(World world, Screen from)
    {
        var vans = world.Desk.Depot.Setup.Vans;
        if (vans.Select(v => world.Elsewhere(v.Code)).FirstOrDefault(w => w is not null) is { } walked)
            return new(from, walked);

        if (world.Desk.Record(Command) is { } refused)
            return from.Refused(world.Scene, Command, refused);

        var depot = world.Desk.Depot;
        var back = ((FormScreen)from).Back.Choosing(depot, depot.Setup.Vans[0].Code);
        return new(back, T($"{Spell.Day(depot.Date)} is open. Load its day folder for bookings and visit reports."));
    }
}
