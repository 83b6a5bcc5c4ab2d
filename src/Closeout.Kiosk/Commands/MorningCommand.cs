using Closeout.Files;

namespace Closeout.Commands;

/// <summary><c>morning --out DIR</c>: the morning sheet, a page for the depot and one for every van, as text and in one HTML.</summary>
public static class MorningCommand
{
    public static int Run(Tonight t, string outDir) => Output.WriteAll(outDir,
    [
        ("morning.txt", MorningSheet.Text(MorningSheet.OfDepot(t))),
        .. t.Depot.Setup.Vans.Select(v => ($"morning-{v.Code}.txt", MorningSheet.Text(MorningSheet.OfVan(t, v)))),
        ("morning.html", MorningSheet.Html(t)),
    ]);
}
