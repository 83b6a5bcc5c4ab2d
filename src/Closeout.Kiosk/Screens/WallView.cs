using Closeout.Store;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>The lead's screen: all vans in bay order, and the depot's totals below.</summary>
public static class WallView
{
    public static void Draw(Sheet sheet, Desk desk, WallScreen s)
    {
        var depot = desk.Depot;
        var vans = Readiness.Of(depot);
        View.Head(sheet, depot, "BAY WALL", $"{WallWords.Closed(vans)} {View.Clock(desk.Now)}");
        sheet.Write(1, 1, "bay van             with   where it stands            morning", Look.Faint);

        var totals = Totals(sheet, desk);
        var detail = Sheet.Wrap($"{vans[s.Selected].Van.Code}: {WallWords.Morning(vans[s.Selected])}", sheet.Width - 4);
        var room = Math.Max(1, sheet.Height - 6 - totals.Count - Math.Min(detail.Count, 2));
        var top = Math.Clamp(s.Selected - room + 1, 0, Math.Max(0, vans.Count - room));
        for (var row = 0; row < room && top + row < vans.Count; row++)
        {
            var state = vans[top + row];
            var look = top + row == s.Selected ? Look.Field : Look.Plain;
            sheet.Write(2 + row, 0, $"{(top + row == s.Selected ? ">" : " ")}{state.Van.Bay,3} ", look);
            sheet.Write(2 + row, 5, $"{state.Van.Code} {state.Van.Name}".PadRight(16), look, 15);
            sheet.Write(2 + row, 21, (state.With?.Text ?? "-").PadRight(6), look, 6);
            sheet.Write(2 + row, 28, WallWords.Where(depot, state, desk.Now).PadRight(26), look, 26);
            sheet.Write(2 + row, 55, WallWords.Morning(state), look);
        }

        var at = sheet.Height - 3 - totals.Count - Math.Min(detail.Count, 2);
        foreach (var line in detail.Take(2))
        {
            sheet.Write(at++, 1, line);
        }

        foreach (var line in totals)
        {
            sheet.Write(at++, 1, line);
        }

        var column = sheet.Write(sheet.Height - 2, 1, "Van to open: ");
        sheet.Write(sheet.Height - 2, column, $"[{s.Typed.PadRight(8)}]", Look.Field);
        sheet.Write(sheet.Height - 2, column + 12, "type or scan its code, or the arrows; Enter opens", Look.Faint);
        sheet.Caret = (sheet.Height - 2, column + 1 + s.Typed.Length);
        View.Keys(sheet, "F1 help F2 plan F3 yard F4 load F5 stock F6 record F7 van F8 day F9 PINs ^Q");
    }

    private static List<string> Totals(Sheet sheet, Desk desk)
    {
        var lines = new List<string>();
        foreach (var (word, sentence) in WallWords.Totals(desk.Depot, desk.Plan))
        {
            var begin = word.PadRight(11);
            foreach (var line in Sheet.Wrap(sentence, sheet.Width - 14).Take(3))
            {
                lines.Add(begin + line);
                begin = new string(' ', 11);
            }
        }

        return lines;
    }
}
