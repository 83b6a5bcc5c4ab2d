using System.Text.Json.Nodes;

namespace Closeout.Store;

/// <summary>How an entry of an older version becomes one of the next.</summary>
/// <param name="Version">The older one.</param>
/// <param name="Change">The next version's entry; what it gets may be changed and given back.</param>
public sealed record Upcast(string Kind, int Version, Func<JsonObject, JsonObject> Change)
{
    /// <summary>None yet: no release has written a book.</summary>
    public static readonly IReadOnlyList<Upcast> All = [];

    /// <summary>The steps from a version to today's, in their order; null: there is no way.</summary>
    public static IReadOnlyList<Upcast>? Way(IReadOnlyList<Upcast> all, EntryKind kind, int version)
    {
        var way = new List<Upcast>();
        for (; version < kind.Version; version++)
        {
            if (all.FirstOrDefault(u => u.Kind == kind.Name && u.Version == version) is not { } step)
                return null;

            way.Add(step);
        }

        return version == kind.Version ? way : null;
    }
}
