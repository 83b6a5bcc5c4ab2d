namespace Closeout.Tests.Screens;

/// <summary>A screen at several sizes. One at which it cannot be drawn throws when it is asked for.</summary>
internal sealed class DrawnScreen
{
    private readonly Dictionary<(int, int), Func<string>> shown = [];

    public DrawnScreen(SampleKiosk kiosk, IEnumerable<(int Width, int Height)> sizes)
    {
        HasCaution = kiosk.Session.Model is { Said: "", Screen: Closeout.Screens.CloseoutScreen };
        foreach (var (width, height) in sizes)
        {
            try
            {
                var text = kiosk.Show(width, height);
                shown[(width, height)] = () => text;
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
}
