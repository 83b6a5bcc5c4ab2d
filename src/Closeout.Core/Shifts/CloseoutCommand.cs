namespace Closeout.Shifts;

/// <summary>What somebody asks to have recorded of a van's close-out: an answer to one of its steps, or a picture beside it.</summary>
public abstract record CloseoutCommand(Code<Van> Van) : ICommand
{
    /// <summary>The step that it answers; null: it goes with any.</summary>
    public abstract Step? Step { get; }

    public Decision Decide(Depot depot)
    {
        if (depot.Setup.Find(Van) is not { } van)
            return Refusal.NoSuchVan(Van);

        return depot.Shift(van.Code) switch
        {
            null => Refusal.NotIn(van),
            { IsClosed: true } closed => Refusal.AlreadyClosed(van, closed),
            var shift when Step is { } step && !ShiftFlow.Allows(shift.Step, ShiftFlow.Answers(step)!.Value) =>
                Refusal.TooEarly(van, shift.Step, step),
            var shift => Decide(depot, shift),
        };
    }

    /// <summary>Decides on a close-out that is open and has come to the step.</summary>
    protected abstract Decision Decide(Depot depot, Shift shift);
}
