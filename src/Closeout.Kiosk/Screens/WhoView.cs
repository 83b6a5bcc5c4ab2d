using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>Who brings the van in?</summary>
public static class WhoView
{
    public static void Draw(Sheet sheet, Depot depot, WhoScreen s)
    {
        var van = depot.Setup.Van(s.Van);
        View.Head(sheet, depot, $"{van.Code} {van.Name}", "coming in");
        sheet.Write(3, 3, $"{van.Code} {van.Name}, bay {van.Bay}, is back.", Look.Strong);
        sheet.Write(5, 3, "Who closes it out?");
        FormView.Draw(sheet, 7, 3, s.Form, 0, 1, 22);
        if (Code<Technician>.IsValid(s.Form["technician"].Text) && depot.Setup.Find(new Code<Technician>(s.Form["technician"].Text)) is { } who)
        {
            sheet.Write(9, 3, who.Name + (who.IsLead ? ", lead" : ""));
        }

        sheet.Write(sheet.Height - 4, 3, "Engine off, brake set, keys out. Watch for traffic and for vans that back up.", Look.Faint);
        View.Keys(sheet, "Enter this is me   type or scan another code   F1 help   Esc back to the wall");
    }
}
