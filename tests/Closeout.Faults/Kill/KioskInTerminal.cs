using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Closeout.Faults.Machine;
using Closeout.Tests;

namespace Closeout.Faults.Kill;

/// <summary>The real program in a pseudo-terminal of 80 x 24, by way of <c>script</c>, and what is seen there.</summary>
public sealed partial class KioskInTerminal : IDisposable
{
    private readonly Process process;
    private readonly SeenScreen screen = new(80, 24);
    private readonly Task reading;
    private string head = "";
    private bool ended;

    public KioskInTerminal(string book, params string[] options)
    {
        var start = new ProcessStartInfo("env") { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        var program = string.Join(' ', (string[])[.. Built.Words(Built.Closeout), "--book", book, .. options]);
        foreach (var arg in new[] { "--default-signal=HUP", "script", "-q", "-f", "-c", $"stty rows 24 cols 80; sh -c 'echo PID $$.; exec {program}'", "/dev/null" })
        {
            start.ArgumentList.Add(arg);
        }

        start.Environment["TERM"] = "xterm-256color";
        start.Environment["SHELL"] = "/bin/sh";
        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        start.Environment.Remove("NO_COLOR");
        start.Environment.Remove("DisableRealDriverIO");
        process = Process.Start(start)!;
        reading = Task.Run(Read);
    }

    /// <summary>What is on the screen now.</summary>
    public string Seen
    {
        get
        {
            lock (screen)
            {
                return screen.ToString();
            }
        }
    }

    /// <summary>Waits until the screen is as asked for, or the time is over.</summary>
    public bool Await(Func<string, bool> isIt, TimeSpan patience)
    {
        var waited = Stopwatch.StartNew();
        lock (screen)
        {
            while (!isIt(screen.ToString()))
            {
                if (ended || waited.Elapsed > patience)
                {
                    return false;
                }

                Monitor.Wait(screen, 50);
            }

            return true;
        }
    }

    public void Type(string keys)
    {
        process.StandardInput.Write(keys);
        process.StandardInput.Flush();
    }

    /// <summary>Kills the program, and takes in what it had sent to the terminal by then.</summary>
    public void Kill()
    {
        var waited = Stopwatch.StartNew();
        int id;
        while ((id = Id()) == 0 && waited.Elapsed.TotalSeconds < 10)
        {
            Thread.Sleep(1);
        }

        Signals.Kill(id);
        reading.Wait(TimeSpan.FromSeconds(10));
    }

    public void Dispose()
    {
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
        process.Dispose();
    }

    private int Id()
    {
        lock (screen)
        {
            return IdPattern().Match(head) is { Success: true } id ? int.Parse(id.Groups[1].Value, CultureInfo.InvariantCulture) : 0;
        }
    }

    private void Read()
    {
        var buffer = new char[16384];
        int read;
        while ((read = process.StandardOutput.Read(buffer)) > 0)
        {
            lock (screen)
            {
                head = head.Length < 4096 ? head + new string(buffer, 0, read) : head;
                screen.Take(buffer.AsSpan(0, read));
                Monitor.PulseAll(screen);
            }
        }

        lock (screen)
        {
            ended = true;
            Monitor.PulseAll(screen);
        }
    }

    [GeneratedRegex(@"PID ([0-9]+)\.")]
    private static partial Regex IdPattern();
}
