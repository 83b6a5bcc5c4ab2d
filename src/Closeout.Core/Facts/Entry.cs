using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>One fact that somebody confirmed, in the past tense. Never edited: a correction is a new entry.</summary>
/// <remarks>
/// The hierarchy is closed. Each kind has a name and a version in the list above its base, where the codec of the store reads
/// them. A fold that meets a kind it does not know throws.
/// </remarks>
public abstract record Entry
{
    private protected Entry()
    {
    }

    /// <summary>What the entry does to stock.</summary>
    [JsonIgnore]
    public virtual IReadOnlyList<Move> Moves => [];

    /// <summary>Whom and what it names: the set-up must know them, and they say whom it concerns.</summary>
    [JsonIgnore]
    public virtual Names Names => Names.None;
}

/// <summary>An entry as it stands in the book.</summary>
/// <param name="Number">From 1, without holes, over all pages.</param>
/// <param name="At">When it was confirmed, with the local offset of that moment.</param>
public sealed record Recorded(int Number, DateTimeOffset At, Entry Entry);

/// <summary>Whom and what an entry names.</summary>
/// <param name="Van">The van that it is of; null: of no van.</param>
/// <param name="By">Who says it. Null: nobody named himself; of a close-out's answers it is whoever brought the van in.</param>
public sealed record Names(Code<Van>? Van = null, Code<Technician>? By = null)
{
    public static readonly Names None = new();

    /// <summary>Another van that it concerns; null: none.</summary>
    public Code<Van>? OtherVan { get; init; }

    /// <summary>Somebody whom it is about; null: nobody.</summary>
    public Code<Technician>? About { get; init; }

    public IReadOnlyList<Code<Item>> Items { get; init; } = [];

    public Code<KitPiece>? Piece { get; init; }

    public Code<WasteStream>? Stream { get; init; }
}
