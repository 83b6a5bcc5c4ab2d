using System.Globalization;

namespace Closeout.Files;

/// <summary>What the column item of evening.csv names for a field.</summary>
public enum EveningItem
{
    None,
    Item,
    Piece,
    Stream,

    /// <summary>A part of the walk-round.</summary>
    Part,
}

/// <summary>A field of a step in evening.csv.</summary>
/// <param name="Check">Tells what is wrong with the column value.</param>
public sealed record EveningField(string Name, EveningItem Item, Action<CsvRow> Check)
{
    /// <summary>Whether without an item it answers the step as a whole, and no value is looked at.</summary>
    public bool IsWholeWithoutItem { get; init; }

    public bool NeedsItem { get; init; }

    /// <summary>Whether it is an answer of its own, never one with other fields.</summary>
    public bool IsOwnAnswer { get; init; }

    /// <summary>Whether it is given before the step's main answer, wherever it stands.</summary>
    public bool ComesBefore { get; init; }

    /// <summary>Whether it names a picture to attach.</summary>
    public bool IsPhoto { get; init; }

    /// <summary>The name of a file in the day folder or below it: a folder from elsewhere must not reach out of itself.</summary>
    public static void FileName(CsvRow row)
    {
        var name = row.Text("value");
        if (Path.IsPathRooted(name) || name.Split('/', '\\').Contains(".."))
            row.Bad("value", T("reaches out of the day folder"), T("the name of a file in it"));
    }
}

/// <summary>A step in evening.csv: its word there, its fields, and what rows of it come to.</summary>
/// <param name="Fields">The first is meant where the column field is empty.</param>
/// <param name="Command">The command that the rows of one answer come to.</param>
public sealed record EveningStep(Step Step, string Word, IReadOnlyList<EveningField> Fields, Func<EveningGiven, ICommand> Command);

/// <summary>The values of one answer, found to be allowed.</summary>
/// <param name="Item">Code of what the answer is about; empty: the step as a whole.</param>
public sealed record EveningGiven(Code<Van> Van, Code<Technician> Technician, string Item, IReadOnlyDictionary<string, string> Values)
{
    /// <summary>Behind a field's name: why its value is what it is.</summary>
    public const string Why = "/why";

    public bool Has(string field) => Values.ContainsKey(field);

    public string? Text(string field) => Values.GetValueOrDefault(field);

    public int? Whole(string field) => Text(field) is { } text ? int.Parse(text, CultureInfo.InvariantCulture) : null;

    public decimal? Number(string field) => Text(field) is { } text ? decimal.Parse(text, CultureInfo.InvariantCulture) : null;

    public bool? YesNo(string field) => Text(field) is { } text ? string.Equals(text, "yes", StringComparison.OrdinalIgnoreCase) : null;

    public DateOnly? Date(string field) => Text(field) is { } text ? IsoDate.Parse(text) : null;

    public TimeOnly? Clock(string field) => Text(field) is { } text
        ? TimeOnly.ParseExact(text, "HH:mm", CultureInfo.InvariantCulture)
        : null;
}
