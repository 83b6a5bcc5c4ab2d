namespace Closeout.Facts;

/// <summary>What the book knows of somebody's PIN.</summary>
/// <param name="Hash">Null: no PIN.</param>
/// <param name="Failures">Wrong ones in a row.</param>
/// <param name="FailedAt">The last of them; null: none.</param>
public sealed record PersonPin(Code<Technician> Person, PinHash? Hash, bool Issued, int Failures, DateTimeOffset? FailedAt)
{
    /// <summary>Failures in a row after which a person's PIN opens nothing until a lead resets it.</summary>
    public const int MostInARow = 10;

    public bool IsLocked => Failures >= MostInARow;

    /// <summary>Whether there is one and it opens something.</summary>
    public bool IsGood => Hash is not null && !IsLocked;
}

/// <summary>Wrong PINs typed at a kiosk.</summary>
/// <param name="InARow">Since the last right one, whosever.</param>
/// <param name="Failed">The last moments, at most <see cref="Most"/>, the oldest first; a right PIN does not take them away.</param>
public sealed record KioskTries(string Kiosk, int InARow, IReadOnlyList<DateTimeOffset> Failed)
{
    /// <summary>Failures at one kiosk within a quarter of an hour, whosever, after which it takes no PIN for as long.</summary>
    public const int Most = 20;
}
