namespace Closeout.Restock;

/// <summary>A lead changes the plan of a date.</summary>
/// <param name="Item">Needed but for leaving the van out.</param>
public sealed record ChangePlan(
    OverrideKind Kind, Code<Van> Van, Code<Item>? Item, DateOnly Date, int Units, string Reason, Code<Technician> Lead) : ICommand
{
    public Decision Decide(Depot depot) =>
        depot.Setup.Find(Van) is not { } van ? Refusal.NoSuchVan(Van) with { About = "van" }
        : Given.Lead(depot.Setup, Lead, T("changes the plan")) is { } refused ? refused
        : Date <= depot.Date ? StockRefusal.DateIsOver(Date, depot.Date) with { About = "date" }
        : Given.Words(T("the reason"), Reason) is { } silent ? silent
        : Kind == OverrideKind.Exclude ? Changed(depot, van, null, 0)
        : Item is not { } code ? StockRefusal.NoItemNamed(van) with { About = "item" }
        : depot.Setup.Find(code) is not { } item ? Refusal.NoSuchItem(code) with { About = "item" }
        : Given.Range(T("Units"), Units, 0, Refusal.MostAtOnce, "units") is { } outside ? outside
        : depot.Setup.Limit(van.Code, item).High is var high && Units > high
            ? StockRefusal.AboveHigh(item, van, Units, high) with { About = "units" }
        : Changed(depot, van, item, Units);

    private PlanOverridden Changed(Depot depot, Van van, Item? item, int units) =>
        new(Kind, van.Code, item?.Code, Date, units, Reason.Trim(), depot.Setup.Find(Lead)!.Code);
}

/// <summary>A lead takes a change back.</summary>
/// <param name="Number">The entry of the change.</param>
public sealed record WithdrawChange(int Number, string Reason, Code<Technician> Lead) : ICommand
{
    public Decision Decide(Depot depot) =>
        Given.Lead(depot.Setup, Lead, T("changes the plan")) is { } refused ? refused
        : Given.Words(T("the reason"), Reason) is { } silent ? silent
        : depot.Planning.Overrides.All(o => o.Number != Number) ? StockRefusal.NoSuchChange(Number) with { About = "kind" }
        : new OverrideWithdrawn(Number, Reason.Trim(), depot.Setup.Find(Lead)!.Code);
}
