using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Tests.Shifts;

/// <summary>A close-out as lines of text, one for each answer, so that two can be compared.</summary>
public static class ShiftText
{
    /// <summary>What the step's answers are; without the step at which the close-out stands, and without times and without numbers that others' entries move.</summary>
    public static string Answers(this Shift? shift, Step step) => shift is null ? "" : step switch
    {
        Step.Leftovers => Join(shift.Counts.Values.OrderBy(c => c.Item).Select(c =>
            $"{c.Item} {c.Count} installed {c.Installed} used {c.Used} gap {c.Gap} emptied {c.Emptied}")),
        Step.Cardboard => Join([
            .. shift.Boxes.Values.OrderBy(b => b.Item).Select(b => b.ToString()),
            .. shift.Streams.OrderBy(s => s.Key).Select(s => $"{s.Key} {s.Value}"),
        ]),
        Step.Mileage => $"{shift.Mileage}",
        Step.Damage => Join(shift.Damages.Select(d => (d with { Number = 0 }).ToString())),
        Step.Kit => Join(shift.Kit.Values.OrderBy(k => k.Piece).Select(k => k.ToString())),
        Step.Weekly => shift.Weekly is { } w ? $"oil {w.OilChangedOn} photos {w.Photos} clean {w.Clean} not in order {string.Join(", ", w.NotInOrder)}" : "",
        Step.SignOff => $"{shift.Signed} {shift.SignedFor} {shift.Checked}",
        _ => "",
    };

    /// <summary>The whole of it, with what the ledger has in the van.</summary>
    public static string Whole(this Depot depot, Code<Van> van)
    {
        var shift = depot.Shift(van);
        return Join([
            $"{shift?.Step} by {shift?.Technician}, answered {string.Join(' ', (shift?.Answered ?? []).Order())}",
            .. Enum.GetValues<Step>().Select(shift.Answers),
            .. (shift?.Photos ?? []).Select(p => p.ToString()),
            .. depot.Stock.Ledger.Balances.Where(b => b.Place.Van == van).Select(b => b.ToString()).Order(StringComparer.Ordinal),
        ]);
    }

    private static string Join(IEnumerable<string> lines) => string.Join('\n', lines);
}
