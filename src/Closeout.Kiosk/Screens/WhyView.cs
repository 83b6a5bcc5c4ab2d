using Closeout.DayBook;
using Closeout.Restock;

namespace Closeout.Screens;

/// <summary>Why a line says what it says: the sentences, and the demand as bars.</summary>
public static class WhyView
{
    public static void Draw(Sheet sheet, Depot depot, RestockPlan plan, WhyScreen s)
    {
        if (plan.Lines.FirstOrDefault(l => l.Van.Code == s.Van && l.Item.Code == s.Item) is not { } line)
        {
            sheet.Write(2, 1, "This line is no longer in the plan.");
            View.Keys(sheet, "Esc back to the plan");
            return;
        }

        View.Head(sheet, depot, "WHY", View.Day(plan.Date));
        sheet.Write(1, 1, $"{line.Van.Code} {line.Van.Name}, {line.Item.Description}: {line.Units} to load", Look.Strong, sheet.Width - 2);
        var row = 3;
        foreach (var (heading, sentence) in Why.Of(depot.Setup, line, plan.Weight(line.Van.Code)))
        {
            sheet.Write(row, 1, heading, Look.Faint);
            foreach (var text in Sheet.Wrap(sentence, sheet.Width - 12))
            {
                sheet.Write(row++, 10, text);
            }
        }

        if (line.Demand.Spread != Spread.None)
        {
            Bars(sheet, row + 1, line);
        }

        View.Keys(sheet, "F5 change (lead)   F1 help   Esc back to the plan");
    }

    /// <summary>A bar is as long as its chance is great; the marks say where low, target, high and aboard lie.</summary>
    private static void Bars(Sheet sheet, int row, RestockLine line)
    {
        var bars = Why.Bars(line, Math.Max(2, Math.Min(14, sheet.Height - 2 - row)));
        var longest = Math.Max(1e-9, bars.Max(b => b.Chance));
        var room = Math.Max(8, sheet.Width - 53);
        foreach (var (from, to, chance, marks) in bars)
        {
            sheet.Write(row, 1, from == to ? $"{from,7}" : $"{from,3}-{to,3}", Look.Faint);
            sheet.Write(row, 10, new string('#', (int)Math.Round(room * chance / longest)));
            sheet.Write(row, 12 + room, $"{Why.Percent(chance),11}", Look.Faint);
            sheet.Write(row++, 25 + room, marks.Length > 0 ? "< " + marks : "", Look.Strong);
        }
    }
}
