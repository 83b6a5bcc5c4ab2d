using System.Text;
using Closeout.Files;
using Closeout.Words;

namespace Closeout.Commands;

/// <summary><c>morning --out DIR</c>: the morning sheet, a page for the depot and one for every van, as text and in one HTML file.</summary>
public static class MorningCommand
{
    public static int Run(Tonight t, string outDir)
    {
        Output.MakeFolder(outDir);
        Output.Write(Path.Combine(outDir, "morning.txt"), Encoding.UTF8.GetBytes(MorningSheet.Text(MorningSheet.OfDepot(t))));
        foreach (var van in t.Depot.Setup.Vans)
        {
            Output.Write(Path.Combine(outDir, $"morning-{van.Code}.txt"), Encoding.UTF8.GetBytes(MorningSheet.Text(MorningSheet.OfVan(t, van))));
        }

        Output.Write(Path.Combine(outDir, "morning.html"), Encoding.UTF8.GetBytes(MorningSheet.Html(t)));
        return ExitCode.Done;
    }
}
