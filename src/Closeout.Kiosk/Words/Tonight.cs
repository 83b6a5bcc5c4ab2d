using Closeout.Restock;
using Closeout.Vans;

namespace Closeout.Words;

/// <summary>The depot as it stands, and what is worked out of it, each once: a new one for each entry.</summary>
/// <param name="before">As it was before the last entries: what they did not touch is not worked out anew. Null: nothing is known.</param>
public sealed class Tonight(Depot depot, Tonight? before = null)
{
    private readonly RestockPlan? earlier = before?.plan ?? before?.earlier;
    private RestockPlan? plan;
    private (Func<string, string?>? Spoken, IReadOnlyList<VanState> Vans)? vans;
    private (Func<string, string?>? Spoken, IReadOnlyList<(string Word, string Sentence)> Totals)? totals;

    public Depot Depot => depot;

    /// <summary>Tomorrow's plan.</summary>
    public RestockPlan Plan => plan ??= RestockPlan.For(depot, earlier);

    /// <summary>All vans on the bay wall, in bay order.</summary>
    public IReadOnlyList<VanState> Vans =>
        (vans is { } known && known.Spoken == Spoken ? known : vans = (Spoken, Readiness.Of(depot))).Value.Vans;

    /// <summary>One van as it stands on the wall.</summary>
    public VanState Van(Code<Van> van) => Vans.First(v => v.Van.Code == van);

    /// <summary>The depot's totals on the bay wall, each a word and a sentence.</summary>
    public IReadOnlyList<(string Word, string Sentence)> Totals =>
        (totals is { } known && known.Spoken == Spoken ? known : totals = (Spoken, [.. WallWords.Totals(this)])).Value.Totals;
}
