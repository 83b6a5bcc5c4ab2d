namespace Closeout.Files;

/// <summary>crew.csv: technicians and leads, their usual van and workdays.</summary>
public static class CrewFile
{
    private static readonly Dictionary<string, DayOfWeek> Days = new(StringComparer.OrdinalIgnoreCase)
    {
        ["Mon"] = DayOfWeek.Monday, ["Tue"] = DayOfWeek.Tuesday, ["Wed"] = DayOfWeek.Wednesday, ["Thu"] = DayOfWeek.Thursday,
        ["Fri"] = DayOfWeek.Friday, ["Sat"] = DayOfWeek.Saturday, ["Sun"] = DayOfWeek.Sunday,
    };

    public static (IReadOnlyList<Technician> Crew, Known<Technician> Codes) Read(string folder, Known<Van> vans, Findings findings)
    {
        var table = CsvTable.Read(
            folder, "crew.csv", required: true, ["technician", "name", "role", "van", "workdays"], ["language"], findings);
        var known = new Known<Technician>("crew.csv", table);
        var crew = new List<Technician>();
        foreach (var row in table.Rows)
        {
            var technician = new Technician(
                row.Code<Technician>("technician"),
                row.Text("name"),
                row.OneOf("role", "technician", "lead") == "lead",
                row.Has("van") ? row.Known("van", vans) : null,
                Workdays(row),
                row.Has("language") ? row.OneOf("language", [.. Words.Language.Codes]) : null);
            if (technician.Code != default && !known.Add(technician.Code))
                row.Bad("technician", T("stands twice"), T("once, whatever the case of its letters"));

            if (row.IsGood)
                crew.Add(technician);
        }

        return (crew, known);
    }

    private static IReadOnlyList<DayOfWeek> Workdays(CsvRow row)
    {
        var days = new List<DayOfWeek>();
        foreach (var word in row.Raw("workdays").Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!Days.TryGetValue(word, out var day))
            {
                row.Bad("workdays", T($"has a day that is none"), string.Join(" ", Days.Keys));
                break;
            }

            days.Add(day);
        }

        return [.. days.Distinct()];
    }
}
