namespace Closeout.Screens.Parts;

/// <summary>Draws the fields of a form under each other.</summary>
public static class FormView
{
    /// <summary>Columns of a close-out's question, before its card begins.</summary>
    private const int QuestionColumns = 45;

    /// <param name="top">The first field drawn.</param>
    /// <param name="room">How many are drawn at the most.</param>
    /// <param name="labels">Columns for the labels.</param>
    /// <param name="edge">The column before which fields end; null: the edge of a close-out's question.</param>
    public static void Draw(Sheet sheet, int row, int column, Form form, int top, int room, int labels, int? edge = null)
    {
        for (var i = top; i < form.Fields.Count && i < top + room; i++, row++)
        {
            var field = form.Fields[i];
            var here = i == form.Focus;
            sheet.Write(row, column, (here ? "> " : "  ") + Cells.Middle(field.Label, labels - 2));
            var at = column + labels + 1;
            var end = edge ?? Math.Min(sheet.Width, column + QuestionColumns);
            var width = Math.Min(field.Width, Math.Max(1, end - at - 2));
            var (text, caret) = (here ? field.Line : TextLine.Behind(field.Text)).In(width);
            sheet.Write(row, at, $"[{text}]", here ? Look.Field : Look.Plain);
            sheet.Write(row, at + width + 3, field.After, Look.Faint, Math.Max(0, end - at - width - 3));
            sheet.Taps.Add(row, column, end, Taps.Steps(i - form.Focus));
            if (here)
                sheet.Caret = (row, at + 1 + caret);
        }
    }

    /// <summary>The first field to draw so that the one with the caret is seen.</summary>
    public static int Top(Form form, int room) => Math.Clamp(form.Focus - room + 2, 0, Math.Max(0, form.Fields.Count - room));
}
