using Closeout.Facts;
using Closeout.Files;
using Closeout.Rules;
using Closeout.Screens.Steps;
using Closeout.Shifts.Steps;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>Plays an evening's answers through the same desk as the kiosk.</summary>
public static class Rehearsal
{
    /// <summary>Between two answers on a rehearsal's clock, from the end of the shift: the same folder gives the same book.</summary>
    private const int SecondsPerAnswer = 15;

    /// <summary>The clock of a rehearsal of that day.</summary>
    public static TimeProvider Clock(DateOnly date, TimeOnly shiftEnd) => new Ticking(new(date.ToDateTime(shiftEnd), TimeSpan.Zero));

    /// <summary>Plays the answers; the faults are the refusals, each at its line.</summary>
    /// <param name="attachments">Where pictures go.</param>
    public static IEnumerable<Problem> Play(Desk desk, Attachments attachments, IEnumerable<EveningAnswer> answers)
    {
        foreach (var answer in answers)
        {
            if (Give(desk, attachments, answer) is { } refusal)
            {
                yield return new(EveningFile.File, answer.Line, 1, refusal.Text);
            }
        }
    }

    /// <summary>One answer: whoever answers a later step has confirmed the earlier ones as booked.</summary>
    private static Refusal? Give(Desk desk, Attachments attachments, EveningAnswer answer)
    {
        if (desk.Depot.Shift(answer.Van) is null && Tell(desk, new ComeIn(answer.Van, answer.Technician)) is { } notIn)
        {
            return notIn;
        }

        while (desk.Depot.Shift(answer.Van)!.Step < answer.Step)
        {
            if (Tell(desk, StepPages.Of(desk.Depot.Shift(answer.Van)!.Step).Unchanged(answer.Van)) is { } refusal)
            {
                return refusal;
            }
        }

        var (command, none) = answer.Photo is { } path ? Photo(attachments, answer.Van, path) : (answer.Command, null);
        return none ?? Tell(desk, command!);
    }

    private static (ICommand? Command, Refusal? None) Photo(Attachments attachments, Code<Van> van, string path)
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
    private static Refusal? Tell(Desk desk, ICommand command)
    {
        var refusal = desk.Record(command);
        return refusal is { AskAgain: true } && command is IAskedAgain again ? desk.Record(again.Surely()) : refusal;
    }

    private sealed class Ticking(DateTimeOffset start) : TimeProvider
    {
        private int ticks;

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => start.AddSeconds(SecondsPerAnswer * ticks++);
    }
}
