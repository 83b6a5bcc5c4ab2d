using Closeout.Bench.Plan;
using Closeout.Turning;

namespace Closeout.Bench.Kiosk;

/// <summary>A depot of a hundred vans: the sample day's six, over and over, with their stock, visits and bookings.</summary>
internal static class HundredVans
{
    private const int Vans = 100;

    /// <param name="folder">Where its day folder goes.</param>
    /// <param name="history">Whether it has 60 days of visits; without, it is a depot on its first day.</param>
    public static DayGiven Write(string folder, bool history)
    {
        Directory.CreateDirectory(folder);
        var sample = TempFolder.InTree("sample-day");
        foreach (var path in Directory.EnumerateFiles(sample, "*.csv"))
        {
            var file = Path.GetFileName(path);
            var lines = File.ReadAllLines(path);
            var rows = file switch
            {
                "evening.csv" => null,
                "usage.csv" or "bookings.csv" when !history => null,
                "crew.csv" or "vans.csv" or "van_limits.csv" or "stock.csv" or "usage.csv" or "bookings.csv" => Multiplied(file, lines),
                _ => lines,
            };
            if (rows is not null)
            {
                File.WriteAllLines(Path.Combine(folder, file), rows);
            }
        }

        return BigPlan.Read(folder);
    }

    private static IEnumerable<string> Multiplied(string file, string[] lines)
    {
        var columns = lines[0].Split(',');
        var (van, bay, technician, visit, cartons) = (Array.IndexOf(columns, file == "stock.csv" ? "place" : "van"), Array.IndexOf(columns, "bay"), Array.IndexOf(columns, "technician"), Array.IndexOf(columns, "visit"), Array.IndexOf(columns, "cartons"));
        yield return lines[0];
        var vans = lines.Skip(1).Select(l => l.Split(',')[van]).Where(v => v.StartsWith('B')).Distinct().ToList();
        foreach (var fields in lines.Skip(1).Select(l => l.Split(',')))
        {
            if (!vans.Contains(fields[van]))
            {
                // The shelf is as much larger as the depot.
                yield return string.Join(',', fields.Select((f, i) => i == cartons && fields[van] == "shelf" ? $"{int.Parse(f, System.Globalization.CultureInfo.InvariantCulture) * Vans / 6}" : f));
                continue;
            }

            var own = int.Parse(fields[van][1..], System.Globalization.CultureInfo.InvariantCulture);
            for (var copy = own; copy <= Vans; copy += 6)
            {
                yield return string.Join(',', fields.Select((f, i) => i == van ? $"B{copy}" : i == bay ? $"{copy}" : i == technician && copy > 6 ? $"{f}-{copy}" : i == visit && f.Length > 0 ? $"{f}-{copy}" : f));
            }
        }
    }
}
