using Closeout.Cardboard;
using Closeout.Screens.Parts;
using Closeout.Store;

namespace Closeout.Screens.Yard;

/// <summary>What else comes home: each stream's collecting box, its label and its limit, and what came tonight.</summary>
internal static class OtherWaste
{
    public static void Draw(Sheet sheet, Depot depot, IReadOnlyList<StreamDay> year, int top)
    {
        var streams = Collecting.On(depot.Setup.Depot).ToList();
        List<(string, string)> lines = streams.Count == 0
            ? [
                ("",
                    T("No stream is switched on. A depot switches them on in depot.csv: streams, with any of ") + string.Join(
                        " ", WasteStream.All.Select(w => w.Code)) + ".")]
            : [.. streams.SelectMany(w => Of(depot, year, w))];
        lines.Add(("", ""));
        lines.Add(
            (T("Caution"),
                T(
                    "Lamps hold mercury: closed, sound box, broken ones apart and sealed. Batteries: tape the poles. One year at most "
                        + "from the first piece, 40 CFR 273.15; state rules and the site's own procedure come first.")));
        var wrapped = Frame.Hanging(lines, sheet.Width - 14).ToList();
        var room = Math.Max(1, sheet.Height - 4);
        foreach (var (row, line) in wrapped.Skip(Math.Min(top, Math.Max(0, wrapped.Count - room))).Take(room).Index())
        {
            sheet.Write(2 + row, 1, line.Word, Look.Strong, 11);
            sheet.Write(2 + row, 13, line.Text);
        }
    }

    private static IEnumerable<(string, string)> Of(Depot depot, IReadOnlyList<StreamDay> days, WasteStream stream)
    {
        var (units, box) = (depot.Setup.Units, depot.Yard.Collecting.GetValueOrDefault(stream.Code));
        var tonight = depot.Shifts.Values.Sum(t => t.StreamOf(stream.Code));
        var year = days.Where(d => d.Stream == stream.Code && d.Date < depot.Date).Sum(d => d.Amount) + tonight;
        yield return (stream.Code.Text,
            T(
                $"{stream.Description}: {Collecting.Amount(stream, tonight, units)} tonight, {Collecting.Amount(stream, year, units)} in "
                    + $"a year"));
        if (box is not null)
        {
            var by = Collecting.ShipBy(box) is { } limit ? T($"; must go by {IsoDate.Text(limit)}") : "";
            yield return ("", T($"box begun {IsoDate.Text(box.StartedOn)} holds {Collecting.Amount(stream, box.Amount, units)}{by}"));
        }

        if (stream.Label is { } label)
            yield return ("", T($"on the box: \"{label}\", and its first date"));

        if (box is not null && Collecting.Note(box, depot.Date) is { } note)
            yield return ("", "!! " + note);
    }
}
