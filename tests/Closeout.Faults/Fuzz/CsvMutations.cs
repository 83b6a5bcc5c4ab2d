using System.Text;

namespace Closeout.Faults.Fuzz;

/// <summary>Ways to spoil a CSV file, knowing its rows and fields.</summary>
internal static class CsvMutations
{
    public static byte[] Of(string text, Random random)
    {
        if (random.Next(25) == 0)
        {
            return Mutations.Random(random);
        }

        var rows = text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(r => r.Split(',').ToList()).ToList();
        for (var times = random.Next(3) == 0 ? random.Next(2, 5) : 1; times > 0; times--)
        {
            Row(rows, random);
        }

        if (random.Next(1000) == 0)
        {
            Bomb(rows, random);
        }

        var end = random.Next(12) switch { 0 => "\r", 1 => "\r\n", 2 => "\n\n", _ => "\n" };
        var separator = random.Next(200) == 0 ? ";" : ",";
        var spoiled = string.Join(end, rows.Select(r => string.Join(separator, r))) + (random.Next(8) == 0 ? "" : end);
        var bytes = Encoded(spoiled, random);
        return random.Next(10) == 0 ? Mutations.Bytes(bytes, random) : bytes;
    }

    private static void Row(List<List<string>> rows, Random random)
    {
        var row = rows.Count == 0 ? [] : rows[random.Next(random.Next(8) == 0 ? 1 : rows.Count)];
        var (at, cell) = (random.Next(rows.Count + 1), random.Next(row.Count + 1));
        switch (random.Next(14))
        {
            case 0:
                rows.Insert(at, [.. row]);
                break;
            case 1:
                rows.Remove(row);
                break;
            case 2:
                row.Insert(cell, Mutations.Value(random));
                break;
            case 3 when cell < row.Count:
                row.RemoveAt(cell);
                break;
            case 4 when cell < row.Count:
                row.Add(row[cell]);
                break;
            case 5 when cell < row.Count:
                row[cell] = $"\"{Mutations.Value(random)}\"";
                break;
            case 6 when cell < row.Count:
                row[cell] = row[cell].Insert(random.Next(row[cell].Length + 1), Mutations.Value(random));
                break;
            case 7:
                rows.Insert(at, [new string('"', random.Next(1, 200))]);
                break;
            case 8:
                row.Reverse();
                break;
            case 9 when random.Next(10) == 0:
                rows.AddRange(Enumerable.Range(0, random.Next(2000)).Select(_ => row.ToList()));
                break;
            case 10:
                rows.Reverse();
                break;
            default:
                if (cell < row.Count)
                {
                    row[cell] = Mutations.Value(random);
                }

                break;
        }
    }

    /// <summary>A row without an end, of commas, of one field again and again, or of quotes.</summary>
    private static void Bomb(List<List<string>> rows, Random random)
    {
        var row = rows.Count == 0 ? ["item"] : rows[random.Next(random.Next(2) == 0 ? 1 : rows.Count)];
        var cell = row.Count == 0 ? "" : row[random.Next(row.Count)];
        row.AddRange(Enumerable.Repeat(random.Next(4) switch { 0 => "", 1 => cell, 2 => "\"\"", _ => "\"\n\"" }, random.Next(1 << random.Next(10, 18))));
    }

    private static byte[] Encoded(string text, Random random) => random.Next(40) switch
    {
        0 => [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(text)],
        1 => Encoding.BigEndianUnicode.GetBytes(text),
        2 => Encoding.Latin1.GetBytes(text),
        3 => Encoding.UTF32.GetBytes(text),
        4 or 5 => [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(text)],
        6 => [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(text)],
        7 => Encoding.UTF8.GetBytes(text.Replace("\n", "\0", StringComparison.Ordinal)),
        _ => Encoding.UTF8.GetBytes(text),
    };
}
