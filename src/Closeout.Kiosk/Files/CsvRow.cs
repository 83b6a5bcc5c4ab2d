using System.Globalization;

namespace Closeout.Files;

/// <summary>
/// A row of a day-folder file, read field by field. A field that is not allowed is told as a fault with its place, and <see cref="IsGood"/>
/// turns false.
/// </summary>
public sealed class CsvRow(string file, int line, CsvCell[] cells, IReadOnlyDictionary<string, int> index, Findings findings)
{
    /// <summary>The most of anything that is counted in a file.</summary>
    public const int MostUnits = 1_000_000;

    private const int MostText = 200;
    private const int FirstYear = 1900;
    private const int LastYear = 2199;

    /// <summary>Made for the first fault: most rows have none.</summary>
    private HashSet<string>? bad;

    public int Line => line;

    /// <summary>Whether no field read so far was at fault.</summary>
    public bool IsGood { get; private set; } = true;

    /// <summary>Whether these fields were read well: what follows from them may be judged, whatever the others say.</summary>
    public bool Are(params string[] columns) => columns.All(c => index.ContainsKey(c) && bad?.Contains(c) != true);

    /// <summary>Tells a fault at a column.</summary>
    public void Fault(string column, string text)
    {
        Doubt(column);
        var cell = Find(column);
        findings.Fault(file, cell?.Line ?? line, cell?.Column ?? 1, $"{column} {text}");
    }

    /// <summary>The field as it stands; empty where the column is missing.</summary>
    public string Raw(string column) => Find(column)?.Text ?? "";

    public bool Has(string column) => Raw(column).Length > 0;

    public string Text(string column, bool mayBeEmpty = false)
    {
        var text = Raw(column);
        if (text.Length is 0 or > MostText && !(mayBeEmpty && text.Length == 0))
            Bad(column, T("is no short text"), T($"1 to {MostText} characters"));
        else if (text.Any(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n')))
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
        var code = Code<TKind>(column);
        if (code == default || known.Find(code) is not { } spelled)
        {
            if (code != default && known.IsComplete)
                Bad(column, T($"is not in {known.File}"), T("a code listed there"));

            Doubt(column);
            return default;
        }

        return spelled;
    }

    public int Whole(string column, int least = 0, int most = MostUnits)
    {
        if (int.TryParse(Raw(column), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least
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
            Raw(column), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
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
        if (DateOnly.TryParseExact(Raw(column), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            && date.Year is >= FirstYear and <= LastYear)
        {
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
        Doubt(column);
        if (Find(column) is { } cell)
        {
            // A column that is missing altogether was told once, at the header.
            findings.Fault(file, cell.Line, cell.Column, T($"{column} {wrong}: found {Findings.Quote(cell.Text)}, allowed {allowed}"));
        }
    }

    private void Doubt(string column)
    {
        IsGood = false;
        (bad ??= []).Add(column);
    }

    private CsvCell? Find(string column) => index.TryGetValue(column, out var i) ? cells[i] : null;
}

/// <summary>The codes that a file lists. Those of faulty rows count too: their users are not at fault.</summary>
/// <param name="table">What they are read from; null: a file that need not list them all.</param>
public sealed class Known<TKind>(string file, CsvTable? table)
{
    private readonly Dictionary<Code<TKind>, Code<TKind>> codes = [];

    public string File => file;

    /// <summary>False where the file could not be read, or not to its end: then nothing is told of codes that it may hold.</summary>
    public bool IsComplete => table is { IsWhole: true };

    public Code<TKind>? Find(Code<TKind> code) => codes.TryGetValue(code, out var spelled) ? spelled : null;

    /// <summary>Adds a code; false when it stands already.</summary>
    public bool Add(Code<TKind> code) => codes.TryAdd(code, code);

    /// <summary>The same codes and others, each of which stands for one of them.</summary>
    public Known<TKind> With(IEnumerable<(Code<TKind> Code, Code<TKind> For)> others)
    {
        var both = new Known<TKind>(file, table);
        foreach (var (code, stands) in codes.Select(c => (c.Key, c.Value)).Concat(others))
            both.codes[code] = stands;

        return both;
    }
}
