using Closeout.DayBook;
using Closeout.Files;
using Closeout.Restock;

namespace Closeout.Commands;

/// <summary><c>picks --out DIR</c>: a pick sheet for every van as text, and all of them in one HTML file.</summary>
public static class PicksCommand
{
    public static int Run(Depot depot, string outDir)
    {
        var plan = RestockPlan.For(depot);
        var texts = depot.Setup.Vans.Select(v => ($"pick-{v.Code}.txt", PickSheet.Text(depot, plan, v)));
        return Output.WriteAll(outDir, [.. texts, ("picks.html", PickSheet.Html(depot, plan))]);
    }
}
