using Closeout.DayBook;
using Closeout.Restock;

namespace Closeout.Screens;

/// <summary>One van: its state, what stands against it, what is due; and a lead's desk for it.</summary>
public static class VanView
{
    public static void Draw(Sheet sheet, Depot depot, RestockPlan plan, VanScreen s)
    {
        var van = depot.Setup.Van(s.Van);
        View.Head(sheet, depot, $"{van.Code} {van.Name}", $"bay {van.Bay}");
        var lines = VanPage.Of(depot, plan, van)
            .SelectMany(l => Sheet.Wrap(l.Sentence, sheet.Width - 13).Select((text, i) => (Word: i == 0 ? l.Word : "", text)))
            .ToList();
        var room = Math.Max(1, sheet.Height - 5);
        var top = Math.Min(s.Top, Math.Max(0, lines.Count - room));
        for (var i = 0; i < room && top + i < lines.Count; i++)
        {
            sheet.Write(2 + i, 1, lines[top + i].Word, Look.Strong, 10);
            sheet.Write(2 + i, 12, lines[top + i].text);
        }

        sheet.Write(sheet.Height - 2, 1, lines.Count > room ? $"{lines.Count - room} more lines: Up and Down" : "It repeats what people confirmed. It does not say that the van is safe.", Look.Faint);
        View.Keys(sheet, "L lift H hold C incident W boxes K check R reopen B for M move X excuse F1 Esc");
    }
}
