using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Screens.Steps;
using Closeout.Turning;

namespace Closeout.Bench.Plan;

/// <summary>The steps from a day folder to restock.csv and shelf.csv, each to be timed by itself.</summary>
public static class BigPlan
{
    public static DayGiven Read(string folder)
    {
        var day = DayFolder.Read(folder, StepPages.Evening);
        return day.Given ?? throw new InvalidOperationException(string.Join('\n', day.Findings.Problems.Take(5)));
    }

    public static Depot Open(DayGiven given) => Depot.Fold([new Recorded(1, DateTimeOffset.UnixEpoch, given.FirstPage(rehearsal: true))]);

    public static (byte[] Restock, byte[] Shelf) Bytes(RestockPlan plan) => (RestockCsv.Write(plan), ShelfCsv.Write(plan));

    public static void Save(string folder, (byte[] Restock, byte[] Shelf) bytes)
    {
        File.WriteAllBytes(Path.Combine(folder, "restock-out.csv"), bytes.Restock);
        File.WriteAllBytes(Path.Combine(folder, "shelf-out.csv"), bytes.Shelf);
    }

    /// <summary>All of it.</summary>
    public static void Whole(string folder) => Save(folder, Bytes(RestockPlan.For(Open(Read(folder)))));
}
