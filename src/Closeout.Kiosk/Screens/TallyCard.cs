using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>The growing slip at the side of the close-out: what has been confirmed so far, in the order in which it was.</summary>
public static class TallyCard
{
    public static void Draw(Sheet sheet, int column, int bottom, Depot depot, Shift shift)
    {
        var inside = sheet.Width - column - 4;
        if (inside < 12 || bottom < 6)
        {
            // No room for a card; the question goes before it.
            return;
        }

        var edge = "+" + new string('-', inside + 2) + "+";
        sheet.Write(1, column, edge);
        for (var row = 2; row < bottom; row++)
        {
            sheet.Write(row, column, "|");
            sheet.Write(row, column + inside + 3, "|");
        }

        sheet.Write(bottom, column, edge);
        sheet.Write(2, column + 2, "TALLY CARD", Look.Strong);
        var van = $"{shift.Van} {depot.Setup.Van(shift.Van).Name}";
        sheet.Write(2, column + 2 + Math.Max(11, inside - van.Length), van, Look.Strong, Math.Min(inside - 11, van.Length));

        var foot = $"boxes to flatten {shift.Expected.Sum(e => e.Boxes),4}";
        sheet.Write(bottom - 1, column + 2, foot, Look.Strong, inside);
        var lines = Lines(depot, shift).SelectMany(l => Sheet.Wrap(l.Text, inside - l.Indent).Select(w => new string(' ', l.Indent) + w)).ToList();
        var room = bottom - 1 - 4;
        var shown = lines.Count <= room ? lines : [$"... {lines.Count - room + 1} lines above", .. lines[^(room - 1)..]];
        for (var i = 0; i < shown.Count; i++)
        {
            sheet.Write(3 + i, column + 2, shown[i], Look.Plain, inside);
        }
    }

    /// <summary>The slip line by line. What was answered twice stands where it was answered last.</summary>
    public static IEnumerable<(int Indent, string Text)> Lines(Depot depot, Shift shift)
    {
        yield return (0, $"in at {View.Clock(shift.CameInAt)} with {shift.Technician}");
        var last = shift.Story.Index().GroupBy(e => Subject(e.Item.Entry)).Select(g => g.Last()).OrderBy(e => e.Index).Select(e => e.Item.Entry);
        foreach (var line in last.SelectMany(e => Told(depot, shift, e)))
        {
            yield return line;
        }
    }

    private static IEnumerable<(int, string)> Told(Depot depot, Shift shift, Entry entry)
    {
        var (setup, units) = (depot.Setup, depot.Setup.Units);
        switch (entry)
        {
            case LeftoverCounted e:
                yield return (0, setup.Item(e.Item).Description);
                var kept = e.Count.Kept > 0 && e.Used != 0 ? $", {e.Count.Kept} kept" : "";
                yield return (2, e.Used == 0 && e.Count.Bin == 0 ? "as booked" : $"{(e.Used < 0 ? $"{-e.Used} above the book" : $"{e.Used} used")}, {e.Count.Bin} to the bin{kept}");
                if (e.Gap != 0)
                {
                    yield return (2, e.Installed is { } said ? $"GAP {e.Gap}: visits say {said}" : $"GAP {e.Gap}");
                }

                break;
            case LeftoversConfirmed when Leftovers.ToCount(depot, shift).Count(i => !shift.Counts.ContainsKey(i.Code)) is > 0 and var rest:
                yield return (0, $"{View.Count(rest, "item", "items")} as booked");
                break;
            case BoxesCounted e:
                yield return (0, $"{e.Item}: {e.Flattened} of {View.Count(shift.ExpectedOf(e.Item), "box", "boxes")}");
                break;
            case StreamCounted e:
                yield return (0, $"{WasteStream.Of(e.Stream).Description}: {Collecting.Amount(WasteStream.Of(e.Stream), e.Amount, units)}");
                break;
            case CardboardConfirmed:
                yield return (0, Cardboard(depot, shift));
                break;
            case MileageLogged e:
                yield return (0, $"{units.Distance(e.DistanceMi)}, odometer {units.Distance(e.EndMi)}");
                break;
            case DamageFound e when shift.Damages.Contains(e):
                yield return (0, $"DAMAGE {e.Number}: {e.Zone}, {Readiness.SeverityWords(e.Severity)}{(e.Drivable ? "" : ", HOLDS")}");
                break;
            case DamageConfirmed when shift.Damages.Count == 0:
                yield return (0, "no damage seen");
                break;
            case KitCounted e:
                yield return (0, $"{setup.Find(e.Piece)?.Description ?? e.Piece.Text}: {e.Count} of {(setup.Find(e.Piece) is { } piece ? setup.Required(shift.Van, piece) : 0)}");
                break;
            case KitConfirmed:
                yield return (0, KitCheck.MissingOf(depot, shift.Van).Any() ? "KIT short, see above" : "kit all there");
                break;
            case WeeklyChecked e:
                yield return (0, $"weekly check done, {(e.NotInOrder.Count == 0 ? "all in order" : "not in order: " + string.Join(", ", e.NotInOrder))}, {(e.Clean ? "clean" : "to be cleaned")}");
                break;
            case PhotoAttached e:
                yield return (0, $"picture {e.Name}");
                break;
            case Signed e:
                yield return (0, shift.SignedAt is { } at ? $"SIGNED {e.Technician} {View.Clock(at)}" : $"signed {e.Technician}, reopened since");
                break;
            case SignedFor e:
                yield return (0, $"SIGNED for {e.For} by {e.Lead}");
                break;
            case CloseoutReopened e:
                yield return (0, $"REOPENED by {e.Lead}: {e.Why}");
                break;
            case CloseoutChecked e when shift.Checked == e:
                yield return (0, $"CHECKED by {e.Lead}");
                break;
        }
    }

    private static string Cardboard(Depot depot, Shift shift)
    {
        var (flattened, expected) = (depot.Setup.Items.Sum(i => shift.FlattenedOf(i.Code)), shift.Expected.Sum(e => e.Boxes));
        return flattened == expected
            ? $"{View.Count(flattened, "box", "boxes")} flattened"
            : $"{flattened} of {expected} boxes flattened, {(flattened < expected ? $"{expected - flattened} MISSING" : $"{flattened - expected} more than expected")}";
    }

    /// <summary>What an entry is about: of two with the same, the later tells.</summary>
    private static object Subject(Entry entry) => entry switch
    {
        LeftoverCounted e => (1, e.Item.Text),
        BoxesCounted e => (2, e.Item.Text),
        KitCounted e => (3, e.Piece.Text),
        DamageFound e => e,
        StreamCounted e => (4, e.Stream.Text),
        PhotoAttached e => e,
        _ => entry.GetType(),
    };
}
