namespace Closeout.Screens.People;

/// <summary>What the book knows of somebody's PIN, in words.</summary>
public static class PinWords
{
    /// <summary>Whether there is a PIN and what it opens.</summary>
    public static string State(Depot depot, Code<Technician> person) => depot.Pins.Of(person) switch
    {
        { Hash: null } => T("none"),
        { IsLocked: true, Failures: var failures } => T($"LOCKED after {failures} wrong"),
        { Failures: > 0 and var failures, Issued: var issued } => T($"set{(issued ? T(", issued") : "")}; {failures} wrong in a row"),
        { Issued: true } => T("set, issued"),
        _ => T("set, own"),
    };
}
