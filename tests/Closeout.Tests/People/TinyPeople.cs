using Closeout.DayBook;
using Closeout.Facts;
using Closeout.People;
using Closeout.Rules;
using FluentAssertions;

namespace Closeout.Tests.People;

/// <summary>Plays commands of the people on a depot, each at a moment of its own.</summary>
internal static class TinyPeople
{
    public const string Bay = "bay";

    public static readonly PinHash Known = PinHash.Of("493027", new byte[16], 1);

    public static Technician Person(this Depot depot, string code) => depot.Setup.Find(new Code<Technician>(code))!;

    /// <summary>A depot where T1 and the lead have a PIN.</summary>
    public static Depot WithPins() => Tiny.Opened().Did(0, new FirstPin(Tiny.Lead, Known), new IssuePin(Tiny.T1, Known, Tiny.Lead));

    /// <summary>The depot after these commands, so many seconds after five o'clock; each must be accepted.</summary>
    public static Depot Did(this Depot depot, double second, params ICommand[] commands) => commands.Aggregate(depot, (now, command) =>
    {
        var decision = command.Decide(now);
        decision.Refusal.Should().BeNull($"{command} is lawful");
        return now.Apply(new Recorded(now.Number + 1, Tiny.FiveOClock.AddSeconds(second), decision.Entry!));
    });

    /// <summary>So many wrong PINs, each at the first moment at which it is looked at.</summary>
    public static Depot Wrong(this Depot depot, int times, string person = "T1", string kiosk = Bay)
    {
        for (var n = 0; n < times; n++)
        {
            depot = depot.Did(30 * n, new NoteWrong(new(person), kiosk));
        }

        return depot;
    }

    public static Refusal? At(this Depot depot, double second, string person = "T1", string kiosk = Bay) =>
        PinTries.Now(depot, depot.Person(person), kiosk, Tiny.FiveOClock.AddSeconds(second));
}
