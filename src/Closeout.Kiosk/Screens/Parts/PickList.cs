namespace Closeout.Screens.Parts;

/// <summary>What there is to choose in a field, narrowed by a piece of its code or name.</summary>
public static class PickList
{
    /// <summary>The most that are listed.</summary>
    private const int Most = 6;

    /// <summary>
    /// What fits the field; nothing where it has no choices, or holds one of them, or is a code of which nothing was typed.
    /// </summary>
    public static IReadOnlyList<Choice> Of(Depot depot, Field? field)
    {
        if (field is not { Choices: { } choices } || field is { Kind: FieldKind.Code, Text.Length: 0 })
            return [];

        var typed = field.Text.Trim();
        var all = choices(depot).ToList();
        return all.Any(c => Is(c.Text, typed)) ? [] : [.. all.Where(c => Has(c.Text, typed) || Has(c.Name, typed)).Take(Most)];
    }

    /// <summary>
    /// What Enter takes: the one chosen, and of codes the first that fits what was typed; null: what stands in the field.
    /// </summary>
    /// <param name="picked">The place in the list; -1: none was chosen.</param>
    public static Choice? Taken(Depot depot, Field? field, int picked) => Of(depot, field) is not { Count: > 0 } list ? null
        : picked >= 0 ? list[Math.Min(picked, list.Count - 1)]
        : field is { Kind: FieldKind.Code, Text.Length: > 0 } ? list[0]
        : null;

    public static void Draw(Sheet sheet, int row, int column, Depot depot, Field? field, int picked)
    {
        var isCode = field?.Kind == FieldKind.Code;
        foreach (var (i, choice) in Of(depot, field).Index())
        {
            var look = i == picked ? Look.Field : Look.Faint;
            var marked = i == picked || (picked < 0 && i == 0 && field is { Kind: FieldKind.Code, Text.Length: > 0 });
            sheet.Write(row + i, column, $"{(marked ? ">" : " ")} {choice.Text}", look, isCode ? 20 : int.MaxValue);
            sheet.Write(row + i, column + 21, choice.Name, look, sheet.Width - column - 22);
        }
    }

    private static bool Is(string text, string typed) => string.Equals(text, typed, StringComparison.OrdinalIgnoreCase);

    private static bool Has(string text, string typed) => text.Contains(typed, StringComparison.OrdinalIgnoreCase);
}
