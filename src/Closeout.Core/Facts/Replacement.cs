namespace Closeout.Facts;

/// <summary>An item that the set-up no longer has, and the one that came instead.</summary>
public sealed record Replacement(Code<Item> Old, Code<Item> New)
{
    /// <summary>Those of the items, and those that earlier set-ups said. Never a circle: nothing that is an item is replaced.</summary>
    public static IReadOnlyList<Replacement> All(Setup setup)
    {
        List<Replacement> told =
            [.. setup.Items.Where(i => i.Replaces is not null).Select(i => new Replacement(i.Replaces!.Value, i.Code))];
        return [.. told, .. (setup.Replaced ?? []).Where(r => setup.Find(r.Old) is null && told.All(t => t.Old != r.Old))];
    }

    /// <summary>What a set-up must remember of the one before: an item that replaced another may itself be replaced.</summary>
    /// <returns>Null: nothing.</returns>
    public static IReadOnlyList<Replacement>? Kept(Setup before, Setup now)
    {
        var told = now.Items.Select(i => i.Replaces).ToHashSet();
        List<Replacement> kept = [.. All(before).Where(r => now.Find(r.Old) is null && !told.Contains(r.Old))];
        return kept.Count > 0 ? kept : null;
    }
}
