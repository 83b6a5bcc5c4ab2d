namespace Closeout.Cardboard;

/// <summary>Boards that a depot need not set up: typical combined weights, from memory.</summary>
/// <remarks>
/// Each is liners + medium times take-up + adhesive, in lb/MSF: 32ECT-B 35 - 23 x 1.32 - 35 + 2; 32ECT-C 35 - 23 x 1.43 - 35 + 2;
/// 44ECT-C 56 - 26 x 1.43 - 56 + 2; 51ECT-BC 42 - 26 x 1.32 - 33 - 26 x 1.43 - 42 + 4. Rounded to whole pounds.
/// A depot's own, best found by weighing ten flat boxes, go before them.
/// </remarks>
public static class Boards
{
    public static readonly IReadOnlyList<Board> Typical =
    [
        new("32ECT-B", 102),
        new("32ECT-C", 105),
        new("44ECT-C", 151),
        new("51ECT-BC", 193),
    ];

    /// <summary>The board of that name, compared without case: the depot's own, else a typical one, else null.</summary>
    public static Board? Find(IReadOnlyList<Board> own, string name) =>
        own.Concat(Typical).FirstOrDefault(b => string.Equals(b.Name, name, StringComparison.OrdinalIgnoreCase));
}
