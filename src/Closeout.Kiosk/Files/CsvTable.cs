using System.Text;

namespace Closeout.Files;

/// <summary>A CSV file of the day folder: its rows, and the place of whatever is wrong in them.</summary>
public sealed class CsvTable
{
    private readonly CsvReading? reading;

    private CsvTable(string file, CsvReading? reading) => (File, this.reading) = (file, reading);

    public string File { get; }

    /// <summary>
    /// The rows that are whole, read while they are asked for: once, from the first to the last, each good until the next. What is wrong
    /// with the others is told on the way.
    /// </summary>
    public IEnumerable<CsvRow> Rows => reading?.Rows() ?? [];

    /// <summary>Whether the file exists and has a header.</summary>
    public bool IsThere => reading is not null;

    /// <summary>Whether nothing of it was left unread; to be asked after the rows.</summary>
    public bool IsWhole => reading is { IsCut: false };

    /// <summary>Reads a file of the folder as far as its header. Faults go to <paramref name="findings"/>.</summary>
    public static CsvTable Read(string folder, string file, bool required, string[] columns, string[] optional, Findings findings)
    {
        byte[] bytes;
        try
        {
            bytes = PlainFile.Read(Path.Combine(folder, file), CsvLimits.MostBytes);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            if (required)
            {
                findings.Fault(
                    file, 1, 1,
                    T($"the file is missing: found nothing, allowed is a CSV file with the columns {string.Join(",", columns)}"));
            }

            return new(file, null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            findings.Fault(file, 1, 1,
                T(
                    $"the file cannot be read: found {(e as NoPlainFileException)?.Found ?? e.Message}, allowed is a readable CSV file "
                        + $"of at most {CsvLimits.MostBytes} bytes"));
            return new(file, null);
        }

        if (FirstBadByte(bytes) is { } bad)
        {
            var before = bytes.AsSpan(0, bad);
            var line = 1 + before.Count((byte)'\n');
            var column = 1 + Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]);
            findings.Fault(
                file, line, column, T($"the text is not UTF-8: found byte 0x{bytes[bad]:X2}, allowed is UTF-8 with or without BOM"));
            return new(file, null);
        }

        var reading = new CsvReading(file, bytes, findings);
        return new(file, reading.ReadHeader(columns, optional) ? reading : null);
    }

    private static int? FirstBadByte(byte[] bytes)
    {
        // The whole at once is quick; byte by byte it is only to find the place.
        if (System.Text.Unicode.Utf8.IsValid(bytes))
            return null;

        var at = 0;
        while (Rune.DecodeFromUtf8(bytes.AsSpan(at), out _, out var read) == System.Buffers.OperationStatus.Done)
            at += read;

        return at;
    }
}
