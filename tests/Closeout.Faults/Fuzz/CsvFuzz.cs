using Closeout.Facts;
using Closeout.Files;
using Closeout.Screens.Steps;

namespace Closeout.Faults.Fuzz;

/// <summary>One file of the day folder, spoiled, and read by its reader; the other files are as they should be.</summary>
internal sealed class CsvFuzz : IFuzzed
{
    private readonly string folder;
    private readonly string file;
    private readonly string text;
    private readonly Action<string, Findings> read;

    private CsvFuzz(string folder, string file, Action<string, Findings> read) => (this.folder, this.file, text, this.read) = (folder, file, ShortDay.Files[file], read);

    public string Name => file;

    /// <summary>A fuzzed reader for each file of the day folder.</summary>
    /// <param name="temp">A folder that holds one file at a time.</param>
    public static IEnumerable<CsvFuzz> All(string temp)
    {
        var day = Path.Combine(temp, "day");
        ShortDay.Write(day);
        var none = new Findings();
        var boards = BoardsFile.Read(day, none);
        var (items, itemCodes) = ItemsFile.Read(day, boards, none);
        var (_, vans) = VansFile.Read(day, none);
        var (_, kit) = KitFile.Read(day, none);
        var (_, crew) = CrewFile.Read(day, vans, none);
        var (rates, _) = VisitsFile.Read(day, itemCodes, ReplacedItems.Of(items), none);
        var today = DepotFile.Read(day, none)!.BusinessDate;
        var readers = new Dictionary<string, Action<string, Findings>>
        {
            ["depot.csv"] = (f, found) => DepotFile.Read(f, found),
            ["boards.csv"] = (f, found) => BoardsFile.Read(f, found),
            ["items.csv"] = (f, found) => ItemsFile.Read(f, boards, found),
            ["vans.csv"] = (f, found) => VansFile.Read(f, found),
            ["van_limits.csv"] = (f, found) => VanLimitsFile.Read(f, vans, itemCodes, found),
            ["kit.csv"] = (f, found) => KitFile.Read(f, found),
            ["crew.csv"] = (f, found) => CrewFile.Read(f, vans, found),
            ["visits.csv"] = (f, found) => VisitsFile.Read(f, itemCodes, ReplacedItems.Of(items), found),
            ["stock.csv"] = (f, found) => StockFile.Read(f, vans, items, itemCodes, found),
            ["usage.csv"] = (f, found) => UsageFile.Read(f, vans, itemCodes, Kinds(rates), today, found),
            ["bookings.csv"] = (f, found) => BookingsFile.Read(f, vans, Kinds(rates), found),
            ["orders.csv"] = (f, found) => OrdersFile.Read(f, itemCodes, found),
            ["van_kit.csv"] = (f, found) => VanKitFile.Read(f, vans, kit, found),
            ["past.csv"] = (f, found) => PastFile.Read(f, today, vans, itemCodes, kit, found),
            ["evening.csv"] = (f, found) => Evening(f, vans, crew, itemCodes, kit, found),
        };
        return readers.Select(r => new CsvFuzz(Directory.CreateDirectory(Path.Combine(temp, r.Key + ".one")).FullName, r.Key, r.Value));
    }

    public byte[] Make(Random random) => CsvMutations.Of(text, random);

    public string Give(byte[] input)
    {
        File.WriteAllBytes(Path.Combine(folder, file), input);
        var findings = new Findings();
        read(folder, findings);
        foreach (var problem in findings.Problems.Concat(findings.Notes))
        {
            if (problem.ToString() is var said && (problem.Line < 1 || problem.Column < 1 || said.Any(char.IsControl)))
            {
                throw new InvalidOperationException($"the sentence is not fit to be read: {problem}");
            }
        }

        return findings.AreFaults ? "told as faults" : "taken";
    }

    /// <summary>usage.csv adds the kinds that it finds: fresh ones for each input.</summary>
    private static Known<VisitKind> Kinds(IReadOnlyList<PlanningRate> rates)
    {
        var kinds = new Known<VisitKind>("visits.csv", null);
        foreach (var rate in rates)
        {
            kinds.Add(rate.Kind);
        }

        return kinds;
    }

    private static void Evening(string folder, Known<Van> vans, Known<Technician> crew, Known<Item> items, Known<KitPiece> kit, Findings findings)
    {
        var rows = EveningFile.Read(folder, StepPages.Evening, new(vans, crew, items, kit), findings);
        if (!findings.AreFaults)
        {
            _ = EveningAnswers.Of(rows);
        }
    }
}
