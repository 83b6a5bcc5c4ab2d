using System.Globalization;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts;

namespace Closeout.Files;

/// <summary>One answer at the kiosk: the rows of evening.csv that belong together.</summary>
/// <param name="Line">Of its first row.</param>
/// <param name="Command">Null: a picture is attached.</param>
/// <param name="Photo">The picture's path; null: none.</param>
public sealed record EveningAnswer(int Line, Code<Van> Van, Code<Technician> Technician, Step Step, Command? Command, string? Photo = null);

/// <summary>Puts the rows of an evening together to answers.</summary>
/// <remarks>
/// Rows of one van, step and item belong to one answer as long as the van stays at the step and no field repeats; a
/// field that repeats begins a new answer, which replaces the first. An answer stands where its first row stands; the
/// weekly check behind the parts and pictures of its walk-round, for it says which parts were not in order.
/// </remarks>
public static class EveningAnswers
{
    /// <param name="Before">Answers that came later and are given first.</param>
    private sealed record Group(EveningRow First, Dictionary<string, string> Fields, List<Group> Before);

    public static IReadOnlyList<EveningAnswer> Of(IEnumerable<EveningRow> rows)
    {
        var groups = new List<Group>();
        var open = new Dictionary<Code<Van>, Dictionary<(string, bool), Group>>();
        var at = new Dictionary<Code<Van>, Step>();
        foreach (var row in rows)
        {
            if (at.GetValueOrDefault(row.Van) != row.Step)
            {
                at[row.Van] = row.Step;
                open[row.Van] = [];
            }

            // "No damage" and a damage are two answers, never one; so are a picture, and what came home of a waste stream.
            var (own, key) = (open[row.Van], (row.Item, row.Field is "none" or "photo" or "collected"));
            if (!own.TryGetValue(key, out var group) || group.Fields.ContainsKey(row.Field))
            {
                var check = row.Field is "part" or "photo" ? own.GetValueOrDefault(("", false)) : null;
                own[key] = group = new(row, [], []);
                (check?.Before ?? groups).Add(group);
            }

            group.Fields.Add(row.Field, row.Value);
        }

        return [.. groups.SelectMany(g => g.Before.Append(g)).Select(g => new EveningAnswer(g.First.Line, g.First.Van, g.First.Technician, g.First.Step, g.Fields.ContainsKey("photo") ? null : Command(g), g.Fields.GetValueOrDefault("photo")))];
    }

    private static Command Command(Group group)
    {
        var (row, fields) = (group.First, group.Fields);
        var van = row.Van;
        return (row.Step, row.Item) switch
        {
            (Step.Leftovers, "") => new ConfirmLeftovers(van),
            (Step.Leftovers, _) => new CountLeftover(
                van, new(row.Item), Whole(fields, "sealed"), Whole(fields, "bin") ?? 0, Whole(fields, "kept") ?? 0, Whole(fields, "installed")),
            (Step.Cardboard, "") => new ConfirmCardboard(van),
            (Step.Cardboard, _) when fields.ContainsKey("collected") => new CountStream(van, new(row.Item), Number(fields, "collected") ?? 0),
            (Step.Cardboard, _) => new CountBoxes(van, new(row.Item), Whole(fields, "flattened") ?? 0),
            (Step.Mileage, _) => new LogMileage(van, Number(fields, "odometer"), Number(fields, "fuel_gal"), fields.GetValueOrDefault("fuel_grade")),
            (Step.Damage, _) when fields.ContainsKey("none") => new ConfirmDamage(van, None: true),
            (Step.Damage, _) => new ReportDamage(
                van,
                fields.GetValueOrDefault("zone", ""),
                Enum.Parse<Severity>(fields.GetValueOrDefault("severity", nameof(Severity.Note)), ignoreCase: true),
                fields.GetValueOrDefault("what", ""),
                YesNo(fields, "drivable"),
                fields.GetValueOrDefault("told", ""),
                fields.TryGetValue("told_at", out var at) ? TimeOnly.ParseExact(at, "HH:mm", CultureInfo.InvariantCulture) : null),
            (Step.Kit, "") => new ConfirmKit(van),
            (Step.Kit, _) => new CountKit(van, new(row.Item), Whole(fields, "count"), Date(fields, "expires"), Date(fields, "tested")),
            (Step.Weekly, { Length: > 0 } part) => new ReportDamage(van, part, Severity.Repair, fields["part"]),
            (Step.Weekly, _) => new CheckWeekly(
                van, Date(fields, "oil_change_on"), Whole(fields, "photos") ?? 0, YesNo(fields, "clean") ?? true),
            (Step.SignOff, _) => new Sign(van, row.Technician),
            _ => throw new InvalidOperationException($"no answer for step {row.Step}"),
        };
    }

    private static bool? YesNo(Dictionary<string, string> fields, string field) =>
        fields.TryGetValue(field, out var text) ? string.Equals(text, "yes", StringComparison.OrdinalIgnoreCase) : null;

    private static int? Whole(Dictionary<string, string> fields, string field) =>
        fields.TryGetValue(field, out var text) ? int.Parse(text, CultureInfo.InvariantCulture) : null;

    private static decimal? Number(Dictionary<string, string> fields, string field) =>
        fields.TryGetValue(field, out var text) ? decimal.Parse(text, CultureInfo.InvariantCulture) : null;

    private static DateOnly? Date(Dictionary<string, string> fields, string field) =>
        fields.TryGetValue(field, out var text) ? DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture) : null;
}
