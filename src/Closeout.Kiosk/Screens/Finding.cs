using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>Finding an item by a piece of its name or code, or by scanning its label.</summary>
public static class Finding
{
    /// <summary>The most items listed.</summary>
    public const int MostListed = 6;

    /// <summary>The screen with finding begun; null: the character is an answer.</summary>
    public static CloseoutScreen? Begins(Depot depot, CloseoutScreen s, char c)
    {
        if (c == '/')
        {
            return s with { Find = "" };
        }

        // A scanner types a label's code into whatever field has the caret: a letter, or more digits than a count has, is no count.
        var typed = s.Form.Now is { IsOffered: false, Typed: { } before } ? before : "";
        var isCode = char.IsAsciiDigit(c) ? typed.Length == s.Form.Now?.Width : char.IsAsciiLetter(c) || c is '.' or '_' or '-';
        if (!isCode)
        {
            return null;
        }

        var whole = depot.Setup.Items.Any(i => i.Code.Text.StartsWith(typed + c, StringComparison.OrdinalIgnoreCase));
        return whole && typed.Length > 0
            ? s with { Find = typed + c, Form = Questions.At(depot, s.Van, s.At, s.Item).Form }
            : char.IsAsciiLetter(c) ? s with { Find = c.ToString() } : null;
    }

    public static Model On(Depot depot, Model model, CloseoutScreen s, Keystroke key)
    {
        var find = s.Find!;
        return key.Press switch
        {
            Press.Escape => model with { Screen = s with { Find = null } },
            Press.Backspace => model with { Screen = s with { Find = find.Length > 0 ? find[..^1] : null } },
            Press.Character when find.Length < 24 => model with { Screen = s with { Find = find + key.Character } },
            Press.Enter when Matches(depot, find).FirstOrDefault() is { } item => new(Questions.At(depot, s.Van, s.At, item.Code)),
            Press.Enter => model with { Screen = s with { Find = null }, Said = $"No item has \"{find}\" in its name or code. Type / and a piece of the name, or scan the carton label." },
            _ => model,
        };
    }

    /// <summary>The items that fit, the one whose code is just that first.</summary>
    public static IEnumerable<Item> Matches(Depot depot, string find) => depot.Setup.Items
        .Where(i => i.Code.Text.Contains(find, StringComparison.OrdinalIgnoreCase) || i.Description.Contains(find, StringComparison.OrdinalIgnoreCase))
        .OrderBy(i => string.Equals(i.Code.Text, find, StringComparison.OrdinalIgnoreCase) ? 0 : i.Code.Text.StartsWith(find, StringComparison.OrdinalIgnoreCase) ? 1 : 2);
}
