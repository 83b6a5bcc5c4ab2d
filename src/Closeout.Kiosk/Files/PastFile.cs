namespace Closeout.Files;

/// <summary>past.csv: what older records say of the days before, one fact a row. It goes into a new book only.</summary>
public static class PastFile
{
    private const string File = "past.csv";

    private static readonly Dictionary<string, PastKind> Kinds = new(StringComparer.OrdinalIgnoreCase)
    {
        ["odometer"] = PastKind.Odometer, ["fuel_gal"] = PastKind.Fuel, ["weekly"] = PastKind.Weekly, ["oil_change"] = PastKind.OilChange,
        ["expires"] = PastKind.Expires, ["tested"] = PastKind.Tested, ["damage"] = PastKind.Damage, ["flattened"] = PastKind.Flattened,
        ["missing"] = PastKind.Missing, ["emptied"] = PastKind.Emptied, ["collected"] = PastKind.Collected,
        ["booked"] = PastKind.Booked, ["received"] = PastKind.Received,
    };

    public static IReadOnlyList<PastRecord> Read(
        string folder, DateOnly? today, Known<Van> vans, Known<Item> items, Known<KitPiece> kit, Findings findings)
    {
        var table = CsvTable.Read(
            folder, File, required: false, ["date", "van", "record", "item", "value"], ["ordered", "due", "supplier"], findings);
        var past = new List<PastRecord>();
        var lines = new List<int>();
        foreach (var row in table.Rows)
        {
            var date = row.Date("date");
            if (row.IsGood && today is { } now && date >= now)
                row.Bad("date", T("is not past"), T($"a day before {now:yyyy-MM-dd}"));

            var kind = Kinds[row.OneOf("record", [.. Kinds.Keys])];
            if (row.IsGood && Of(row, date, kind, vans, items, kit) is { } record && row.IsGood)
            {
                past.Add(record);
                lines.Add(row.Line);
            }
        }

        Falling(past.Zip(lines), findings);
        return past;
    }

    private static PastRecord? Of(CsvRow row, DateOnly date, PastKind kind, Known<Van> vans, Known<Item> items, Known<KitPiece> kit)
    {
        var isDepots = kind is PastKind.Flattened or PastKind.Emptied or PastKind.Collected or PastKind.Received
            || (kind == PastKind.Missing && !row.Has("van"));
        var van = isDepots ? (Code<Van>?)null : kind == PastKind.Booked ? AnyVan(row, vans) : row.Known("van", vans);
        var code = kind switch
        {
            PastKind.Expires or PastKind.Tested => row.Known("item", kit).Text,
            PastKind.Flattened or PastKind.Missing or PastKind.Received => row.Known("item", items).Text,
            PastKind.Booked => row.Code<VisitKind>("item").Text,
            PastKind.Damage => row.OneOf("item", [.. Enum.GetNames<Severity>().Select(s => s.ToLowerInvariant())]),
            PastKind.Collected => row.OneOf("item", [.. WasteStream.All.Select(s => s.Code.Text)]),
            _ => "",
        };
        var amount = kind switch
        {
            PastKind.Odometer => row.Number("value", 0, Refusal.MostMiles),
            PastKind.Fuel => row.Number("value", 0, Refusal.MostGallons, openBelow: true),
            PastKind.Flattened or PastKind.Missing => row.Whole("value", 0, Refusal.MostAtOnce),
            PastKind.Booked => row.Whole("value", 0, 1_000),
            PastKind.Received => row.Whole("value", 0, 10_000),
            PastKind.Collected => row.Number("value", 0, Refusal.MostAtOnce),
            _ => 0,
        };
        if (kind == PastKind.Collected && row.IsGood && !WasteStream.Of(new(code!)).IsWeighed && amount != Math.Truncate(amount))
            row.Bad("value", T("is no whole number of pieces"), T("a whole number"));

        if (kind == PastKind.Damage && (CardNumber.IsIn(row.Raw("value")) || SocialSecurityNumber.IsIn(row.Raw("value"))))
            row.Bad("value", T("holds what looks like a card number or a social-security number"), T("words without it"));

        var on = kind is PastKind.Expires or PastKind.Tested ? row.Date("value")
            : kind == PastKind.Received ? row.Date("due")
            : (DateOnly?)null;
        if (kind == PastKind.Tested && on > date)
            row.Bad("value", T("is later than the day it was read"), T($"a day up to {date:yyyy-MM-dd}"));

        var text = kind == PastKind.Damage ? row.Text("value") : "";
        return new(
            date, kind, van, code ?? "", amount, on, text, kind == PastKind.Received ? row.Whole("ordered", 1, 10_000) : 0,
            kind == PastKind.Received && row.Has("supplier") ? row.Code<Supplier>("supplier") : null);
    }

    /// <summary>Older bookings may name a van that is gone; only its code must be one.</summary>
    private static Code<Van> AnyVan(CsvRow row, Known<Van> vans)
    {
        var code = row.Code<Van>("van");
        return vans.Find(code) ?? code;
    }

    /// <summary>An odometer that falls from one record to the next is a slip: nobody could tell which of the two is wrong.</summary>
    private static void Falling(IEnumerable<(PastRecord Record, int Line)> past, Findings findings)
    {
        foreach (var van in past.Where(p => p.Record.Kind == PastKind.Odometer).GroupBy(p => p.Record.Van))
        {
            var readings = van.OrderBy(p => p.Record.Date).ToList();
            foreach (var ((before, _), (after, line)) in readings.Zip(readings.Skip(1))
                .Where(r => r.Second.Record.Amount < r.First.Record.Amount))
            {
                var (now, was) = (FormattableString.Invariant($"{after.Amount}"), FormattableString.Invariant($"{before.Amount}"));
                findings.Fault(
                    File, line, 1,
                    T(
                        $"odometer of {van.Key} falls: found {now} on {IsoDate.Text(after.Date)} after {was} on "
                            + $"{IsoDate.Text(before.Date)}, allowed at least {was}"));
            }
        }
    }
}
