namespace Closeout.Facts;

/// <summary>Something besides cardboard that comes home from visits and is collected at the depot.</summary>
/// <param name="English">What it is called, in English.</param>
/// <param name="Unit">What it is counted in: <c>pieces</c>, or <c>lb</c> (pounds).</param>
/// <param name="Label">For universal waste, the words that the rule wants on its collecting box; null: it is none.</param>
/// <remarks>
/// Universal waste is the term of 40 CFR part 273 for common hazardous wastes under easier rules. State rules may be
/// stricter, and the site's own procedure comes first.
/// </remarks>
public sealed record WasteStream(Code<WasteStream> Code, string English, string Unit, string? Label)
{
    /// <summary>What it is called, in the language that is spoken.</summary>
    public string Description => T(English);

    public bool IsUniversalWaste => Label is not null;

    public bool IsWeighed => Unit == Pounds;

    private const string Pieces = "pieces";
    private const string Pounds = "lb";

    /// <summary>The streams that a depot may switch on. Labels: 40 CFR 273.14 (a), (d) and (e).</summary>
    public static readonly IReadOnlyList<WasteStream> All =
    [
        new(new("lamps"), Later("Removed lamps, fluorescent"), Pieces, "Universal Waste-Lamp(s)"),
        new(new("thermostats"), Later("Mercury thermostats"), Pieces, "Universal Waste-Mercury Thermostat(s)"),
        new(new("batteries"), Later("Batteries"), Pieces, "Universal Waste-Battery(ies)"),
        new(new("metal"), Later("Scrap metal"), Pounds, null),
        new(new("film"), Later("Plastic film"), Pounds, null),
    ];

    /// <summary>The stream of that name; null: there is none.</summary>
    public static WasteStream? Find(Code<WasteStream> code) => All.FirstOrDefault(s => s.Code == code);

    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static WasteStream Of(Code<WasteStream> code) => Find(code) ?? throw new InvalidOperationException($"no waste stream {code}");
}
