namespace Closeout.Files;

/// <summary>Which columns a file has, and where they stand.</summary>
internal sealed class CsvHeader
{
    private string[] names = [];
    private int[] fields = [];
    private int last;

    /// <summary>The fields that some column is read from.</summary>
    public IEnumerable<int> Fields => fields;

    /// <summary>Which field of a row a column is; null: the header does not have it.</summary>
    public int? FieldOf(string column)
    {
        // Every row is asked for the same columns in the same order, by the same strings.
        for (var step = 0; step < names.Length; step++)
        {
            var at = last + step < names.Length ? last + step : last + step - names.Length;
            if (names[at] == column)
            {
                last = at;
                return fields[at];
            }
        }

        return null;
    }

    /// <summary>Takes the columns from the header row, and tells what is odd or wrong in it.</summary>
    /// <param name="width">How many fields it has.</param>
    public void Take(CsvFields row, int width, string[] wanted, string[] optional, string file, Findings findings)
    {
        for (var i = 0; i < width; i++)
        {
            var text = row.Text(i);
            var name = wanted.Concat(optional).FirstOrDefault(c => string.Equals(c, text, StringComparison.OrdinalIgnoreCase));
            if (name is null)
            {
                var (line, column) = row.Place(i);
                findings.Note(file, line, column, T($"unknown column {Findings.Quote(text)} is ignored"));
            }
            else if (FieldOf(name) is not null)
            {
                var (line, column) = row.Place(i);
                findings.Fault(file, line, column, T($"the column stands twice: found {name} again, allowed once"));
            }
            else
            {
                (names, fields) = ([.. names, name], [.. fields, i]);
            }
        }

        foreach (var missing in wanted.Where(c => FieldOf(c) is null))
        {
            findings.Fault(file, row.Line, 1,
                T($"a column is missing: found no {missing}, allowed are the columns {string.Join(",", wanted)}"));
        }
    }
}
