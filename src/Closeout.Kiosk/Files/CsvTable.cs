using System.Text;
using CsvHelper;

namespace Closeout.Files;

/// <summary>A CSV file of the day folder: its rows, with the place of every field.</summary>
public sealed class CsvTable
{
    /// <summary>The largest file read, in bytes: two months of visits of a thousand vans fit ten times over.</summary>
    public const long MostBytes = 256L * 1024 * 1024;

    private const int MostRecordBytes = 1024 * 1024;

    private CsvTable(string file, IReadOnlyList<CsvRow> rows, bool isThere) => (File, Rows, IsThere) = (file, rows, isThere);

    public string File { get; }

    public IReadOnlyList<CsvRow> Rows { get; }

    /// <summary>Whether the file exists and has a header.</summary>
    public bool IsThere { get; }

    /// <summary>Reads a file of the folder. Faults go to <paramref name="findings"/>; the rows that are whole are returned all the same.</summary>
    public static CsvTable Read(string folder, string file, bool required, string[] columns, string[] optional, Findings findings)
    {
        var path = Path.Combine(folder, file);
        if (!System.IO.File.Exists(path))
        {
            if (required)
            {
                findings.Fault(file, 1, 1, $"the file is missing: found nothing, allowed is a CSV file with the columns {string.Join(",", columns)}");
            }

            return new(file, [], false);
        }

        byte[] bytes;
        try
        {
            bytes = Bytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            findings.Fault(file, 1, 1, $"the file cannot be read: found {e.Message}, allowed is a readable CSV file of at most {MostBytes} bytes");
            return new(file, [], false);
        }

        if (FirstBadByte(bytes) is { } bad)
        {
            var before = bytes.AsSpan(0, bad);
            var line = 1 + before.Count((byte)'\n');
            var column = 1 + Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]);
            findings.Fault(file, line, column, $"the text is not UTF-8: found byte 0x{bytes[bad]:X2}, allowed is UTF-8 with or without BOM");
            return new(file, [], false);
        }

        return new Reading(file, columns, optional, findings).Rows(bytes);
    }

    private static byte[] Bytes(string path)
    {
        var length = new FileInfo(path).Length;
        return length <= MostBytes ? System.IO.File.ReadAllBytes(path) : throw new IOException($"{length} bytes");
    }

    private static int? FirstBadByte(byte[] bytes)
    {
        for (var at = 0; at < bytes.Length;)
        {
            if (Rune.DecodeFromUtf8(bytes.AsSpan(at), out _, out var read) != System.Buffers.OperationStatus.Done)
            {
                return at;
            }

            at += read;
        }

        return null;
    }

    private sealed class Reading(string file, string[] columns, string[] optional, Findings findings)
    {
        private readonly HashSet<int> misquoted = [];
        private Dictionary<string, int> index = [];
        private int width;

        public CsvTable Rows(byte[] bytes)
        {
            using var csv = CsvReader.Create(bytes, new CsvReaderOptions
            {
                Separator = ',', HasHeader = false, SkipEmptyLines = true, TrackLineNumbers = true, MaxRecordSize = MostRecordBytes,
                MalformedData = CsvMalformedDataHandling.Recover, OnMalformedRecord = Malformed, FieldCountMismatch = CsvFieldCountHandling.Allow,
            });
            var rows = new List<CsvRow>();
            var headed = false;
            while (csv.Read())
            {
                if (csv.RawRecord.Length > MostRecordBytes)
                {
                    findings.Fault(file, (int)csv.LineNumber, 1, $"the row is too long: found {csv.RawRecord.Length} bytes, allowed {MostRecordBytes}");
                    continue;
                }

                var row = Row(csv);
                if (!headed)
                {
                    headed = true;
                    Header(row);
                }
                else if (row.Cells.Count != width)
                {
                    if (!misquoted.Contains(row.Line))
                    {
                        findings.Fault(file, row.Line, 1, $"the row does not fit the header: found {row.Cells.Count} fields, allowed {width}");
                    }
                }
                else if (!misquoted.Contains(row.Line))
                {
                    rows.Add(row);
                }
            }

            if (!headed)
            {
                findings.Fault(file, 1, 1, $"the file is empty: found nothing, allowed is a header row with {string.Join(",", columns)}");
            }

            return new(file, rows, headed);
        }

        /// <summary>Told once for its quotes, a row is not read further.</summary>
        private void Malformed(CsvMalformedRecord record)
        {
            misquoted.Add((int)record.LineNumber);
            var what = record.Reason switch
            {
                CsvMalformedReason.UnterminatedQuote => "a quote that is not closed",
                CsvMalformedReason.TextAfterClosingQuote => "text behind a closing quote",
                _ => "a quote inside a field that does not begin with one",
            };
            findings.Fault(file, (int)record.LineNumber, 1, $"the quotes do not match: found {what}, allowed is RFC 4180: a field with quotes stands in quotes, each doubled");
        }

        private void Header(CsvRow header)
        {
            width = header.Cells.Count;
            index = [];
            foreach (var (i, cell) in header.Cells.Index())
            {
                var name = columns.Concat(optional).FirstOrDefault(c => string.Equals(c, cell.Text, StringComparison.OrdinalIgnoreCase));
                if (name is null)
                {
                    findings.Note(file, cell.Line, cell.Column, $"unknown column {Findings.Quote(cell.Text)} is ignored");
                }
                else if (!index.TryAdd(name, i))
                {
                    findings.Fault(file, cell.Line, cell.Column, $"the column stands twice: found {name} again, allowed once");
                }
            }

            foreach (var missing in columns.Where(c => !index.ContainsKey(c)))
            {
                findings.Fault(file, header.Line, 1, $"a column is missing: found no {missing}, allowed are the columns {string.Join(",", columns)}");
            }
        }

        private CsvRow Row(CsvReader csv)
        {
            // Each place is reckoned from the one before: a row may be a million commas.
            var cells = new List<CsvCell>(csv.FieldCount);
            var raw = csv.RawRecord;
            var (line, column, offset) = ((int)csv.LineNumber, 1, 0);
            for (var i = 0; i < csv.FieldCount; i++)
            {
                cells.Add(new(csv.GetString(i), line, column));
                var end = Math.Min(offset + csv.GetRawSpan(i).Length + 1, raw.Length);
                var field = raw[offset..end];
                line += field.Count((byte)'\n');
                column = field.LastIndexOf((byte)'\n') is >= 0 and var feed ? 1 + Encoding.UTF8.GetCharCount(field[(feed + 1)..]) : column + Encoding.UTF8.GetCharCount(field);
                offset = end;
            }

            return new(file, (int)csv.LineNumber, cells, index, findings);
        }
    }
}

/// <summary>A field and where it stands.</summary>
public sealed record CsvCell(string Text, int Line, int Column);
