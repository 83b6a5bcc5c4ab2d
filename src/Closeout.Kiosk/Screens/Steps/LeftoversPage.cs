using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;

namespace Closeout.Screens.Steps;

/// <summary>What came back, item by item: still sealed, into the bin, kept aboard.</summary>
public sealed class LeftoversPage : StepPage
{
    public override Step Step => Step.Leftovers;

    public override string Caution => T("Tie ladders before you unload; lift heavy cartons with two. Site rules first.");

    public override string? Help =>
        T(
            "Leftovers: cartons sealed aboard, loose to the bin, loose kept aboard. = unchanged, * all the rest unchanged, / or a scan "
                + "finds an item.");

    protected override bool GoesOnWhenLookedAt => false;

    public override ICommand Unchanged(Code<Van> van) => new ConfirmLeftovers(van);

    public override EveningStep Evening => new(
        Step,
        "leftovers",
        [
            Counted("sealed") with { IsWholeWithoutItem = true },
            Counted("bin") with { NeedsItem = true },
            Counted("kept") with { NeedsItem = true },
            Counted("installed") with { NeedsItem = true },
        ],
        a => a.Item.Length == 0
            ? new ConfirmLeftovers(a.Van)
            : new CountLeftover(a.Van, new(a.Item), a.Whole("sealed"), a.Whole("bin") ?? 0, a.Whole("kept") ?? 0, a.Whole("installed")));

    public override string Title(Depot depot, Shift shift, Question q)
    {
        if (q.Item is not { } item)
            return base.Title(depot, shift, q);

        var items = Leftovers.ToCount(depot, shift).Select(i => i.Code).ToList();
        return items.IndexOf(item) is >= 0 and var at ? T($"{Name}, item {at + 1} of {items.Count}") : T($"{Name}, not on record");
    }

    /// <summary>The first item not counted yet, unless one is named.</summary>
    public override Question Ask(Depot depot, Shift shift, Code<Item>? item = null)
    {
        var asked = item ?? LeftoverCounts.Next(depot, shift);
        return new(shift.Van, Step, asked, asked is { } code ? LeftoverCounts.Fields(depot, shift, code) : Form.None);
    }

    public override IEnumerable<StepKey> Keys(Depot depot, Question q)
    {
        var shift = depot.Shift(q.Van)!;
        if (q.Find is not null)
            return Finding.Keys(depot, q, item => Ask(depot, shift, item.Code));

        var isBlind = q.Item is { } seen && LeftoverCounts.IsBlind(shift, seen);
        StepKey find = new(new("/", key => Finds(depot, q, key) is not null), T("find"), key => Found(depot, q, Finds(depot, q, key)!));
        StepKey unchanged = new(Parts.Keys.Letter('='), isBlind ? null : T("unchanged"), _ => AtOneKey(depot, shift, q));
        StepKey rest = new(Parts.Keys.Letter('*'), T("rest unchanged"), _ => Rest(depot, shift, q));
        return q.Item is null
            ? [EnterKey(T("leftovers done"), depot, q), find, UpKey(depot, q) with { Line = null }, unchanged with { Line = null },
                rest with { Line = null }]
            : isBlind ? [EnterKey(T("next"), depot, q), UpKey(depot, q), rest, find, unchanged]
            : [EnterKey(T("accept"), depot, q), new(Parts.Keys.Tab, T("field"), _ => After(depot, q)), UpKey(depot, q), unchanged, rest,
                find];
    }

