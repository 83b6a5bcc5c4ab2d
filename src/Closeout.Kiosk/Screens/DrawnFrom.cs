using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>What a screen is drawn from. Compared by what it is, not by what it holds: that takes no time.</summary>
internal sealed record DrawnFrom(Model Model, Tonight Tonight, long Minute, string Counting, Known? Known)
{
    public bool Equals(DrawnFrom? other) => other is not null
        && ReferenceEquals(Model, other.Model) && ReferenceEquals(Tonight, other.Tonight) && Minute == other.Minute
            && Counting == other.Counting && Known == other.Known;

    public override int GetHashCode() => Minute.GetHashCode();
}
