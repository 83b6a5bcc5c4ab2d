namespace Closeout.Files;

/// <summary>One answer at the kiosk: the rows of evening.csv that belong together.</summary>
/// <param name="Line">Of its first row.</param>
/// <param name="Command">Null: a picture is attached.</param>
/// <param name="Photo">The picture's path; null: none.</param>
public sealed record EveningAnswer(
    int Line, Code<Van> Van, Code<Technician> Technician, Step Step, ICommand? Command, string? Photo = null);

/// <summary>Puts the rows of an evening together to answers.</summary>
/// <remarks>
/// Rows of one van, step and item belong to one answer as long as the van stays at the step and no field repeats; a
/// field that repeats begins a new answer, which replaces the first. An answer stands where its first row stands; the
/// weekly check behind the parts and pictures of its walk-round, for it says which parts were not in order.
/// </remarks>
public static class EveningAnswers
{
    /// <param name="Before">Answers that came later and are given first.</param>
    private sealed record Group(EveningRow First, Dictionary<string, string> Values, List<Group> Before);

    public static IReadOnlyList<EveningAnswer> Of(IEnumerable<EveningRow> rows)
    {
        var groups = new List<Group>();
        var open = new Dictionary<Code<Van>, Dictionary<(string, bool), Group>>();
        var at = new Dictionary<Code<Van>, Step>();
        foreach (var row in rows)
        {
            if (at.GetValueOrDefault(row.Van) != row.Step.Step)
            {
                at[row.Van] = row.Step.Step;
                open[row.Van] = [];
            }

            // "No damage" and a damage are two answers, never one; so are a picture, and what came home of a waste stream.
            var (own, key) = (open[row.Van], (row.Item, row.Field.IsOwnAnswer));
            if (!own.TryGetValue(key, out var group) || group.Values.ContainsKey(row.Field.Name))
            {
                var main = row.Field.ComesBefore ? own.GetValueOrDefault(("", false)) : null;
                own[key] = group = new(row, [], []);
                (main?.Before ?? groups).Add(group);
            }

            group.Values.Add(row.Field.Name, row.Value);
            if (row.Why.Length > 0)
                group.Values.Add(row.Field.Name + EveningGiven.Why, row.Why);
        }

        return [.. groups.SelectMany(g => g.Before.Append(g)).Select(Answer)];
    }

    private static EveningAnswer Answer(Group group)
    {
        var row = group.First;
        var photo = row.Field.IsPhoto ? row.Value : null;
        var command = photo is null ? row.Step.Command(new(row.Van, row.Technician, row.Item, group.Values)) : null;
        return new(row.Line, row.Van, row.Technician, row.Step.Step, command, photo);
    }
}
