using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>Everybody with role, and whether a PIN is set.</summary>
public static class PeopleView
{
    public static void Draw(Sheet sheet, Depot depot, PeopleScreen s)
    {
        var crew = depot.Setup.Crew;
        View.Head(sheet, depot, "PEOPLE", View.Count(crew.Count, "person", "people"));
        sheet.Write(2, 3, "code   name                      role         PIN", Look.Faint);
        var room = Math.Max(1, sheet.Height - 8);
        var at = Math.Clamp(s.Selected, 0, Math.Max(0, crew.Count - 1));
        var top = Math.Clamp(at - room + 1, 0, Math.Max(0, crew.Count - room));
        for (var row = 0; row < room && top + row < crew.Count; row++)
        {
            var person = crew[top + row];
            var look = top + row == at ? Look.Field : Look.Plain;
            sheet.Write(3 + row, 1, top + row == at ? "> " : "  ", look);
            sheet.Write(3 + row, 3, person.Code.Text, look, 6);
            sheet.Write(3 + row, 10, person.Name, look, 25);
            sheet.Write(3 + row, 36, person.IsLead ? "lead" : "technician", look);
            sheet.Write(3 + row, 49, State(depot, person.Code), look);
        }

        sheet.Write(sheet.Height - 4, 3, depot.Rehearsal
            ? "A rehearsal asks for no PIN and keeps none."
            : $"{PersonPin.MostInARow} wrong ones in a row lock a PIN until a lead resets it.", Look.Faint);
        sheet.Write(sheet.Height - 3, 3, depot.Rehearsal ? "" : "A PIN says who confirmed. It does not say that a van is safe.", Look.Faint);
        View.Keys(sheet, "C change your own   R reset, I issue (a lead)   F1 help   Esc the wall");
    }

    /// <summary>Whether there is a PIN and what it opens, in words.</summary>
    public static string State(Depot depot, Code<Technician> person) => depot.Pins.Of(person) switch
    {
        { Hash: null } => "none",
        { IsLocked: true, Failures: var failures } => $"LOCKED after {failures} wrong",
        { Failures: > 0 and var failures, Issued: var issued } => $"set{(issued ? ", issued" : "")}; {failures} wrong in a row",
        { Issued: true } => "set, issued",
        _ => "set, own",
    };
}
