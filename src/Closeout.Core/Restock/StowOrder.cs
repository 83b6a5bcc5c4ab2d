namespace Closeout.Restock;

/// <summary>The order in which a van is loaded: what lies deepest is named first in the items file.</summary>
public static class StowOrder
{
    /// <summary>The van's lines with anything to take.</summary>
    public static IReadOnlyList<RestockLine> ToTake(Depot depot, RestockPlan plan, Code<Van> van)
    {
        var order = depot.Setup.Items.OrderBy(i => depot.Setup.Stows[i.Stow]).Index().ToDictionary(i => i.Item.Code, i => i.Index);
        return [.. plan.Lines.Where(l => l.Van.Code == van && l.Units > 0).OrderBy(l => order[l.Item.Code])];
    }
}
