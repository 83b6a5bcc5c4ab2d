using Closeout.Faults.Machine;
using Closeout.Store;
using Closeout.Tests;

namespace Closeout.Faults.Power;

/// <summary>Power losses at every point of a recorded evening, and what the book is afterwards.</summary>
public static class PowerLosses
{
    /// <param name="answers">Answers typed in each of the evening's three parts.</param>
    /// <param name="withFlushes">False: as if the program never flushed, to see that a loss would be found.</param>
    public static Figure Run(int rounds, int seed, int answers = 90, bool withFlushes = true)
    {
        using var temp = new TempFolder();
        Directory.CreateDirectory(temp["recorded"]);
        var acts = Strace.Record(temp["recorded"], temp["strace"], [.. Child.Command("record", temp["recorded"], $"{seed}", $"{answers}")]);
        var asked = Books.Entries(new BookFolder(temp["recorded", "book"]));
        var said = acts.OfType<Acknowledged>().LastOrDefault()?.Number;
        if (said != asked.Count)
        {
            throw new InvalidOperationException($"the evening said {said} entries, and its book has {asked.Count}");
        }

        var (faults, archives) = (new FaultList(), new ArchiveTally());
        var (pending, more, torn) = (0, 0, 0);
        for (var round = 0; round < rounds; round++)
        {
            var random = new Random(Numbers.Mix(seed, round));
            var (disk, acknowledged) = Until(acts, round % (acts.Count + 1), withFlushes);
            pending += disk.IsPending ? 1 : 0;
            var left = temp[$"left-{round}"];
            disk.Lose(left, random, new[] { 0, 0.3, 0.7, 0.95, 1 }[random.Next(5)]);
            var outcome = new Restart(new BookFolder(Path.Combine(left, "book")), asked, acknowledged).Look(archives);
            more += outcome.Found > acknowledged ? 1 : 0;
            torn += outcome.WasTorn ? 1 : 0;
            if (outcome.Fault is { } fault)
            {
                faults.Add($"power loss {round} of seed {seed}, after act {round % (acts.Count + 1)}: {fault}");
            }

            Directory.Delete(left, recursive: true);
        }

        var kinds = Restart.Kinds(faults.All);
        return Figure.Of(
            "power", faults.All,
            $"{rounds} power losses over {acts.Count} acts of an evening of {asked.Count} entries, {pending} with something unflushed; acknowledged and lost {kinds.Lost}, silently wrong {kinds.Wrong}, not openable {kinds.NotOpenable}; {torn} torn lines set aside, {more} with an entry that was on disk and not yet acknowledged; archives: {archives.Asked} asked, {archives.Wrong} answered wrongly, {archives.Refused} refused",
            ("rounds", rounds), ("acts", acts.Count), ("entries", asked.Count), ("pending", pending), ("torn", torn), ("more", more), ("archives", archives.Asked), ("archives wrong", archives.Wrong));
    }

    /// <summary>The disk after so many acts, and how many entries were acknowledged by then.</summary>
    private static (DiskModel Disk, int Acknowledged) Until(List<DiskAct> acts, int count, bool withFlushes)
    {
        var (disk, acknowledged) = (new DiskModel(), 0);
        foreach (var act in acts.Take(count))
        {
            if (act is Acknowledged ack)
            {
                acknowledged = ack.Number;
            }
            else if (withFlushes || act is not Flushed)
            {
                disk.Do(act);
            }
        }

        return (disk, acknowledged);
    }
}
