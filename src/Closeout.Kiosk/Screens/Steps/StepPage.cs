using Closeout.Files;
using Closeout.Screens.Parts;

namespace Closeout.Screens.Steps;

/// <summary>
/// One step of the close-out at the kiosk, with all that is its own: fields, answer, keys, drawing, caution, tally, summary, and its part
/// of evening.csv.
/// </summary>
public abstract class StepPage
{
    /// <summary>Columns of a question.</summary>
    public const int Columns = 45;

    public abstract Step Step { get; }

    /// <summary>
    /// The usual caution of the trade, on one line of 78; local rules, the maker's instructions and licensed people come first.
    /// </summary>
    public abstract string Caution { get; }

    /// <summary>What is asked, for the help; null: it needs no words.</summary>
    public abstract string? Help { get; }

    /// <summary>The answer that says nothing new: as booked, as expected, not driven, no damage, all there, clean.</summary>
    /// <exception cref="InvalidOperationException">The step has none: a signature is somebody's own.</exception>
    public abstract ICommand Unchanged(Code<Van> van);

    /// <summary>Its part of evening.csv.</summary>
    public abstract EveningStep Evening { get; }

    /// <summary>Whether pictures belong to it: then its key line says how to attach them.</summary>
    public virtual bool HasPictures => false;

    /// <summary>What is above the question.</summary>
    public virtual string Title(Depot depot, Shift shift, Question q) =>
        Name + (q.At < shift.Step && !shift.IsClosed ? T(", looked at again") : "");

    /// <summary>The question as it is asked first, with the answer most likely right in its fields.</summary>
    public virtual Question Ask(Depot depot, Shift shift, Code<Item>? item = null) => new(shift.Van, Step, null, Fields(depot, shift));

    /// <summary>The whole question, as it stands.</summary>
    public abstract Answer Answer(Depot depot, Question q);

    /// <summary>The keys of the question, in the order of the key line.</summary>
    public abstract IEnumerable<StepKey> Keys(Depot depot, Question q);

    /// <summary>What Enter does once the step is not only looked at.</summary>
    protected abstract StepReply Enter(Depot depot, Shift shift, Question q);

    /// <summary>Whether Enter goes on where an earlier step is only looked at.</summary>
    protected virtual bool GoesOnWhenLookedAt => true;

    /// <summary>
    /// The key that accepts: an earlier step that is only looked at is passed by, and an answer that was asked again goes through.
    /// </summary>
    protected StepKey EnterKey(string? line, Depot depot, Question q) => new(Parts.Keys.Enter, line, _ =>
    {
        var shift = depot.Shift(q.Van)!;
        return GoesOnWhenLookedAt && q.IsLookedAt(shift) ? StepReply.Go(1)
            : q.Doubted is not null && Answer(depot, q) is { Missing: null, Commands: [var again] } same && again.Equals(q.Doubted) ? same
            : Enter(depot, shift, q);
    });

    /// <summary>The key that goes back: a field, or where the question begins.</summary>
    protected StepKey UpKey(Depot depot, Question q) =>
        new(Parts.Keys.Up, T("back"), _ => q.Form.Focus > 0 ? q.Move(-1) : Before(depot, q));

    public abstract void Draw(Sheet sheet, Depot depot, Shift shift, Question q);

    /// <summary>What follows from what was typed, put into the other fields.</summary>
    public virtual Question Refilled(Depot depot, Question q) => q;

    /// <summary>The commands of an answer as they are given; null: nothing new, on to this.</summary>
    public virtual (IReadOnlyList<ICommand>? Commands, StepReply Otherwise) Give(Depot depot, Question q,
        IReadOnlyList<ICommand> commands) => (commands, default);

    /// <summary>Where Up leads from the first field.</summary>
    public virtual StepReply Before(Depot depot, Question q) => StepReply.Go(-1);

    /// <summary>Where Down leads from a field.</summary>
    public virtual StepReply After(Depot depot, Question q) => q.Move(1);

    /// <summary>The question after an answer of it was recorded; null: the one that is open now.</summary>
    public virtual Question? Recorded(Depot depot, Shift shift, Question q, ICommand recorded) => null;

    /// <summary>Where Esc leads; null: out of the close-out.</summary>
    public virtual Question? Escaped(Depot depot, Shift shift, Question q) => null;

    /// <summary>The field that a refused command is about.</summary>
    public virtual string? FieldOf(ICommand command, Refusal refusal) => refusal.About;

    /// <summary>The form after its answer was refused: with what was probably meant.</summary>
    public virtual Form Refused(Depot depot, Question q, Refusal refusal) => q.Form;

    /// <summary>The lines of an entry on the tally card, each with its indent; null: the entry is not of this step.</summary>
    public virtual IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) => null;

    /// <summary>
    /// What an entry is about: of two with the same, the later tells. Null: it is not of this step, or all of its kind are about the same.
    /// </summary>
    public virtual object? Subject(VanEntry entry) => null;

    /// <summary>What somebody signs of it, in a few sentences.</summary>
    public virtual IEnumerable<string> Summary(Depot depot, Shift shift) => [];

    /// <summary>The step's name, as it begins a line.</summary>
    protected string Name => StepWords.Name(Step) is var name ? char.ToUpperInvariant(name[0]) + name[1..] : "";

    /// <summary>The fields, with the answer most likely right already in them.</summary>
    protected virtual Form Fields(Depot depot, Shift shift) => Form.None;

    /// <summary>Writes a sentence in the question's columns.</summary>
    /// <returns>The row below it.</returns>
    protected static int Say(Sheet sheet, int row, string sentence)
    {
        foreach (var line in Cells.Wrap(sentence, Columns))
            sheet.Write(row++, 1, line, Look.Plain, Columns);

        return row;
    }

    /// <summary>Draws the fields of a list from a row on, the one with the cursor always in sight.</summary>
    protected static void List(Sheet sheet, int row, Form form, int labels)
    {
        var room = sheet.Height - 5 - row;
        FormView.Draw(sheet, row, 1, form, FormView.Top(form, room), room, labels);
    }
}
