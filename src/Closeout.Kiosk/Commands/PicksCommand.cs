using System.Text;
using Closeout.DayBook;
using Closeout.Files;
using Closeout.Restock;

namespace Closeout.Commands;

/// <summary><c>picks --out DIR</c>: a pick sheet for every van as text, and all of them in one HTML file.</summary>
public static class PicksCommand
{
    public static int Run(Depot depot, string outDir)
    {
        Output.MakeFolder(outDir);
        var plan = RestockPlan.For(depot);
        foreach (var van in depot.Setup.Vans)
        {
            Output.Write(Path.Combine(outDir, $"pick-{van.Code}.txt"), Encoding.UTF8.GetBytes(PickSheet.Text(depot, plan, van)));
        }

        Output.Write(Path.Combine(outDir, "picks.html"), Encoding.UTF8.GetBytes(PickSheet.Html(depot, plan)));
        return ExitCode.Done;
    }
}
