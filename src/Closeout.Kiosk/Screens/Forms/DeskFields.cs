using Closeout.Screens.Parts;

namespace Closeout.Screens.Forms;

/// <summary>The fields of the desks' forms, each with what it is checked for when it is left.</summary>
public static class DeskFields
{
    /// <param name="needed">What is said where it is left empty; null: it may be.</param>
    public static Field Item(string shown = "", string? needed = null, bool mayBeEmpty = false) =>
        Coded<Item>("item", T("Item"), shown, mayBeEmpty ? null : needed ?? T("Type the code of the item."),
            (d, c) => d.Setup.Find(c) is null ? Refusal.NoSuchItem(c) : null)
            with { Choices = d => d.Setup.Items.Select(i => new Choice(i.Code.Text, i.Description)) };

    public static Field Van(string name, string label, string shown, string needed) =>
        Coded<Van>(name, label, shown, needed, (d, c) => d.Setup.Find(c) is null ? Refusal.NoSuchVan(c) : null)
            with { Choices = d => d.Setup.Vans.Select(v => new Choice(v.Code.Text, v.Name)) };

    public static Field Person(string name, string label, string shown, string needed) =>
        Coded<Technician>(name, label, shown, needed, (d, c) => d.Setup.Find(c) is null ? Refusal.NoSuchTechnician(c) : null)
            with { Choices = People };

    /// <summary>A code of any kind.</summary>
    /// <param name="wrong">Why it cannot be; null: it can.</param>
    public static Field Coded<T>(string name, string label, string shown, string? needed, Func<Depot, Code<T>, Refusal?> wrong) =>
        new(name, label, FieldKind.Code, shown) { Needed = needed, Check = (d, f) => wrong(d, new(f.Text))?.Text };

    /// <summary>A whole number.</summary>
    public static Field Whole(string name, string label, string needed, int least = 0, int most = Refusal.MostAtOnce) =>
        new(name, label, FieldKind.Count, "") { Needed = needed, Check = (_, f) => Given.Range(label, f.Whole ?? 0, least, most)?.Text };

    /// <summary>A number that may be left empty.</summary>
    /// <param name="after">What an empty field says.</param>
    public static Field Number(string name, string label, FieldKind kind, string after, decimal most) =>
        new(name, label, kind, "", after) { Check = (_, f) => Given.Range(label, f.Number ?? 0, 1, most)?.Text };

    public static Field Date(string name, string label, DateOnly? shown, string? needed) =>
        Field.OfDate(name, label, shown) with { Needed = needed,
            Check = (_, f) => f.Date is null ? T($"\"{f.Text}\" is no date. Type it as YYYY-MM-DD.") : null };

    /// <summary>One letter of a few.</summary>
    public static Field Letter(string name, string label, string shown, string letters, string needed, string after = "") =>
        new(name, label, FieldKind.Letter, shown, after)
        {
            Needed = needed,
            Check = (_, f) => letters.Contains(f.Letter, StringComparison.Ordinal) ? null : needed,
        };

    /// <summary>A few words, which keep no secret. What is asked for follows from the label.</summary>
    public static Field Words(string name, string label) => new(name, label, FieldKind.Words, "")
    {
        Needed = Refusal.NoWords(Asked(label)).Text,
        Check = (_, f) => Given.Words(Asked(label), f.Text)?.Text,
    };

    /// <summary>Why it is done.</summary>
    /// <param name="usual">Reasons to choose from; another is typed.</param>
    public static Field Why(string label, params string[] usual) => Words("reason", label) with
    {
        Choices = usual.Length == 0 ? null : _ => usual.Select(u => new Choice(u)),
    };

    /// <summary>Everybody of the crew.</summary>
    public static IEnumerable<Choice> People(Depot depot) => depot.Setup.Crew.Select(c => new Choice(c.Code.Text, c.Name));

    private static string Asked(string label) => char.ToLowerInvariant(label[0]) + label[1..];
}
