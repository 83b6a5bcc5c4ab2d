namespace Closeout.Files;

/// <summary>vans.csv: the vans and their bays.</summary>
public static class VansFile
{
    private static readonly string[] Columns =
    [
        "van", "bay", "name", "payload_lb", "fuel", "odometer_mi", "service_every_mi", "service_every_months", "last_service_mi",
        "last_service_on",
    ];

    public static (IReadOnlyList<Van> Vans, Known<Van> Codes) Read(string folder, Findings findings)
    {
        var table = CsvTable.Read(folder, "vans.csv", required: true, Columns, ["tank_gal"], findings);
        var known = new Known<Van>("vans.csv", table);
        var vans = new List<Van>();
        var bays = new HashSet<int>();
        foreach (var row in table.Rows)
        {
            var van = new Van(
                row.Code<Van>("van"),
                row.Whole("bay", 1, 100_000),
                row.Text("name"),
                (double)row.Number("payload_lb", 0, 100_000),
                row.Text("fuel", mayBeEmpty: true),
                row.Number("odometer_mi", 0, 2_000_000),
                row.Number("service_every_mi", 0, 1_000_000),
                row.Whole("service_every_months", 0, 1_200),
                row.Number("last_service_mi", 0, 2_000_000),
                row.Date("last_service_on"),
                row.Has("tank_gal") ? row.Number("tank_gal", 1, Refusal.MostGallons) : null);
            if (van.Code == new Code<Van>("shelf") || van.Code == new Code<Van>("bin"))
                row.Bad("van", T("is a place of its own in stock.csv"), T("another code"));

            if (van.Code != default && !known.Add(van.Code))
                row.Bad("van", T("stands twice"), T("once, whatever the case of its letters"));

            if (row.Are("bay") && !bays.Add(van.Bay))
                row.Bad("bay", T("is taken by another van"), T("each bay once"));

            if (row.IsGood)
                vans.Add(van);
        }

        return (vans, known);
    }
}
