using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>What the depot is set up with: everything in the day folder that is not stock, visits, bookings or orders.</summary>
/// <param name="Vans">In bay order.</param>
/// <param name="Items">In the order of the file, which is the order in which they lie in a van.</param>
/// <param name="Kit">In the order of the file, which is the order in which people check it.</param>
/// <param name="Replaced">What was replaced in earlier set-ups of the book; null: nothing.</param>
public sealed record Setup(
    DepotSettings Depot,
    IReadOnlyList<Item> Items,
    IReadOnlyList<Van> Vans,
    IReadOnlyList<VanLimit> Limits,
    IReadOnlyList<KitPiece> Kit,
    IReadOnlyList<VanKit> VanKit,
    IReadOnlyList<Technician> Crew,
    IReadOnlyList<PlanningRate> Rates,
    IReadOnlyList<Board> Boards,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<HandoverQuestion>? Handover = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<Replacement>? Replaced = null)
{
    // Made when first asked for. A copy (with) makes its own: its lists may differ.
    private Dictionary<Code<Item>, Item>? items;
    private IReadOnlyList<Item>? sorted;
    private Dictionary<Code<Van>, Van>? vans;
    private Dictionary<Code<Technician>, Technician>? crew;
    private Dictionary<string, int>? stows;
    private Dictionary<(Code<Van>, Code<Item>), VanLimit>? limits;
    private Dictionary<Code<Item>, Code<Item>>? successors;

    private Setup(Setup other)
    {
        (Depot, Items, Vans, Limits) = (other.Depot, other.Items, other.Vans, other.Limits);
        (Kit, VanKit, Crew, Rates, Boards) = (other.Kit, other.VanKit, other.Crew, other.Rates, other.Boards);
        (Handover, Replaced) = (other.Handover, other.Replaced);
    }

    /// <summary>The depot's own questions before a signature; empty: none.</summary>
    [JsonIgnore]
    public IReadOnlyList<HandoverQuestion> Questions => Handover ?? [];

    /// <summary>The units of its screens.</summary>
    public UnitSystem Units => new(Depot.Metric);

    /// <summary>Places in a van, numbered in the order in which the items first name them.</summary>
    public IReadOnlyDictionary<string, int> Stows =>
        stows ??= Items.Select(i => i.Stow).Distinct().Index().ToDictionary(s => s.Item, s => s.Index);

    /// <summary>The items in the order of their codes.</summary>
    public IReadOnlyList<Item> ItemsByCode => sorted ??= [.. Items.OrderBy(i => i.Code)];

    public Item? Find(Code<Item> code) => (items ??= Items.ToDictionary(i => i.Code)).GetValueOrDefault(code);

    public Van? Find(Code<Van> code) => (vans ??= Vans.ToDictionary(v => v.Code)).GetValueOrDefault(code);

    public Technician? Find(Code<Technician> code) => (crew ??= Crew.ToDictionary(t => t.Code)).GetValueOrDefault(code);

    public KitPiece? Find(Code<KitPiece> code) => Kit.FirstOrDefault(k => k.Code == code);

    /// <summary>The item of a code that the book must know.</summary>
    /// <exception cref="InvalidOperationException">It does not.</exception>
    public Item Item(Code<Item> code) => Find(code) ?? throw new InvalidOperationException($"no item {code} in the set-up");

    /// <summary>The van of a code that the book must know.</summary>
    /// <exception cref="InvalidOperationException">It does not.</exception>
    public Van Van(Code<Van> code) => Find(code) ?? throw new InvalidOperationException($"no van {code} in the set-up");

    /// <summary>The item that now stands for a code: the one that replaced it, or it itself.</summary>
    public Code<Item> Now(Code<Item> code)
    {
        successors ??= Replacement.All(this).ToDictionary(r => r.Old, r => r.New);
        while (successors.TryGetValue(code, out var next))
            code = next;

        return code;
    }

    /// <summary>The least and the most units of the item that the van carries.</summary>
    public (int Low, int High) Limit(Code<Van> van, Item item) =>
        (limits ??= Limits.ToDictionary(l => (l.Van, l.Item))).TryGetValue((van, item.Code), out var own)
            ? (own.Low, own.High)
            : (item.Low, item.High);

    /// <summary>How many of the piece the van must have: its own number, else the depot's.</summary>
    public int Required(Code<Van> van, KitPiece piece) =>
        VanKit.FirstOrDefault(k => k.Van == van && k.Piece == piece.Code)?.Required ?? piece.Required;

    /// <summary>The technician who drives the van by the roster; a lead only when nobody else does.</summary>
    public Technician? Rostered(Code<Van> van, DateOnly date) => Crew
        .Where(t => t.Van == van)
        .OrderBy(t => t.Workdays.Contains(date.DayOfWeek) ? 0 : 1)
        .ThenBy(t => t.IsLead ? 1 : 0)
        .ThenBy(t => t.Code)
        .FirstOrDefault();
}

