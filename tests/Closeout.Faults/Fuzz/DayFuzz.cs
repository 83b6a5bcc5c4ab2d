using Closeout.Cardboard;
using Closeout.Commands;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Screens.Steps;
using Closeout.Store;
using Closeout.Turning;
using Closeout.Vans;
using Closeout.Words;

namespace Closeout.Faults.Fuzz;

/// <summary>A whole day folder with one file spoiled. What is taken must stand in a book, give a plan and files, and come back from its line as it was.</summary>
internal sealed class DayFuzz : IFuzzed
{
    private readonly string folder;
    private readonly List<string> files = [.. ShortDay.Files.Keys.Order(StringComparer.Ordinal)];
    private string spoiled = "depot.csv";

    public DayFuzz(string folder)
    {
        this.folder = folder;
        ShortDay.Write(folder);
    }

    public string Name => "day folder";

    public byte[] Make(Random random)
    {
        spoiled = Mutations.Any(random, files);
        return CsvMutations.Of(ShortDay.Files[spoiled], random);
    }

    public string Give(byte[] input)
    {
        var path = Path.Combine(folder, spoiled);
        File.WriteAllBytes(path, input);
        try
        {
            if (DayFolder.Read(folder, StepPages.Evening) is not { Given: { } given } day)
            {
                return "told as faults";
            }

            var opened = new Recorded(1, DateTimeOffset.UnixEpoch, given.FirstPage(rehearsal: true));
            var depot = Depot.Fold([opened]);
            var line = PageLine.Write(opened, PageLine.Nothing).Bytes;
            var back = PageLine.Read(line.AsSpan(0, line.Length - 1), null).Recorded;
            if (!PageLine.Write(back, PageLine.Nothing).Bytes.AsSpan().SequenceEqual(line))
            {
                throw new InvalidOperationException("the page's line does not come back as it was written");
            }

            _ = WallText.Of(new(depot));
            // Those that look back ask an archive; here is none, so they are given what the page alone tells.
            _ = new[] { "restock", "shelf", "cardboard", "mileage", "wall", "accuracy", "kit" }.Sum(name => Output.Files[name](depot, null!).Length);
            _ = RecyclingCsv.Totals(depot.Setup.Depot, [.. RecyclingTotals.Tonight(depot)]).Length + IncidentsCsv.Write(IncidentLog.Of(depot)).Length + MileageLogCsv.Write(depot, [.. MileageLog.Of(depot)]).Length;
            _ = EveningAnswers.Of(day.Evening);
            _ = NextPage.After(depot, depot.Date.AddDays(1));
            return "taken";
        }
        finally
        {
            File.WriteAllText(path, ShortDay.Files[spoiled]);
        }
    }
}
