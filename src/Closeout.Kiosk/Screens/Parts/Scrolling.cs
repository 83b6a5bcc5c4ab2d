namespace Closeout.Screens.Parts;

/// <summary>Where the keys of a list lead.</summary>
public static class Scrolling
{
    private const int Page = 10;

    /// <summary>More than any list has lines; what shows a list keeps within its own.</summary>
    private const int Far = 100_000;

    /// <summary>The line after a key, from 0; the end of the list is for whoever knows it.</summary>
    public static int To(int at, Press press) => Math.Clamp(
        at + press switch
        {
            Press.Up => -1,
            Press.Down => 1,
            Press.PageUp => -Page,
            Press.PageDown => Page,
            Press.Home => -at,
            _ => 0,
        },
        0,
        Far);

    /// <summary>The same in a list of so many lines.</summary>
    public static int Within(int at, Press press, int lines)
    {
        var last = Math.Max(0, lines - 1);
        return press == Press.End ? last : Math.Min(last, To(Math.Clamp(at, 0, last), press));
    }
}
