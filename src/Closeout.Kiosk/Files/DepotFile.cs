namespace Closeout.Files;

/// <summary>depot.csv: settings by name.</summary>
public sealed record DepotFile(DepotSettings Settings, DateOnly BusinessDate)
{
    private const string File = "depot.csv";

    private static readonly string[] Needed = ["depot", "business_date", "shift_end", "units", "container_cu_yd", "container_full_percent"];

    private static readonly string[] Optional =
        ["service_1", "service_2", "service_3", "cardboard_lb_per_cu_yd", "ghg_factor_mtco2e_per_short_ton", "ghg_factor_source",
            "crew_and_kit_lb", "streams", "language", "change_limit", "order_service", "return_band"];

    /// <summary>Null when a setting was at fault.</summary>
    public static DepotFile? Read(string folder, Findings findings)
    {
        var table = CsvTable.Read(folder, File, required: true, ["setting", "value"], [], findings);
        if (!table.IsThere)
            return null;

        var rows = new Dictionary<string, CsvRow>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in table.Rows)
        {
            var setting = row.Raw("setting");
            if (!Needed.Concat(Optional).Contains(setting, StringComparer.OrdinalIgnoreCase))
                findings.Note(File, row.Line, 1, T($"unknown setting {Findings.Quote(setting)} is ignored"));
            else if (!rows.TryAdd(setting, row.Keep()))
                row.Fault("setting", T($"stands twice: found {setting} again, allowed once"));
        }

        if (!table.IsWhole)
            return null;

        foreach (var missing in Needed.Where(s => !rows.ContainsKey(s)))
            findings.Fault(File, 1, 1, T($"a setting is missing: found no {missing}, allowed are {string.Join(", ", Needed)}"));

        var before = findings.Problems.Count;
        var settings = new DepotSettings(
            Take(rows, "depot", r => r.Text("value"), ""),
            Take(rows, "shift_end", r => r.Clock("value"), default),
            Take(rows, "units", r => r.OneOf("value", "us", "metric"), "us") == "metric",
            Take(rows, "service_1", Service, 0.98),
            Take(rows, "service_2", Service, 0.95),
            Take(rows, "service_3", Service, 0.90),
            Take(rows, "container_cu_yd", r => (double)r.Number("value", 0, 10_000, openBelow: true), 1),
            Take(rows, "container_full_percent", r => (double)r.Number("value", 0, 100, openBelow: true), 100),
            Take(rows, "cardboard_lb_per_cu_yd", r => (double)r.Number("value", 0, 10_000, openBelow: true),
                DepotSettings.DefaultCardboardLbPerCuYd),
            Take(rows, "ghg_factor_mtco2e_per_short_ton", r => (double?)r.Number("value", -1_000, 1_000), null),
            Take<string?>(rows, "ghg_factor_source", r => r.Text("value"), null),
            Take<IReadOnlyList<Code<WasteStream>>>(rows, "streams", Streams, []),
            Take(rows, "crew_and_kit_lb", r => (double)r.Number("value", 0, 10_000), DepotSettings.DefaultCrewAndKitLb),
            Take<string?>(rows, "language", r => r.OneOf("value", [.. Words.Language.Codes]), null),
            Take(rows, "change_limit", r => (double?)r.Number("value", 0, 1_000), null),
            Take(rows, "order_service", r => (double?)Service(r), null),
            Take(rows, "return_band", r => (double?)r.Number("value", 0, 1_000), null));
        var date = Take(rows, "business_date", r => r.Date("value"), default);
        return findings.Problems.Count == before && Needed.All(rows.ContainsKey) ? new(settings, date) : null;
    }

    private static T Take<T>(Dictionary<string, CsvRow> rows, string setting, Func<CsvRow, T> read, T otherwise) =>
        rows.TryGetValue(setting, out var row) && (Needed.Contains(setting, StringComparer.Ordinal) || row.Has("value"))
            ? read(row)
            : otherwise;

    /// <summary>Names of waste streams with blanks between; in the program's own order, each once.</summary>
    private static IReadOnlyList<Code<WasteStream>> Streams(CsvRow row)
    {
        var named = row.Raw("value").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (named.FirstOrDefault(n => WasteStream.All.All(s => s.Code != new Code<WasteStream>(n))) is not null)
            row.Bad("value", T("names a waste stream that is none"), string.Join(" ", WasteStream.All.Select(s => s.Code)));

        return [.. WasteStream.All.Select(s => s.Code).Where(c => named.Any(n => c == new Code<WasteStream>(n)))];
    }

    private static double Service(CsvRow row)
    {
        var service = row.Number("value", 0, 1, openBelow: true);
        if (service == 1)
            row.Bad("value", T("is no chance that can be kept"), T("above 0 and below 1"));

        return (double)service;
    }
}
