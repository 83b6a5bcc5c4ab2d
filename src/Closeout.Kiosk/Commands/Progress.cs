namespace Closeout.Commands;

/// <summary>
/// One line of a terminal that says how far a command is, when it takes longer than a second. It is written over as the command goes on, by
/// the command itself and at most five times a second, and taken away before anything else is said.
/// </summary>
/// <param name="terminal">Where it is written; null: nobody looks, and nothing is.</param>
/// <param name="columns">How wide the terminal is.</param>
public sealed class Progress(TimeProvider clock, TextWriter? terminal, Func<int> columns) : IDisposable
{
    /// <summary>ECMA-48, CR and EL: to the begin of the line, and nothing behind it.</summary>
    private const string Clear = "\r\u001b[K";

    /// <summary>Columns of a terminal that does not say how wide it is.</summary>
    private const int Usual = 80;

    /// <summary>How long people wait without being told what for.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(1);

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private readonly long begun = clock.GetTimestamp();
    private TimeSpan next = Quiet;
    private bool isShown;

    /// <summary>For a command of the program.</summary>
    public static Progress Of(TimeProvider clock) => new(clock, Say.Terminal, () => Console.WindowWidth);

    /// <summary>Says how far it is, when it is time to.</summary>
    /// <param name="sentence">Asked for only then.</param>
    public void Tell(Func<string> sentence) => Tell(0, _ => sentence());

    /// <summary>The same with the time that is left.</summary>
    /// <param name="done">The share of all that is done, 0 to 1; the rest is taken to go as quickly.</param>
    /// <param name="sentence">Is given whole seconds, at least 1.</param>
    public void Tell(double done, Func<int, string> sentence)
    {
        if (terminal is null || clock.GetElapsedTime(begun) is var waited && waited < next)
            return;

        next = waited + Pause;
        var left = done > 0 ? waited.TotalSeconds * (1 - done) / done : 0;
        var text = Harmless.Line(sentence((int)Math.Clamp(Math.Ceiling(left), 1, int.MaxValue)));
        var width = columns() is > 0 and var known ? known : Usual;
        terminal.Write(Clear + text[..Math.Min(text.Length, width - 1)]);
        isShown = true;
    }

    /// <summary>Takes the line away.</summary>
    public void Erase()
    {
        if (isShown)
            terminal!.Write(Clear);

        isShown = false;
    }

    public void Dispose() => Erase();
}
