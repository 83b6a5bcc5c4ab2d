using Closeout.Restock;

namespace Closeout.Words;

/// <summary>The plan's sentences that screens, sheets and commands share.</summary>
public static class PlanWords
{
    /// <summary>Items of which nobody knows what a visit needs; null: none.</summary>
    public static string? Unknown(IReadOnlyList<Item> items) => items.Count == 0 ? null
        : T($"{string.Join(", ", items.Select(i => i.Code))}: no planning rate and no visit used it, so none is planned");

    /// <summary>Of what is short: what could be moved from van to van, and what is not ordered; each a word and a sentence.</summary>
    public static IEnumerable<(string Word, string Sentence)> Short(RestockPlan plan) => plan.Moves
        .Select(m => (T("Move?"), $"{m.Item.Code} {WhyLearned.Of(m)}"))
        .Concat(plan.Shelf.Select(WhyLearned.WhyNot).OfType<string>().Select(w => (T("No order"), w)));
}
