using Closeout.Files;
using Closeout.Restock;

namespace Closeout.Commands;

/// <summary>
/// The one way by which a command says a sentence. Names of files, of people and of whatever a day folder or a book holds stand
/// in them, and none of those may steer the terminal.
/// </summary>
public static class Say
{
    /// <summary>A line on standard output.</summary>
    public static int Done(string sentence)
    {
        Console.Out.WriteLine(Harmless.Line(sentence));
        return ExitCode.Done;
    }

    /// <summary>A line on standard error.</summary>
    /// <returns>The exit code.</returns>
    public static int Wrong(string sentence, int code = ExitCode.No)
    {
        Console.Error.WriteLine(Harmless.Line(sentence));
        return code;
    }

    /// <summary>Standard error where it is a terminal that can take a line away again; else null.</summary>
    public static TextWriter? Terminal =>
        Console.IsErrorRedirected || (Environment.GetEnvironmentVariable("TERM") is null or "" or "dumb" && !OperatingSystem.IsWindows())
            ? null
            : Console.Error;

    /// <summary>A number of things, and what they are called.</summary>
    public static string Count(int number, string one, string many) => $"{number} {(number == 1 ? one : many)}";

    /// <summary>Mostly standard output that cannot take more; whatever else the system refuses, it is no fault of ours.</summary>
    public static int CannotSay(Exception e) =>
        Wrong(
            T($"This could not be read or written: {e.Message} Free some room or name another place, then run it again."), ExitCode.NoBook);

    public static void Notes(Findings findings)
    {
        foreach (var note in findings.Notes)
            Wrong(T($"note: {note}"));
    }

    /// <summary>Names the items of which nobody knows what a visit needs.</summary>
    public static void NotKnown(Depot depot)
    {
        if (PlanWords.Unknown(VisitHistory.Of(depot).Unknown(depot)) is { } unknown)
            Wrong(T($"note: {unknown}"));
    }

    /// <summary>Every fault on a line of its own, and what became of it.</summary>
    public static int Faults(IReadOnlyCollection<Problem> problems, string became)
    {
        foreach (var problem in problems)
            Wrong(problem.ToString());

        return Wrong($"{Count(problems.Count, T("fault"), T("faults"))}; {became}", ExitCode.BadInput);
    }

    /// <summary>Under --final: names each van that is not closed.</summary>
    /// <returns>Whether there is one.</returns>
    public static bool NotFinal(Depot depot)
    {
        var open = depot.Setup.Vans.Where(v => !depot.IsDone(v.Code)).ToList();
        foreach (var van in open)
        {
            var at = depot.Shift(van.Code) is { } shift ? T($"it is at {StepWords.Name(shift.Step)}") : T("it is on the road");
            Wrong(T($"{van.Code} {van.Name} is not closed: {at}. Close it out, or leave --final away."));
        }

        return open.Count > 0;
    }
}