    public override Answer Answer(Depot depot, Question q)
    {
        if (q.Item is not { } item)
            return Steps.Answer.Of(new ConfirmLeftovers(q.Van));

        if (LeftoverCounts.IsBlind(depot.Shift(q.Van)!, item))
        {
            var needed = LeftoverCounts.NeedsSealed(depot, depot.Shift(q.Van)!, item) ? new[] { "sealed", "kept" } : ["kept"];
            if (q.Form.Empty(needed) is { } unseen)
            {
                return Steps.Answer.Lacks(unseen.Name, needed.Length == 1
                    ? T("This one is counted blind: type the loose units that you see, 0 where there are none.")
                    : T("This one is counted blind: type the sealed cartons and the loose units that you see, 0 where there are none."));
            }
        }
        else if (q.Form.Empty("sealed", "bin", "kept") is { } empty)
        {
            return Steps.Answer.Lacks(empty.Name, T($"\"{empty.Label}\" is empty: type how many there are, 0 where there are none."));
        }

        return Steps.Answer.Of(
            new CountLeftover(q.Van, item, q.Form["sealed"].Whole ?? 0, q.Form["bin"].Whole ?? 0, q.Form["kept"].Whole ?? 0));
    }

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        if (q.Find is { } find)
            Finding.Draw(sheet, depot, find);
        else if (q.Item is { } item)
            LeftoverCounts.Draw(sheet, depot, shift, depot.Setup.Item(item), q.Form, Say);
        else
            Say(sheet, 3, T("Every item is counted. Enter to go on to the cardboard."));
    }

    public override Question Refilled(Depot depot, Question q) => q.Item is { } item && !LeftoverCounts.IsBlind(depot.Shift(q.Van)!, item)
        ? q with { Form = LeftoverCounts.Refill(depot, depot.Shift(q.Van)!, item, q.Form) }
        : q;

    /// <summary>What is recorded already does not go twice, and the last item counted closes the step: nothing is left to ask.</summary>
    public override (IReadOnlyList<ICommand>? Commands, StepReply Otherwise) Give(Depot depot, Question q, IReadOnlyList<ICommand> commands)
    {
        if (commands is not [CountLeftover c])
            return (commands, default);

        var shift = depot.Shift(c.Van)!;
        if (shift.Counts.TryGetValue(c.Item, out var old) && old.Count == new LeftoverCount(c.Sealed ?? 0, c.Bin, c.Kept))
            return (null, Beside(depot, q, c.Item, 1) is { } next ? next : StepReply.Open);

        var isLast = shift.Step == Step.Leftovers
            && Leftovers.ToCount(depot, shift).All(i => i.Code == c.Item || shift.Counts.ContainsKey(i.Code));
        return (isLast ? [c, new ConfirmLeftovers(q.Van)] : commands, default);
    }

    public override StepReply Before(Depot depot, Question q) => q.Item is { } item ? Beside(depot, q, item, -1) ?? q : StepReply.Go(-1);

    public override StepReply After(Depot depot, Question q) =>
        q.Form.IsLast && q.Item is { } item ? Beside(depot, q, item, 1) ?? q : q.Move(1);

    public override Question? Recorded(Depot depot, Shift shift, Question q, ICommand recorded) =>
        recorded is not CountLeftover c ? null
        : shift.Step == Step.Leftovers ? Ask(depot, shift, LeftoverCounts.Next(depot, shift, c.Item))
        : Beside(depot, q, c.Item, 1) ?? Ask(depot, shift, c.Item);

    public override object? Subject(VanEntry entry) => entry is LeftoverCounted e ? e.Item : null;

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) =>
        LeftoverCounts.Tally(depot, shift, entry);

    public override IEnumerable<string> Summary(Depot depot, Shift shift) => LeftoverCounts.Summary(depot, shift);

    protected override StepReply Enter(Depot depot, Shift shift, Question q)
    {
        if (q.Item is { } item && LeftoverCounts.IsBlind(shift, item))
            return LeftoverCounts.IsTold(depot, shift, item, q.Form) || q.Form.Now!.Text.Length == 0 ? Answer(depot, q) : q.Move(1);

        return !q.Form.IsUntouched && !q.Form.IsLast ? q.Move(1) : Answer(depot, q);
    }

    private static EveningField Counted(string name) => new(name, EveningItem.Item, row => row.Whole("value", 0, Refusal.MostAtOnce));

    /// <summary>The piece that a key begins or goes on finding with; null: the key is an answer.</summary>
    private static string? Finds(Depot depot, Question q, Keystroke key) => key.Press == Press.Character
        ? Finding.Begins(depot, q, key.Character)
        : null;

    /// <summary>What a scanner typed into the field before it was known for a code is taken back.</summary>
    private Question Found(Depot depot, Question q, string find) =>
        find.Length > 1 ? q with { Find = find, Form = Ask(depot, depot.Shift(q.Van)!, q.Item).Form } : q with { Find = find };

    /// <summary>The question of the item beside one in stow order; null: there is none.</summary>
    private Question? Beside(Depot depot, Question q, Code<Item> item, int by)
    {
        var (shift, items) = (depot.Shift(q.Van)!, Leftovers.ToCount(depot, depot.Shift(q.Van)!));
        var to = items.Index().Where(i => i.Item.Code == item).Select(i => i.Index).FirstOrDefault(-1) + by;
        return to >= 0 && to < items.Count ? Ask(depot, shift, items[to].Code) : null;
    }

    /// <summary>The item as booked, at one key; where it is counted blind, as typed.</summary>
    private StepReply AtOneKey(Depot depot, Shift shift, Question q)
    {
        if (q.Item is not { } item || LeftoverCounts.IsBlind(shift, item))
            return Answer(depot, q);

        var before = Leftovers.BeforeOf(shift, depot.Setup.Item(item));
        return Steps.Answer.Of(new CountLeftover(q.Van, item, before.Sealed, 0, before.Loose));
    }

    /// <summary>All items left as booked, unless one of them must be seen first.</summary>
    private StepReply Rest(Depot depot, Shift shift, Question q)
    {
        if (shift.Step > Step.Leftovers)
            return StepReply.Open;

        if (q.Doubted is ConfirmLeftovers || LeftoverCounts.Unseen(depot, shift) is not { } unseen)
            return Steps.Answer.Of(new ConfirmLeftovers(q.Van));

        var name = depot.Setup.Item(unseen).Description;
        var why = !shift.SpotItems.Contains(unseen) && depot.Reported(q.Van, unseen) is > 0 and var used
            ? T($"Visits report {used} used of {name}, and it is not counted.")
            : T($"{name} is to be counted blind tonight.");
        return new(Ask(depot, shift, unseen) with { Doubted = new ConfirmLeftovers(q.Van) },
            Said: T($"{why} Count it, or * again: the rest unchanged all the same."));
    }
}
