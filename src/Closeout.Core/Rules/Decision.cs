namespace Closeout.Rules;

/// <summary>What a command comes to: one entry, or a refusal. One entry each, so that no crash can record half of an answer.</summary>
public readonly record struct Decision(Entry? Entry, Refusal? Refusal)
{
    public static implicit operator Decision(Entry entry) => new(entry, null);

    public static implicit operator Decision(Refusal refusal) => new(null, refusal);
}
