using System.Globalization;
using CsvHelper;

namespace Closeout.Files;

/// <summary>
/// Builds a CSV file in memory: UTF-8 without BOM, CRLF, RFC 4180. Text that a spreadsheet would run gets a leading apostrophe, and what
/// would steer a terminal becomes a dot; numbers are never touched.
/// </summary>
public sealed class CsvText : IDisposable
{
    private static readonly CsvWriterOptions Options = new() { Separator = ',', NewLine = "\r\n", Injection = CsvInjection.Escape };

    private readonly MemoryStream bytes = new();
    private readonly CsvWriter csv;

    public CsvText(params string[] columns)
    {
        csv = CsvWriter.Create(bytes, Options, leaveOpen: true);
        foreach (var column in columns)
            csv.WriteField(column);

        csv.EndRecord();
    }

    public CsvText Text(string? text)
    {
        csv.WriteField(Harmless.Field(text ?? ""));
        return this;
    }

    public CsvText Number(int number)
    {
        csv.WriteField(number);
        return this;
    }

    /// <summary>A number as short as it goes; null: an empty field.</summary>
    public CsvText Number(decimal? number)
    {
        if (number is { } n)
        {
            csv.WriteField(Normal(n));
            return this;
        }

        return Text(null);
    }

    /// <summary>A number with so many decimals; halves go away from zero.</summary>
    public CsvText Number(double number, int decimals)
    {
        // The double's own digits, exactly: rounding them any other way would shift some halves.
        var digits = decimal.Parse(number.ToString("F18", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        csv.WriteField(decimal.Parse(
            Math.Round(digits, decimals, MidpointRounding.AwayFromZero)
                .ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture));
        return this;
    }

    public CsvText Date(DateOnly? date) => Text(date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    public void EndRow() => csv.EndRecord();

    public byte[] Bytes()
    {
        csv.Flush();
        return bytes.ToArray();
    }

    public void Dispose()
    {
        csv.Dispose();
        bytes.Dispose();
    }

    private static decimal Normal(decimal number) => number / 1.000000000000000000000000000000000m;
}
