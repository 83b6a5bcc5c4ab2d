using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>The depot's own settings.</summary>
/// <param name="ShiftEnd">When vans are due back, local time.</param>
/// <param name="Metric">Whether screens show kilometres, litres and kilograms. Files stay as named.</param>
/// <param name="Service1">Promised chance that a priority-1 item is not missed, above 0 and below 1; so for 2 and 3.</param>
/// <param name="ContainerCuYd">Size of the cardboard container in cubic yards.</param>
/// <param name="ContainerFullPercent">At this filling the hauler is called.</param>
/// <param name="CardboardLbPerCuYd">Weight of a cubic yard of flattened boxes; default 106.</param>
/// <param name="GhgFactor">
/// Metric tons of CO2 equivalent per short ton recycled, with its source; null: no figure is shown. Negative: a credit, positive: a burden.
/// </param>
/// <param name="Streams">What else is counted when a van comes home; empty: nothing.</param>
/// <param name="CrewAndKitLb">
/// What of a van's payload people, ladders, tools and safety kit take, in pounds. Books written before there was the setting have the
/// default.
/// </param>
/// <param name="ChangeAt">See <see cref="ChangeLimit"/>; null: the default.</param>
/// <param name="OrderService">The promise of ordering, above 0 and below 1; null: each item's own level.</param>
/// <param name="ReturnAt">See <see cref="ReturnBand"/>; null: the default.</param>
public sealed record DepotSettings(
    string Name,
    TimeOnly ShiftEnd,
    bool Metric,
    double Service1,
    double Service2,
    double Service3,
    double ContainerCuYd,
    double ContainerFullPercent,
    double CardboardLbPerCuYd,
    double? GhgFactor,
    string? GhgFactorSource,
    IReadOnlyList<Code<WasteStream>> Streams,
    double CrewAndKitLb = DepotSettings.DefaultCrewAndKitLb,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)] string? Tongue = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? ChangeAt = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? OrderService = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? ReturnAt = null)
{
    /// <summary>What the depot speaks, by ISO 639-1.</summary>
    [JsonIgnore]
    public string Language => Tongue ?? "en";

    /// <summary>
    /// The cumulative sum, in standard deviations, above which a use counts as changed; 0: nothing is ever taken for changed.
    /// </summary>
    [JsonIgnore]
    public double ChangeLimit => ChangeAt ?? 8;

    /// <summary>
    /// Loose units go back to the bin where so many standard deviations of tomorrow's demand more than the target are aboard.
    /// </summary>
    [JsonIgnore]
    public double ReturnBand => ReturnAt ?? 1;

    /// <summary>The promised chance that ordering of an item of the priority keeps the depot from running out.</summary>
    public double OrderingService(int priority) => OrderService ?? Service(priority);

    /// <summary>The promised chance that an item of the priority is not missed.</summary>
    public double Service(int priority) => priority switch
    {
        1 => Service1,
        2 => Service2,
        3 => Service3,
        _ => throw new InvalidOperationException($"no such priority: {priority}"),
    };

    /// <summary>EPA, Volume-to-Weight Conversion Factors, 2016: corrugated containers.</summary>
    public const double DefaultCardboardLbPerCuYd = 106;

    /// <summary>
    /// Two seats of 150 lb each, the figure of 49 CFR 567.4(g)(3), and 150 lb of ladders, tools and safety kit, common practice.
    /// </summary>
    public const double DefaultCrewAndKitLb = 2 * 150 + 150;
}
