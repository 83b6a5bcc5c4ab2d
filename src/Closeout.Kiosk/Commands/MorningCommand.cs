using System.Text;
using Closeout.DayBook;
using Closeout.Files;
using Closeout.Restock;

namespace Closeout.Commands;

/// <summary><c>morning --out DIR</c>: the morning sheet, a page for the depot and one for every van, as text and in one HTML file.</summary>
public static class MorningCommand
{
    public static int Run(Depot depot, string outDir)
    {
        Output.MakeFolder(outDir);
        var plan = RestockPlan.For(depot);
        Output.Write(Path.Combine(outDir, "morning.txt"), Encoding.UTF8.GetBytes(MorningSheet.Text(MorningSheet.OfDepot(depot, plan))));
        foreach (var van in depot.Setup.Vans)
        {
            Output.Write(Path.Combine(outDir, $"morning-{van.Code}.txt"), Encoding.UTF8.GetBytes(MorningSheet.Text(MorningSheet.OfVan(depot, plan, van))));
        }

        Output.Write(Path.Combine(outDir, "morning.html"), Encoding.UTF8.GetBytes(MorningSheet.Html(depot, plan)));
        return ExitCode.Done;
    }
}
