using Closeout.Screens.Parts;

namespace Closeout.Screens.Steps;

/// <summary>One question of a van's close-out, as far as somebody has come with it.</summary>
/// <param name="At">The step looked at: the open one, or an earlier one.</param>
/// <param name="Item">The item asked for, in leftovers.</param>
/// <param name="Find">What is typed to find an item; null: not finding.</param>
/// <param name="IsReport">Whether a damage is being described.</param>
/// <param name="Doubted">An answer that was asked again: typed once more, or with !, it is recorded.</param>
/// <param name="Behind">The walk-round as far as it was answered, while a damage found on it is described.</param>
public sealed record Question(
    Code<Van> Van, Step At, Code<Item>? Item, Form Form, string? Find = null, bool IsReport = false, ICommand? Doubted = null,
    Form? Behind = null)
{
    /// <summary>Whether another answer than the doubted one was put into the fields.</summary>
    public bool IsSuggested { get; init; }

    /// <summary>Numbers of the van's open incidents that were pointed at: still there.</summary>
    public string Pointed { get; init; } = "";

    /// <summary>Whether anything was typed since the answer was asked again.</summary>
    public bool IsRetyped { get; init; }

    /// <summary>The same with the cursor on another field.</summary>
    public Question Move(int by) => this with { Form = Form.Move(by) };

    /// <summary>An earlier step, looked at and left as it is: nothing new to record.</summary>
    public bool IsLookedAt(Shift shift) => At < shift.Step && !IsReport && Form.IsUntouched;
}

/// <summary>What a filled-in question asks to have recorded, or a sentence that says what is missing.</summary>
/// <param name="Field">The field that it is missing in.</param>
public readonly record struct Answer(IReadOnlyList<ICommand> Commands, string? Missing, string? Field = null)
{
    public static Answer Of(params ICommand[] commands) => new(commands, null);

    public static Answer Lacks(string field, string what) => new([], what, field);

    /// <summary>Several answers given at once, and what confirms them; the first that lacks something says so.</summary>
    public static Answer All(IEnumerable<Answer> answers, ICommand confirm)
    {
        var all = answers.ToList();
        return all.FirstOrDefault(a => a.Missing is not null) is { Missing: not null } lacks
            ? lacks
            : new([.. all.SelectMany(a => a.Commands), confirm], null);
    }
}

/// <summary>What a key of a question comes to. One of: another question, an answer, another step.</summary>
/// <param name="Step">Steps to go on, or back; 0: none.</param>
/// <param name="IsOpen">To the question that is open now.</param>
public readonly record struct StepReply(
    Question? Question = null, Answer? Answer = null, int Step = 0, bool IsOpen = false, string Said = "")
{
    /// <summary>Whether what is said is that something was taken; else it was not, or must be seen.</summary>
    public bool IsDone { get; init; }

    public static readonly StepReply Open = new(IsOpen: true);

    public static implicit operator StepReply(Question question) => new(question);

    public static implicit operator StepReply(Answer answer) => new(Answer: answer);

    public static StepReply Go(int steps) => new(Step: steps);
}

/// <summary>One key of a question.</summary>
/// <param name="Line">For the key line; null: not told there.</param>
/// <param name="Row">Of the key line, above the last.</param>
public sealed record StepKey(Keys Keys, string? Line, Func<Keystroke, StepReply> Do, int Row = 1);
