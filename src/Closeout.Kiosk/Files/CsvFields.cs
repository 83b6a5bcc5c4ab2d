using System.Text;

namespace Closeout.Files;

/// <summary>The fields of a row, each asked for when it is needed.</summary>
internal abstract class CsvFields(CsvHeader header)
{
    /// <summary>The line in which the row begins.</summary>
    public abstract int Line { get; }

    public CsvHeader Header => header;

    /// <summary>A field of the row, without its quotes. The same text may come as the same string.</summary>
    public abstract string Text(int field);

    /// <summary>The same in UTF-8.</summary>
    public abstract ReadOnlySpan<byte> Bytes(int field);

    /// <summary>The line and column at which a field begins.</summary>
    public abstract (int Line, int Column) Place(int field);

    /// <summary>A copy that stays as it is when the next row is read.</summary>
    public CsvFields Keep() => new Kept(this);

    private sealed class Kept(CsvFields row) : CsvFields(row.Header)
    {
        private readonly Dictionary<int, (string Text, (int Line, int Column) Place)> fields =
            row.Header.Fields.ToDictionary(f => f, f => (row.Text(f), row.Place(f)));

        public override int Line { get; } = row.Line;

        public override string Text(int field) => fields[field].Text;

        public override ReadOnlySpan<byte> Bytes(int field) => Encoding.UTF8.GetBytes(fields[field].Text);

        public override (int Line, int Column) Place(int field) => fields[field].Place;
    }
}
