using System.Text;
using Closeout.Files;
using Closeout.Words;

namespace Closeout.Commands;

/// <summary><c>picks --out DIR</c>: a pick sheet for every van as text, and all of them in one HTML file.</summary>
public static class PicksCommand
{
    public static int Run(Tonight t, string outDir)
    {
        Output.MakeFolder(outDir);
        foreach (var van in t.Depot.Setup.Vans)
        {
            Output.Write(Path.Combine(outDir, $"pick-{van.Code}.txt"), Encoding.UTF8.GetBytes(PickSheet.Text(t, van)));
        }

        Output.Write(Path.Combine(outDir, "picks.html"), Encoding.UTF8.GetBytes(PickSheet.Html(t)));
        return ExitCode.Done;
    }
}
