using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Closeout.Screens.Parts;

/// <summary>
/// The looks as a terminal sets them. Of the 16 colors each tone names both, so that its contrast does not hang on the terminal's own
/// ground; without colors bold and reverse say the same.
/// </summary>
/// <param name="hasColors">Whether colors are sent.</param>
/// <param name="hasShapes">Whether the terminal shows UTF-8; else each shape is one ASCII character.</param>
public sealed class Paint(bool hasColors, bool hasShapes = true)
{
    public bool HasShapes => hasShapes;

    /// <summary>The pairs of the tones: letters, ground.</summary>
    public static readonly IReadOnlyDictionary<Look, (ColorName16 Letters, ColorName16 Ground)> Tones =
        new Dictionary<Look, (ColorName16, ColorName16)>
        {
            [Look.Good] = (ColorName16.Black, ColorName16.Green),
            [Look.Note] = (ColorName16.Black, ColorName16.Yellow),
            [Look.Stop] = (ColorName16.White, ColorName16.Red),
        };

    /// <summary>Whether a terminal wants colors: not with NO_COLOR set and not empty (no-color.org), nor where it is a dumb one.</summary>
    public static bool Wanted(bool refused, string? noColor, string? terminal) =>
        !refused && string.IsNullOrEmpty(noColor) && terminal != "dumb";

    public Attribute Of(Look look) => look switch
    {
        Look.Good or Look.Note or Look.Stop when hasColors =>
            new(new Color(Tones[look].Letters), new Color(Tones[look].Ground), TextStyle.Bold),
        Look.Plain or Look.Good => Of(TextStyle.None),
        Look.Strong or Look.Note => Of(TextStyle.Bold),
        Look.Faint => Of(TextStyle.Faint),
        Look.Field => Of(TextStyle.Reverse),
        Look.Stop => Of(TextStyle.Bold | TextStyle.Reverse),
        _ => throw new InvalidOperationException($"no paint for {look}"),
    };

    private static Attribute Of(TextStyle style) => new(Color.None, Color.None, style);
}
