using Closeout.DayBook;
using Closeout.Files;
using Closeout.Restock;

namespace Closeout.Commands;

/// <summary><c>morning --out DIR</c>: the morning sheet, a page for the depot and one for every van, as text and in one HTML.</summary>
public static class MorningCommand
{
    public static int Run(Depot depot, string outDir)
    {
        var plan = RestockPlan.For(depot);
        return Output.WriteAll(outDir,
        [
            ("morning.txt", MorningSheet.Text(MorningSheet.OfDepot(depot, plan))),
            .. depot.Setup.Vans.Select(v => ($"morning-{v.Code}.txt", MorningSheet.Text(MorningSheet.OfVan(depot, plan, v)))),
            ("morning.html", MorningSheet.Html(depot, plan)),
        ]);
    }
}
