using Closeout.Screens.Parts;

namespace Closeout.Screens.Steps;

/// <summary>A step that asks a list: one field for each thing, each an answer of its own, and one answer that confirms the rest.</summary>
public abstract class ListPage : StepPage
{
    /// <summary>The one field of the list that was typed in.</summary>
    protected abstract Answer One(Depot depot, Question q, Field field);

    /// <summary>The words of the key = .</summary>
    protected abstract string TheRest { get; }

    public override Answer Answer(Depot depot, Question q) =>
        Steps.Answer.All(q.Form.Fields.Where(f => f.Typed is not null).Select(f => One(depot, q, f)), Unchanged(q.Van));

    public override IEnumerable<StepKey> Keys(Depot depot, Question q) => q.Find is { } find
        ?
        [
            new(Parts.Keys.Of("Enter", Press.Enter, Press.Escape), T("here"), _ => q with { Find = null }),
            new(Parts.Keys.Backspace, null, _ => Finding(q, find.Length > 0 ? find[..^1] : null)),
            new(Parts.Keys.Typing, T("a piece of the name"), key => Finding(q, find + key.Character)),
        ]
        : q.Form.Fields.Count == 0
        ? [EnterKey(T("go on"), depot, q), Rest(depot, q) with { Line = null }]
        :
        [
            EnterKey(T("next"), depot, q),
            UpKey(depot, q),
            Rest(depot, q),
            new(Parts.Keys.Letter('/'), T("find"), _ => q with { Find = "" }),
        ];

    /// <summary>The cursor goes to the first line with that piece in its name.</summary>
    private static Question Finding(Question q, string? find) => q with
    {
        Find = find,
        Form = find is { Length: > 0 } && q.Form.Fields.FirstOrDefault(
                f =>
                    f.Label.Contains(find, StringComparison.OrdinalIgnoreCase)
                        || f.Name.Contains(find, StringComparison.OrdinalIgnoreCase)) is { } field
            ? q.Form.At(field.Name)
            : q.Form,
    };

    protected override StepReply Enter(Depot depot, Shift shift, Question q) =>
        q.Form.Now is { Typed: null } && !q.Form.IsLast ? q.Move(1)
        : q.Form.Now is { } field && !q.Form.IsLast ? One(depot, q, field)
        : Answer(depot, q);

    /// <summary>On to the next field.</summary>
    public override Question? Recorded(Depot depot, Shift shift, Question q, ICommand recorded) =>
        recorded.GetType() == Unchanged(q.Van).GetType() ? null : Ask(depot, shift).Move(q.Form.Focus + 1);

    protected static Answer Empty(Field field, string of) =>
        Steps.Answer.Lacks(field.Name, T($"\"{of}\" is empty: type how many there are, 0 where there are none."));

    private StepKey Rest(Depot depot, Question q) =>
        new(Parts.Keys.Letter('='), TheRest, _ => q.IsLookedAt(depot.Shift(q.Van)!) ? StepReply.Go(1) : Answer(depot, q));
}
