using Closeout.Screens.Parts;

namespace Closeout.Screens.Steps;

/// <summary>Finding an item by a piece of its name or code, or by scanning its label.</summary>
internal static class Finding
{
    /// <summary>The most items listed.</summary>
    private const int MostListed = 6;

    private const int LongestPiece = 24;

    /// <summary>The piece that begins finding; null: the character is an answer.</summary>
    public static string? Begins(Depot depot, Question q, char c)
    {
        if (c == '/')
            return "";

        // A scanner types a label's code into whatever field has the caret: a letter, or more digits than a count has, is no count.
        var typed = q.Form.Now is { IsOffered: false, Typed: { } before } ? before : "";
        var isCode = char.IsAsciiDigit(c) ? typed.Length == q.Form.Now?.Width : char.IsAsciiLetter(c) || c is '.' or '_' or '-';
        if (!isCode)
            return null;

        var whole = depot.Setup.Items.Any(i => i.Code.Text.StartsWith(typed + c, StringComparison.OrdinalIgnoreCase));
        return whole && typed.Length > 0 ? typed + c : char.IsAsciiLetter(c) ? c.ToString() : null;
    }

    /// <param name="found">The question of an item that was found.</param>
    public static IEnumerable<StepKey> Keys(Depot depot, Question q, Func<Item, Question> found)
    {
        var find = q.Find!;
        return
        [
            new(Parts.Keys.Enter, T("take the first"), _ => find.Length < 2 && depot.Setup.Items.All(i => i.Code.Text != find)
                ? new StepReply(q with { Find = null }, Said: T($"\"{find}\" is not a count. Type the number, or more of the item's name."))
                : Matches(depot, find).FirstOrDefault() is { } item
                ? found(item)
                : new StepReply(q with { Find = null },
                    Said: T($"No item has \"{find}\" in its name or code. Type / and a piece of the name, or scan the carton label."))),
            new(Parts.Keys.Backspace, T("back"), _ => q with { Find = find.Length > 0 ? TextLine.WithoutLast(find) : null }),
            new(Parts.Keys.Escape, T("stop finding"), _ => q with { Find = null }, Row: 0),
            new(Parts.Keys.Typing, null, key => find.Length < LongestPiece ? q with { Find = find + key.Character } : q),
        ];
    }

    public static void Draw(Sheet sheet, Depot depot, string find)
    {
        sheet.Write(3, 1, T("Find an item: a piece of its name, or scan it"), Look.Plain, StepPage.Columns);
        var (shown, caret) = TextLine.Behind(find).In(LongestPiece);
        sheet.Write(5, 1, $"[{shown}]", Look.Field);
        sheet.Caret = (5, 2 + caret);
        var row = 7;
        foreach (var item in Matches(depot, find).Take(MostListed))
        {
            sheet.Write(row, 1, $"{(row == 7 ? ">" : " ")} {item.Code}", Look.Plain, StepPage.Columns);
            sheet.Write(row, 18, Cells.Middle(item.Description, StepPage.Columns - 17));
            row++;
        }

        if (row == 7)
            sheet.Write(row, 1, T("  nothing has that in its name or code"), Look.Plain, StepPage.Columns);
    }

    /// <summary>The items that fit, the one whose code is just that first.</summary>
    private static IEnumerable<Item> Matches(Depot depot, string find) => depot.Setup.Items
        .Where(i => i.Code.Text.Contains(find, StringComparison.OrdinalIgnoreCase)
            || i.Description.Contains(find, StringComparison.OrdinalIgnoreCase))
        .OrderBy(i => string.Equals(i.Code.Text, find, StringComparison.OrdinalIgnoreCase)
            ? 0
            : i.Code.Text.StartsWith(find, StringComparison.OrdinalIgnoreCase)
            ? 1
            : 2);
}