/// <summary>A service van.</summary>
/// <param name="Bay">Where it stands at night, from 1; the order in which people think of vans.</param>
/// <param name="PayloadLb">
/// The most that people and cargo together may weigh, by the van's placard, in pounds; 0: not stated, and never checked.
/// </param>
/// <param name="OdometerMi">The reading when the van was set up; afterwards the book's last reading counts.</param>
/// <param name="ServiceEveryMi">Miles between services, 0: none by distance.</param>
/// <param name="ServiceEveryMonths">Months between services, 0: none by date.</param>
public sealed record Van(
    Code<Van> Code,
    int Bay,
    string Name,
    double PayloadLb,
    string Fuel,
    decimal OdometerMi,
    decimal ServiceEveryMi,
    int ServiceEveryMonths,
    decimal LastServiceMi,
    DateOnly LastServiceOn,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] decimal? TankGal = null);

/// <summary>A van's own low and high of an item.</summary>
public sealed record VanLimit(Code<Van> Van, Code<Item> Item, int Low, int High);

/// <summary>
/// What every van carries whatever the job. Keys, fuel card and remotes too: that they are in the van, never a PIN or a card's number.
/// </summary>
/// <param name="Critical">Missing, it puts the van on hold.</param>
/// <param name="Expires">Whether it bears a date after which it is no longer good.</param>
/// <param name="TestEveryDays">Of an instrument: calendar days from one calibration or bump test to the next; 0: it is not tested.</param>
/// <param name="WarnDays">From so many days before a date on, it is said.</param>
public sealed record KitPiece(Code<KitPiece> Code, string Description, int Required, bool Critical, bool Expires, int TestEveryDays = 0,
    int WarnDays = KitPiece.UsualWarnDays)
{
    /// <summary>Common practice.</summary>
    public const int UsualWarnDays = 30;

    /// <summary>Whether any date is read on it.</summary>
    public bool HasDate => Expires || TestEveryDays > 0;
}

/// <summary>A van's own required number of a kit piece.</summary>
public sealed record VanKit(Code<Van> Van, Code<KitPiece> Piece, int Required);

/// <summary>A depot's own question before the signature, answered by yes or no: yes is as it should be.</summary>
public sealed record HandoverQuestion(Code<HandoverQuestion> Code, string Question);

/// <summary>Somebody of the crew. A lead is a technician with the right to check, hold, reopen and correct.</summary>
/// <param name="Van">The van usually driven; null for none.</param>
/// <param name="Language">In which the close-out speaks, by ISO 639-1; null: the depot's.</param>
public sealed record Technician(
    Code<Technician> Code, string Name, bool IsLead, Code<Van>? Van, IReadOnlyList<DayOfWeek> Workdays,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Language = null);

/// <summary>Marks codes of visit kinds.</summary>
public sealed class VisitKind
{
    private VisitKind()
    {
    }
}

/// <summary>Units of an item that a visit of a kind is planned to use, worth as many observed visits as its weight.</summary>
public sealed record PlanningRate(Code<VisitKind> Kind, Code<Item> Item, double UnitsPerVisit, double WeightVisits);

/// <summary>A corrugated board and its weight in pounds per thousand square feet (MSF).</summary>
public sealed record Board(string Name, double WeightLbPerMsf);
