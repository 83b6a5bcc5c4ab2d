using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Closeout.Tests.Screens;

/// <summary>A program in a pseudo-terminal of 80 x 24, by way of <c>script</c>: what a person types and sees, and the terminal's settings before and after.</summary>
/// <remarks>It heeds a hang-up even where the tests were started so that they do not, as by <c>nohup</c>: <c>env</c> sees to that.</remarks>
internal sealed partial class Pty : IDisposable
{
    private readonly Process process;
    private readonly StringBuilder seen = new();
    private readonly Task reading;

    public Pty(TempFolder folder, string command, string environment = "")
    {
        Before = folder["before"];
        After = folder["after"];
        var shell = $"stty rows 24 cols 80; stty -a > {Before}; sh -c 'echo PID $$; {environment} exec {command}'; echo CODE $?; stty -a > {After}";
        var start = new ProcessStartInfo("env") { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var arg in new[] { "--default-signal=HUP", "script", "-q", "-f", "-e", "-c", shell, "/dev/null" })
        {
            start.ArgumentList.Add(arg);
        }

        start.Environment["TERM"] = "xterm-256color";
        start.Environment["SHELL"] = "/bin/sh";
        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        start.Environment.Remove("NO_COLOR");

        // The window tests of this process do without a terminal; the program under test must not.
        start.Environment.Remove("DisableRealDriverIO");
        process = Process.Start(start)!;
        reading = Task.Run(() =>
        {
            var buffer = new char[4096];
            while (process.StandardOutput.Read(buffer) is > 0 and var read)
            {
                lock (seen)
                {
                    seen.Append(buffer, 0, read);
                }
            }
        });
    }

    public string Before { get; }

    public string After { get; }

    public string Seen
    {
        get
        {
            lock (seen)
            {
                return seen.ToString();
            }
        }
    }

    /// <summary>The process number of the program itself.</summary>
    public int Id => int.Parse(IdPattern().Match(Seen).Groups[1].Value, CultureInfo.InvariantCulture);

    /// <summary>Waits for something to be written to the terminal.</summary>
    public Pty Await(string text, int seconds = 30)
    {
        var waited = Stopwatch.StartNew();
        while (!Seen.Contains(text, StringComparison.Ordinal))
        {
            if (waited.Elapsed.TotalSeconds > seconds)
            {
                throw new TimeoutException($"'{text}' was not seen in {seconds} s, but: {Seen}");
            }

            Thread.Sleep(20);
        }

        return this;
    }

    public Pty Type(string keys)
    {
        process.StandardInput.Write(keys);
        process.StandardInput.Flush();
        return this;
    }

    public Pty Signal(string name)
    {
        Process.Start("sh", ["-c", $"kill -{name} {Id}"]).WaitForExit();
        return this;
    }

    /// <summary>The terminal goes away: the window is closed, the line is cut.</summary>
    public void HangUp() => process.Kill();

    /// <summary>Waits for the program's exit code.</summary>
    public int Code()
    {
        Await("CODE ");
        process.WaitForExit(10_000);
        reading.Wait(2_000);
        return int.Parse(CodePattern().Match(Seen).Groups[1].Value, CultureInfo.InvariantCulture);
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill(entireProcessTree: true);
        }

        process.Dispose();
    }

    [GeneratedRegex("PID ([0-9]+)")]
    private static partial Regex IdPattern();

    [GeneratedRegex("CODE ([0-9]+)")]
    private static partial Regex CodePattern();
}
