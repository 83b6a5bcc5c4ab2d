using Closeout.Screens.Parts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>
/// Draws the bay wall: a row for each van with its status in a column of its own, and on a wide screen the chosen van beside it.
/// </summary>
internal static class WallView
{
    private const int WideFrom = 110;
    private const int ListColumns = 78;
    private const int GaugeCells = 20;
    private const int StatusAt = 44;
    private const int WhyAt = 54;

    /// <param name="vans">In the order in which they are shown.</param>
    public static void Draw(Sheet sheet, Scene scene, IReadOnlyList<VanState> vans, int selected)
    {
        var isWide = sheet.Width >= WideFrom;
        Frame.Head(sheet, scene.Depot, "", Spell.Clock(scene.Now), Counts(vans));
        sheet.Write(1, 1, T("bay van             who    evening         morning"), Look.Faint);

        List<string> totals = [Evening(scene.Depot), .. Totals(sheet, scene.Tonight)];
        IReadOnlyList<string> detail = isWide ? [] : Detail(vans[selected], sheet.Width - 4);
        var room = Math.Max(1, sheet.Height - 6 - totals.Count - detail.Count);
        var top = Math.Clamp(selected - room + 1, 0, Math.Max(0, vans.Count - room));
        for (var row = 0; row < room && top + row < vans.Count; row++)
        {
            Row(sheet, 2 + row, scene, vans[top + row], top + row == selected, isWide ? ListColumns : sheet.Width - 1);
            sheet.Taps.Add(2 + row, 0, isWide ? ListColumns : sheet.Width, [.. Taps.Steps(top + row - selected), new(Press.Enter)]);
        }

        if (isWide)
            Beside(sheet, scene, vans[selected], room);

        var at = sheet.Height - 3 - totals.Count - detail.Count;
        foreach (var line in detail.Concat(totals))
            sheet.Write(at++, 1, line);

        sheet.Write(sheet.Height - 3, 1, T("The wall repeats what people confirmed. It does not say that a van is safe."), Look.Faint);
    }

    /// <summary>The chosen van's morning in two lines; what has no room there is on F7.</summary>
    private static IReadOnlyList<string> Detail(VanState state, int columns)
    {
        var lines = Cells.Wrap($"{state.Van.Code}: {WallWords.Morning(state)}", columns);
        return lines.Count <= 2 ? lines : [lines[0], Cells.Cut($"{lines[1]} {lines[2]}", columns)];
    }

    /// <summary>How far the evening is.</summary>
    private static string Evening(Depot depot)
    {
        var (done, all) = (depot.Setup.Vans.Count(v => depot.IsDone(v.Code)), depot.Setup.Vans.Count);
        return T("Evening").PadRight(11) + $"[{Shapes.Bar(done / (double)Math.Max(1, all), GaugeCells)}] " + T($"{done} of {all} done");
    }

    private static (string, Look)[] Counts(IReadOnlyList<VanState> vans) =>
    [
        .. from m in new[] { Morning.Held, Morning.ReadyWithNotes, Morning.NotClosed, Morning.Ready }
        let count = vans.Count(v => v.Morning == m)
        where count > 0
        select (WallWords.Count(m, count), Tone(m)),
    ];

    private static void Row(Sheet sheet, int row, Scene scene, VanState state, bool isChosen, int edge)
    {
        var look = isChosen ? Look.Field : Look.Plain;
        sheet.Write(row, 0, $"{(isChosen ? ">" : " ")}{state.Van.Bay,3} ", look);
        sheet.Write(row, 5, Cells.Cut($"{state.Van.Code} {state.Van.Name}", 15).PadRight(16), look, 16);
        sheet.Write(row, 21, (state.With?.Text ?? "-").PadRight(6), look, 6);
        sheet.Write(row, 28, Cells.Cut(WallWords.Evening(scene.Depot, state, scene.Now), 15), look, 15);
        sheet.Badge(row, StatusAt, WallWords.Status(state), Tone(state.Morning));
        sheet.Write(row, WhyAt, Cells.Cut(WallWords.Why(state), edge - WhyAt), state.Morning == Morning.Ready ? Look.Faint : look);
    }

    /// <summary>The chosen van's whole story, beside the list.</summary>
    private static void Beside(Sheet sheet, Scene scene, VanState state, int room)
    {
        const int At = ListColumns + 2;
        sheet.Write(1, At, T($"{state.Van.Code} {state.Van.Name}, bay {state.Van.Bay}"), Look.Strong);
        var lines = Frame.Hanging(VanWords.Of(scene.Tonight, state.Van), sheet.Width - At - 11);
        foreach (var (i, (word, text)) in lines.Take(room).Index())
        {
            sheet.Write(2 + i, At, word, Look.Faint, 9);
            sheet.Write(2 + i, At + 10, text);
        }
    }

    private static Look Tone(Morning morning) => morning switch
    {
        Morning.Held => Look.Stop,
        Morning.ReadyWithNotes => Look.Note,
        Morning.NotClosed => Look.Plain,
        Morning.Ready => Look.Good,
        _ => throw new InvalidOperationException($"no tone for {morning}"),
    };

    private static List<string> Totals(Sheet sheet, Tonight tonight)
    {
        var lines = new List<string>();
        foreach (var (word, sentence) in tonight.Totals)
        {
            var begin = word.PadRight(11);
            foreach (var line in Cells.Wrap(sentence, sheet.Width - 14, 3))
            {
                lines.Add(begin + line);
                begin = new string(' ', 11);
            }
        }

        return lines;
    }
}
