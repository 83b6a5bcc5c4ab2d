using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>What else comes home: each stream's collecting box, its label and its limit, and what came tonight.</summary>
public static class WasteView
{
    public static void Draw(Sheet sheet, Depot depot, CardboardScreen s)
    {
        var streams = Collecting.On(depot.Setup.Depot).ToList();
        var lines = streams.Count == 0
            ? [("", "No stream is switched on. A depot switches them on in depot.csv: streams, with any of " + string.Join(" ", WasteStream.All.Select(w => w.Code)) + ".")]
            : streams.SelectMany(w => Of(depot, s, w)).ToList();
        lines.Add(("", ""));
        lines.Add(("Caution", "Lamps hold mercury: closed, sound box, broken ones apart and sealed. Batteries: tape the poles. One year at most from the first piece, 40 CFR 273.15; state rules and the site's own procedure come first."));
        var wrapped = lines.SelectMany(l => Sheet.Wrap(l.Item2, sheet.Width - 14).Select((t, i) => (Word: i == 0 ? l.Item1 : "", Text: t))).ToList();
        var room = Math.Max(1, sheet.Height - 4);
        foreach (var (row, line) in wrapped.Skip(Math.Min(s.Top, Math.Max(0, wrapped.Count - room))).Take(room).Index())
        {
            sheet.Write(2 + row, 1, line.Word, Look.Strong, 11);
            sheet.Write(2 + row, 13, line.Text);
        }
    }

    private static IEnumerable<(string, string)> Of(Depot depot, CardboardScreen s, WasteStream stream)
    {
        var units = depot.Setup.Units;
        var tonight = depot.Shifts.Values.Sum(t => t.StreamOf(stream.Code));
        var year = s.Streams.Where(d => d.Stream == stream.Code && d.Date < depot.Date).Sum(d => d.Amount) + tonight;
        yield return (stream.Code.Text, $"{stream.Description}: {Collecting.Amount(stream, tonight, units)} tonight, {Collecting.Amount(stream, year, units)} in a year");
        if (depot.Yard.Collecting.GetValueOrDefault(stream.Code) is { } box)
        {
            yield return ("", $"box begun {box.StartedOn:yyyy-MM-dd} holds {Collecting.Amount(stream, box.Amount, units)}{(Collecting.ShipBy(box) is { } by ? $"; must go by {by:yyyy-MM-dd}" : "")}");
        }

        if (stream.Label is { } label)
        {
            yield return ("", $"on the box: \"{label}\", and its first date");
        }

        if (depot.Yard.Collecting.GetValueOrDefault(stream.Code) is { } late && Collecting.Note(late, depot.Date) is { } note)
        {
            yield return ("", "!! " + note);
        }
    }
}
