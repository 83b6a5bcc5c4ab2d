using Closeout.Screens.Parts;

namespace Closeout.Tests.Screens;

/// <summary>A screen at several sizes. One at which it cannot be drawn throws when it is asked for.</summary>
internal sealed class DrawnScreen
{
    private readonly Dictionary<(int, int), Func<string>> shown = [];
    private readonly Dictionary<(int, int), string> tones = [];

    public DrawnScreen(SampleKiosk kiosk, IEnumerable<(int Width, int Height)> sizes)
    {
        HasCaution = kiosk.Session.Model is { Said: "", Screen: Closeout.Screens.CloseoutScreen };
        foreach (var (width, height) in sizes)
        {
            try
            {
                var sheet = kiosk.Session.Show(width, height);
                var text = sheet.ToString();
                shown[(width, height)] = () => text;
                tones[(width, height)] = Tones(sheet);
            }
            catch (Exception e)
            {
                shown[(width, height)] = () => throw e;
            }
        }
    }

    /// <summary>Whether a caution stands on it: a close-out with nothing said.</summary>
    public bool HasCaution { get; }

    public string At(int width, int height) => shown[(width, height)]();

    /// <summary>What has a tone: row, column, tone and word, from above to below.</summary>
    public string TonesAt(int width, int height) => tones[(width, height)];

    private static string Tones(Sheet sheet) => string.Join("; ",
        from row in Enumerable.Range(0, sheet.Height)
        from run in sheet.Runs(row)
        where Paint.Tones.ContainsKey(run.Look)
        select $"{row},{run.Column} {run.Look}:{run.Text}");
}
