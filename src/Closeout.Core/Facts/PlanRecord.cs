using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>What the plan promised a van of an item for the business date: units aboard in the morning that should suffice.</summary>
public sealed record Promise(Code<Van> Van, Code<Item> Item, int Target);

/// <summary>How the promises of one date and priority were kept.</summary>
/// <param name="Lines">Promises to vans that were closed out.</param>
/// <param name="Within">Of them, those whose demand stayed within the target.</param>
/// <param name="Missed">Units demanded beyond what was aboard.</param>
/// <param name="Emptied">Lines of which nothing was left: demand may have been more than anybody saw.</param>
/// <param name="Aboard">Units aboard in the morning.</param>
/// <param name="Used">Units used.</param>
/// <param name="Unpromised">Of the missed units, those of items that nothing was promised of.</param>
public sealed record KeptPromises(
    DateOnly Date, int Priority, int Lines, int Within, long Missed, int Emptied, long Aboard, long Used,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)] long Unpromised = 0);

/// <summary>The last blind count of an item in a van.</summary>
/// <param name="Gap">Book minus count, in units.</param>
public sealed record SpotCounted(Code<Van> Van, Code<Item> Item, DateOnly On, int Gap);
