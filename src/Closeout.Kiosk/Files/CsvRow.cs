using System.Globalization;

namespace Closeout.Files;

/// <summary>
/// A row of a day-folder file, read field by field. A field that is not allowed is told as a fault with its place, and <see cref="IsGood"/>
/// turns false. It is good until the next row is asked for.
/// </summary>
public sealed class CsvRow
{
    /// <summary>The most of anything that is counted in a file.</summary>
    public const int MostUnits = 1_000_000;

    private const int MostText = 200;
    private const int FirstYear = 1900;
    private const int LastYear = 2199;

    private readonly CsvFields fields;
    private readonly string file;
    private readonly Findings findings;
    private readonly HashSet<string> bad = [];

    /// <summary>The last date that was read: the next row mostly has the same.</summary>
    private (byte[] Text, DateOnly Date) lately = ([0], default);

    internal CsvRow(CsvFields fields, string file, Findings findings) =>
        (this.fields, this.file, this.findings) = (fields, file, findings);

    public int Line => fields.Line;

    /// <summary>Whether no field read so far was at fault.</summary>
    public bool IsGood => bad.Count == 0;

    /// <summary>Whether these fields were read well: what follows from them may be judged, whatever the others say.</summary>
    public bool Are(params ReadOnlySpan<string> columns)
    {
        foreach (var column in columns)
        {
            if (fields.Header.FieldOf(column) is null || bad.Contains(column))
                return false;
        }

        return true;
    }

    /// <summary>Tells a fault at a column.</summary>
    public void Fault(string column, string text)
    {
        bad.Add(column);
        var (line, at) = fields.Header.FieldOf(column) is { } field ? fields.Place(field) : (Line, 1);
        findings.Fault(file, line, at, $"{column} {text}");
    }

    /// <summary>The field as it stands; empty where the column is missing.</summary>
    public string Raw(string column) => fields.Header.FieldOf(column) is { } field ? fields.Text(field) : "";

    public bool Has(string column) => !Bytes(column).IsEmpty;

    public string Text(string column, bool mayBeEmpty = false)
    {
        var text = Raw(column);
        if (text.Length is 0 or > MostText && !(mayBeEmpty && text.Length == 0))
            Bad(column, T("is no short text"), T($"1 to {MostText} characters"));
        else if (HasControl(text))
            Bad(column, T("has a control character"), T("printable text"));

        return text;
    }

    public Code<TKind> Code<TKind>(string column)
    {
        var text = Raw(column);
        if (Facts.Code<TKind>.IsValid(text))
            return new(text);

        Bad(column, T("is no code"), T("1 to 24 of A-Z a-z 0-9 . _ -"));
        return default;
    }

    /// <summary>A code that another file lists, in the spelling it has there.</summary>
    public Code<TKind> Known<TKind>(string column, Known<TKind> known)
    {
        // What is listed is a code.
        if (Listed(column, known) is { } spelled)
            return spelled;

        if (Code<TKind>(column) != default && known.IsComplete)
            Bad(column, T($"is not in {known.File}"), T("a code listed there"));

        bad.Add(column);
        return default;
    }

    /// <summary>The same, and null where it is not listed: nothing is told.</summary>
    public Code<TKind>? Listed<TKind>(string column, Known<TKind> known) => known.Find(Bytes(column));

    public int Whole(string column, int least = 0, int most = MostUnits)
    {
        if (int.TryParse(Bytes(column), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least
            && number <= most)
        {
            return number;
        }

        Bad(column, T("is no whole number in range"), T($"{least} to {most}"));
        return least;
    }

    public decimal Number(string column, decimal least = 0, decimal most = 10_000_000, bool openBelow = false)
    {
        if (decimal.TryParse(
            Bytes(column), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && (openBelow ? number > least : number >= least) && number <= most)
        {
            return number;
        }

        Bad(column, T("is no number in range"),
            T($"{(openBelow ? T("above ") : "")}{least} to {most}, with a decimal point"));
        return least;
    }

    public DateOnly Date(string column)
    {
        var text = Bytes(column);
        if (text.SequenceEqual(lately.Text))
            return lately.Date;

        if (IsoDate.Parse(text) is { Year: >= FirstYear and <= LastYear } date)
        {
            lately = (text.ToArray(), date);
            return date;
        }

        Bad(column, T("is no date"), T($"YYYY-MM-DD, a day of the years {FirstYear} to {LastYear}"));
        return default;
    }

    /// <summary>A time of day, HH:MM.</summary>
    public TimeOnly Clock(string column)
    {
        if (!TimeOnly.TryParseExact(Raw(column), "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var clock))
            Bad(column, T("is no time of day"), T("HH:MM, 00:00 to 23:59"));

        return clock;
    }

    public bool YesNo(string column) => OneOf(column, "yes", "no") == "yes";

    public string OneOf(string column, params string[] allowed)
    {
        var found = allowed.FirstOrDefault(a => string.Equals(a, Raw(column), StringComparison.OrdinalIgnoreCase));
        if (found is null)
            Bad(column, T("is none of the words allowed"), string.Join(", ", allowed));

        return found ?? allowed[0];
    }

    /// <summary>Tells what was found in a column and what is allowed there.</summary>
    public void Bad(string column, string wrong, string allowed)
    {
        bad.Add(column);
        if (fields.Header.FieldOf(column) is { } field)
        {
            // A column that is missing altogether was told once, at the header.
            var (line, at) = fields.Place(field);
            findings.Fault(file, line, at, T($"{column} {wrong}: found {Findings.Quote(Raw(column))}, allowed {allowed}"));
        }
    }

    /// <summary>The row as it is now, for whoever asks for the next before it is judged.</summary>
    public CsvRow Keep() => new(fields.Keep(), file, findings);

    /// <summary>The fields are those of a new row now.</summary>
    internal void Begin() => bad.Clear();

    /// <summary>Whether there are control characters but for those that a text of several lines may have.</summary>
    private static bool HasControl(string text)
    {
        foreach (var c in text)
        {
            if (char.IsControl(c) && c is not ('\t' or '\r' or '\n'))
                return true;
        }

        return false;
    }

    private ReadOnlySpan<byte> Bytes(string column) => fields.Header.FieldOf(column) is { } field ? fields.Bytes(field) : [];
}
