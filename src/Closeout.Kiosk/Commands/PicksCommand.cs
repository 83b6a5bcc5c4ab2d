using Closeout.Files;

namespace Closeout.Commands;

/// <summary><c>picks --out DIR</c>: a pick sheet for every van as text, and all of them in one HTML file.</summary>
public static class PicksCommand
{
    public static int Run(Tonight t, string outDir)
    {
        var texts = t.Depot.Setup.Vans.Select(v => ($"pick-{v.Code}.txt", PickSheet.Text(t, v)));
        return Output.WriteAll(outDir, [.. texts, ("picks.html", PickSheet.Html(t))]);
    }
}
