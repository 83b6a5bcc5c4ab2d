namespace Closeout.Files;

/// <summary>
/// How much of a day-folder file is read. Real ones stay far below; a file of junk must end in a sentence, not in a machine
/// without memory. What goes beyond one of these is told once, with its place, and the file is not read further.
/// </summary>
public static class CsvLimits
{
    /// <summary>Bytes of a file: visit reports of four hundred vans for sixty days, twice over.</summary>
    public const long MostBytes = 128L * 1024 * 1024;

    public const int MostRows = 2_000_000;

    /// <summary>Bytes of a row, its line breaks within quotes included; so no line is longer either.</summary>
    public const int MostRowBytes = 64 * 1024;

    public const int MostColumns = 250;

    /// <summary>Characters of a field, also in a column that nobody reads.</summary>
    public const int MostField = 10_000;

    /// <summary>Faults told of a file, and notes as well. Whoever has more repairs those first.</summary>
    public const int MostTold = 1_000;
}
