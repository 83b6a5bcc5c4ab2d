using System.Text;
using CsvHelper;

namespace Closeout.Files;

/// <summary>
/// Goes through the bytes of a CSV file row by row, within <see cref="CsvLimits"/>. No row is kept: fields are looked at where they stand,
/// and their places are reckoned only when something is told of them.
/// </summary>
internal sealed class CsvReading : CsvFields
{
    private const int TellEvery = 4096;

    private readonly string file;
    private readonly byte[] bytes;
    private readonly Findings findings;
    private readonly CsvReader csv;
    private int width;
    private int misquoted;
    private bool begun;

    public CsvReading(string file, byte[] bytes, Findings findings)
        : base(new())
    {
        (this.file, this.bytes, this.findings) = (file, bytes, findings);

        // As a stream, for with bytes in memory the library looks at no limit.
        csv = CsvReader.Create(new MemoryStream(bytes), new CsvReaderOptions
        {
            Separator = ',', HasHeader = false, SkipEmptyLines = true, TrackLineNumbers = true, PoolStrings = true,
            MaxRecordSize = CsvLimits.MostRowBytes,
            MalformedData = CsvMalformedDataHandling.Recover, OnMalformedRecord = Malformed,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
        });
    }

    /// <summary>Whether the file was left before its end.</summary>
    public bool IsCut { get; private set; }

    /// <summary>Reads the header. False: there is none that the rows could be read by.</summary>
    public bool ReadHeader(string[] wanted, string[] optional)
    {
        if (!Next())
        {
            if (!IsCut)
            {
                findings.Fault(
                    file, 1, 1, T($"the file is empty: found nothing, allowed is a header row with {string.Join(",", wanted)}"));
            }

            return false;
        }

        width = csv.FieldCount;
        if (width > CsvLimits.MostColumns)
        {
            Cut((int)csv.LineNumber, T($"the header has too many columns: found {width}, allowed {CsvLimits.MostColumns}"));
            return false;
        }

        Header.Take(this, width, wanted, optional, file, findings);
        return true;
    }

    public override int Line => (int)csv.LineNumber;

    public override string Text(int field) => csv.GetString(field);

    public override ReadOnlySpan<byte> Bytes(int field) => csv.GetSpan(field);

    public override (int Line, int Column) Place(int field)
    {
        var before = 0;
        for (var i = 0; i < field; i++)
            before += csv.GetRawSpan(i).Length + 1;

        var text = csv.RawRecord[..before];
        return (Line + text.Count((byte)'\n'), 1 + Encoding.UTF8.GetCharCount(text[(text.LastIndexOf((byte)'\n') + 1)..]));
    }

    /// <summary>The rows, one after the other in the same object.</summary>
    public IEnumerable<CsvRow> Rows()
    {
        if (begun)
            throw new InvalidOperationException($"the rows of {file} were read already, and none is kept");

        begun = true;
        using var reader = csv;
        var row = new CsvRow(this, file, findings);
        for (var rows = 0; Next(); rows++)
        {
            if (rows % TellEvery == 0)
                findings.Tell(new(file, rows, csv.ByteOffset));

            var line = (int)csv.LineNumber;
            if (findings.IsFull(file))
            {
                IsCut = true;
                findings.Enough(file, line);
                yield break;
            }

            if (rows == CsvLimits.MostRows)
            {
                Cut(line,
                    T($"the file has too many rows: found more than {CsvLimits.MostRows} below the header, allowed {CsvLimits.MostRows}"));
                yield break;
            }

            // Told once for its quotes, a row is not read further.
            if (line == misquoted)
                continue;

            if (csv.FieldCount != width)
            {
                findings.Fault(file, line, 1, T($"the row does not fit the header: found {csv.FieldCount} fields, allowed {width}"));
                continue;
            }

            if (TooLongField() is { } tooLong)
            {
                var (at, column) = Place(tooLong);
                findings.Fault(file, at, column,
                    T($"the field is too long: found {Text(tooLong).Length} characters, allowed {CsvLimits.MostField}"));
                continue;
            }

            row.Begin();
            yield return row;
        }
    }

    /// <summary>Goes to the next row. False: there is none, or it is so long that nothing behind it is looked at.</summary>
    private bool Next()
    {
        var (line, before) = (Math.Max(1, (int)csv.LineNumber), (int)csv.ByteOffset);
        try
        {
            if (!csv.Read())
                return false;
        }
        catch (CsvFormatException e)
        {
            // The library gave up in the midst of the row. It says where the row begins, or empty lines before it, and not in which line.
            var begins = (int)e.ByteOffset + bytes.AsSpan((int)e.ByteOffset).IndexOfAnyExcept((byte)'\r', (byte)'\n');
            TooLong(line + Breaks(bytes.AsSpan(before, begins - before)));
            return false;
        }

        if (csv.RawRecord.Length > CsvLimits.MostRowBytes)
        {
            TooLong((int)csv.LineNumber);
            return false;
        }

        return true;
    }

    private void TooLong(int line) =>
        Cut(line,
            T(
                $"the row is too long: found more than {CsvLimits.MostRowBytes} bytes, allowed {CsvLimits.MostRowBytes}; perhaps a quote "
                    + $"before is not closed"));

    private void Cut(int line, string what)
    {
        IsCut = true;
        findings.Fault(file, line, 1, T($"{what}. The file was not read further"));
    }

    private void Malformed(CsvMalformedRecord record)
    {
        misquoted = (int)record.LineNumber;
        var what = record.Reason switch
        {
            CsvMalformedReason.UnterminatedQuote => T("a quote that is not closed"),
            CsvMalformedReason.TextAfterClosingQuote => T("text behind a closing quote"),
            _ => T("a quote inside a field that does not begin with one"),
        };
        findings.Fault(file, misquoted, 1,
            T($"the quotes do not match: found {what}, allowed is RFC 4180: a field with quotes stands in quotes, each doubled"));
    }

    private int? TooLongField()
    {
        // No field has more characters than its row has bytes.
        for (var i = 0; csv.RawRecord.Length > CsvLimits.MostField && i < csv.FieldCount; i++)
        {
            if (Encoding.UTF8.GetCharCount(csv.GetSpan(i)) > CsvLimits.MostField)
                return i;
        }

        return null;
    }

    /// <summary>Line ends of any of the three kinds.</summary>
    private static int Breaks(ReadOnlySpan<byte> text) => text.Count((byte)'\n') + text.Count((byte)'\r') - text.Count("\r\n"u8);
}
