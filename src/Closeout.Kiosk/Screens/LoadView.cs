using Closeout.DayBook;
using Closeout.Restock;

namespace Closeout.Screens;

/// <summary>A van's pick list, in stow order, to be confirmed with what was really taken.</summary>
public static class LoadView
{
    public static void Draw(Sheet sheet, Depot depot, RestockPlan plan, LoadScreen s)
    {
        var van = depot.Setup.Van(s.Van);
        View.Head(sheet, depot, $"LOAD {van.Code} {van.Name}", View.Day(plan.Date));
        var form = s.Form.IsUntouched ? PlanKeys.LoadForm(plan, s.Van, depot) with { Focus = s.Form.Focus } : s.Form;
        form = form.Move(0);
        sheet.Write(1, 1, !depot.IsDone(s.Van) ? "Not closed yet: close it out first; until then these figures are the book's." : form.Fields.Count == 0 ? "Nothing is left to load." : "Deepest first. Type what you really took; only this moves stock in the book.", Look.Faint);
        var row = 2;
        foreach (var line in Sheet.Wrap("Weight: " + WeightWords.Of(depot.Setup.Units, plan.Weight(s.Van)), sheet.Width - 2))
        {
            sheet.Write(row++, 1, line);
        }

        var room = Math.Max(1, sheet.Height - 5 - row);
        FormView.Draw(sheet, row + 1, 1, form, FormView.Top(form, room), room, 34, sheet.Width - 2);
        var shorts = plan.Lines.Where(l => l.Van.Code == s.Van && l.Short > 0).Select(l => $"{l.Item.Code} {l.Short}").ToList();
        var cut = WeightWords.Cut(plan.Weight(s.Van));
        var lacks = new[] { shorts.Count > 0 ? "SHORT " + string.Join(", ", shorts) : "", cut.Length > 0 ? "CUT FOR WEIGHT " + cut : "" };
        sheet.Write(sheet.Height - 3, 1, string.Join("   ", lacks.Where(l => l.Length > 0)), Look.Strong, sheet.Width - 2);
        sheet.Write(sheet.Height - 2, 1, "Lift heavy cartons with two; ladder tied; knife away from you.", Look.Faint);
        View.Keys(sheet, "Enter took this   Up/Down line   = took all the rest   F1 help   Esc back");
    }
}
