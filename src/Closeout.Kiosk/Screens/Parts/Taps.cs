namespace Closeout.Screens.Parts;

/// <summary>Where a tap or a click on a sheet does what keys do.</summary>
public sealed class Taps
{
    private readonly List<(int Row, int From, int To, IReadOnlyList<Keystroke> Keys)> places = [];

    /// <summary>Columns of a row that do what these keys do; of two that overlap the later counts.</summary>
    /// <param name="to">The column behind the last.</param>
    public void Add(int row, int from, int to, IEnumerable<Keystroke> keys) => places.Add((row, from, to, [.. keys]));

    /// <summary>The keys at a place; none: nothing is to tap there.</summary>
    public IReadOnlyList<Keystroke> At(int row, int column) =>
        places.LastOrDefault(p => p.Row == row && column >= p.From && column < p.To).Keys ?? [];

    /// <summary>So many keys up or down a list.</summary>
    public static IEnumerable<Keystroke> Steps(int by) => Enumerable.Repeat(new Keystroke(by < 0 ? Press.Up : Press.Down), Math.Abs(by));
}
