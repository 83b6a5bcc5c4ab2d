using Closeout.Files;
using Closeout.Screens.Steps;
using Closeout.Shifts.Steps;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>Plays an evening's answers through the same desk as the kiosk.</summary>
/// <param name="attachments">Where pictures go.</param>
/// <param name="clock">The desk's, when it stands until told; null: the desk's goes by itself.</param>
public sealed class Rehearsal(Desk desk, Attachments attachments, AnswerClock? clock = null)
{
    /// <summary>Plays the answers; the faults are the refusals, each at its line.</summary>
    public IEnumerable<Problem> Play(IEnumerable<EveningAnswer> answers)
    {
        foreach (var answer in answers)
        {
            if (Give(answer) is { } refusal)
                yield return new(EveningFile.File, answer.Line, 1, refusal.Text);
        }
    }

    /// <summary>One answer: whoever answers a later step has confirmed the earlier ones as booked.</summary>
    private Refusal? Give(EveningAnswer answer)
    {
        if (desk.Depot.Shift(answer.Van) is null && Tell(new ComeIn(answer.Van, answer.Technician)) is { } notIn)
            return notIn;

        while (desk.Depot.Shift(answer.Van)!.Step < answer.Step)
        {
            if (Tell(StepPages.Of(desk.Depot.Shift(answer.Van)!.Step).Unchanged(answer.Van)) is { } refusal)
                return refusal;
        }

        var (command, none) = answer.Photo is { } path ? Photo(answer.Van, path) : (answer.Command, null);
        return none ?? Tell(command!);
    }

    private (ICommand? Command, Refusal? None) Photo(Code<Van> van, string path)
    {
        try
        {
            var taken = attachments.Take(path);
            return (new AttachPhoto(van, taken.Sha256, taken.Name, taken.Bytes), null);
        }
        catch (BookException e)
        {
            return (null, new("no-picture", e.Message));
        }
    }

    /// <summary>Records; what the kiosk would ask twice was answered twice.</summary>
    private Refusal? Tell(ICommand command)
    {
        clock?.Next();
        return desk.Record(command) is not { } refusal ? null
            : refusal.AskAgain && command is IAskedAgain again ? Tell(again.Surely())
            : refusal;
    }
}

/// <summary>A rehearsal's clock, from the end of the shift: each answer has its time, so the same folder gives the same book.</summary>
public sealed class AnswerClock(DateOnly date, TimeOnly shiftEnd) : TimeProvider
{
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(15);

    private DateTimeOffset now = new(date.ToDateTime(shiftEnd), TimeSpan.Zero);

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => now;

    /// <summary>On to the next answer.</summary>
    public void Next() => now += Between;
}
