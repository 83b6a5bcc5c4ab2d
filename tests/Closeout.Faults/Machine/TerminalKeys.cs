using Closeout.Screens.Parts;

namespace Closeout.Faults.Machine;

/// <summary>Keys as a terminal sends them.</summary>
internal static class TerminalKeys
{
    public static string Of(IEnumerable<Keystroke> keys) => string.Concat(keys.Select(Of));

    private static string Of(Keystroke key) => key.Press switch
    {
        Press.Character => key.Character.ToString(),
        Press.Enter => "\r",
        Press.Tab => "\t",
        Press.Backspace => "\u007f",
        Press.Up => "\u001b[A",
        Press.Down => "\u001b[B",
        Press.PageUp => "\u001b[5~",
        Press.PageDown => "\u001b[6~",
        Press.F3 => "\u001b[13~",
        Press.Escape => "\u001b",
        Press.Quit => "\u0011",
        _ => throw new InvalidOperationException($"{key.Press} is not typed here"),
    };
}
