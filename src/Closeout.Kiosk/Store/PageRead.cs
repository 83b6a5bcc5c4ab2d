namespace Closeout.Store;

/// <summary>How far a page has been read: bytes, lines, the last entry's number, and its sha.</summary>
public readonly record struct PageMark(long Offset, int Lines, int Number, string? Sha);

/// <summary>What a look at a page gave.</summary>
/// <param name="Shas">The checksum of each entry's line.</param>
/// <param name="First">For a page read from its start: its first line.</param>
/// <param name="Torn">Bytes after the last line feed, or a last line with a hole: begun and never confirmed, or just being written.</param>
public sealed record PageRead(IReadOnlyList<Recorded> Entries, IReadOnlyList<string> Shas, PageMark Mark, LineRead? First, byte[] Torn)
{
    /// <summary>What its entries come to.</summary>
    /// <param name="before">What stood before them; null: they are the whole page.</param>
    /// <exception cref="BookException">An entry is whole and cannot stand there; it is named.</exception>
    public Depot Fold(string path, Depot? before = null)
    {
        try
        {
            return before is null ? Depot.Fold(Entries) : Entries.Aggregate(before, (depot, e) => depot.Apply(e));
        }
        catch (Exception e) when (e is InvalidOperationException or OverflowException or ArgumentException)
        {
            throw BookException.Damaged(T($"{path}: an entry is whole but cannot stand in this book: {e.Message}."), e);
        }
    }
}
