using System.Diagnostics;
using System.Runtime.InteropServices;
using Closeout.Screens.Parts;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Closeout.Screens;

/// <summary>Runs the kiosk in a terminal, and leaves the terminal as it was found on every way out.</summary>
public static class KioskTerminal
{
    // Kept: a registration that is collected no longer catches anything.
    private static readonly List<PosixSignalRegistration> Caught = [];

    private const int HangUp = 1;

    /// <summary>
    /// So long after a key the terminal is looked at 60 times a second; then at once when somebody types, and else now and then.
    /// </summary>
    private static readonly TimeSpan Awake = TimeSpan.FromSeconds(3);

    /// <summary>How long a signal, another size of the terminal, or the tick of the clock may wait while nobody types.</summary>
    private static readonly TimeSpan Nap = TimeSpan.FromMilliseconds(250);

    private static int signal;

    /// <summary>Whether there is a terminal to run in.</summary>
    public static bool IsThere => Driver.IsAttachedToTerminal(out var input, out var output) && input && output;

    /// <returns>The exit code: 0, or 128 and the signal that ended it.</returns>
    public static int Run(KioskSession session, Paint paint)
    {
        // The library reads theme files from the home and working folders unless told not to look anywhere.
        Application.MaximumIterationsPerSecond = 60;
        var app = Application.Create();
        try
        {
            app.Init("ansi");
            app.Driver!.Force16Colors = true;
            using var window = new KioskWindow(session, paint);
            var input = new TerminalInput();
            Catch(app, window);
            WatchTerminal(input);
            app.AddTimeout(TimeSpan.FromSeconds(1), () =>
            {
                window.Tick();
                return true;
            });
            app.Paste += (_, paste) =>
            {
                window.Paste(paste.Text);
                paste.Handled = true;
            };
            KeepQuiet(app);
            SleepWhileNobodyTypes(app, input);
            app.Run(window);
        }
        catch
        {
            // Not in a finally: an exception that nobody catches is printed before those run, into a screen that vanishes.
            app.Dispose();
            throw;
        }

        app.Dispose();
        return signal == 0 ? 0 : 128 + signal;
    }

    private static void Catch(IApplication app, KioskWindow window)
    {
        foreach (var (posix, number) in new[] { (PosixSignal.SIGTERM, 15), (PosixSignal.SIGINT, 2) })
        {
            Caught.Add(PosixSignalRegistration.Create(posix, context =>
            {
                context.Cancel = true;
                signal = number;
                app.Invoke(() => app.RequestStop(window));
            }));
        }

        // On hang-up there is mostly nobody left to draw for, and stopping in the usual way would spin for ever. Everything
        // confirmed is on disk: try the usual way for a moment, for a terminal that is still there, then go.
        Caught.Add(PosixSignalRegistration.Create(PosixSignal.SIGHUP, context =>
        {
            context.Cancel = true;
            signal = HangUp;
            app.Invoke(() => app.RequestStop(window));
            new Thread(() =>
            {
                Thread.Sleep(TimeSpan.FromSeconds(1));
                Environment.Exit(128 + signal);
            }) { IsBackground = true }.Start();
        }));
    }

    /// <summary>Where hang-ups are ignored nobody tells that the terminal went, and the library would ask it for keys for ever.</summary>
    private static void WatchTerminal(TerminalInput input) => new Thread(() =>
    {
        while (input.IsThere)
            Thread.Sleep(TimeSpan.FromSeconds(1));

        Environment.Exit(128 + HangUp);
    }) { IsBackground = true }.Start();

    /// <summary>
    /// The loop of the library looks 60 times a second whether anything came. While nobody types it waits for the terminal instead.
    /// </summary>
    private static void SleepWhileNobodyTypes(IApplication app, TerminalInput input)
    {
        var since = Stopwatch.StartNew();
        app.Keyboard.KeyDown += (_, _) => since.Restart();
        app.Iteration += (_, _) =>
        {
            if (since.Elapsed > Awake)
                input.Wait(Nap);
        };
    }

    /// <summary>Sends the cursor only when it moved: an idle kiosk over a slow line stays silent.</summary>
    private static void KeepQuiet(IApplication app)
    {
        Cursor? last = null;
        app.Iteration += (_, _) =>
        {
            var now = app.Driver?.GetCursor();
            if (Equals(now, last))
                app.Driver?.SetCursorNeedsUpdate(false);

            last = now;
        };
    }
}
