using Closeout.Screens;
using Closeout.Screens.Parts;
using FluentAssertions;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>The library's own window, without a terminal: what the session shows is what stands in the driver's cells.</summary>
public sealed class WindowTests
{
    [Fact]
    public void The_window_shows_the_sheet_and_passes_keys_on()
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        using var kiosk = new SampleKiosk();
        using var app = Application.Create(new VirtualTimeProvider());
        app.Init("ansi");
        app.Driver!.SetScreenSize(80, 24);
        using var window = new KioskWindow(kiosk.Session, new Paint(hasColors: true));
        var token = app.Begin(window);
        app.LayoutAndDraw();
        Cells(app).Should().Be(kiosk.Show());

        foreach (var key in new[] { Key.B, Key.D3, Key.Enter, Key.Enter })
        {
            app.InjectKey(key);
            app.LayoutAndDraw();
        }

        kiosk.Closeout.Van.Text.Should().Be("B3");
        Cells(app).Should().Be(kiosk.Show());
        app.InjectKey(Key.Esc);
        app.LayoutAndDraw();
        kiosk.Session.Model.Screen.Should().BeOfType<WallScreen>("Esc leaves the close-out, not the kiosk");
        app.End(token!);
    }

    private static string Cells(IApplication app)
    {
        var cells = app.Driver!.Contents!;
        var lines = Enumerable.Range(0, 24).Select(row => string.Concat(Enumerable.Range(0, 80).Select(column => cells[row, column].Grapheme)).TrimEnd());
        return string.Join('\n', lines) + "\n";
    }
}
