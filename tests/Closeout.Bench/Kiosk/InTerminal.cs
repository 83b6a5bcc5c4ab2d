using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Closeout.Bench.Kiosk;

/// <summary>A program from its start to its first full screen, in a pseudo-terminal of 120 x 40.</summary>
/// <param name="Elapsed">Milliseconds by the clock.</param>
/// <param name="Processor">Milliseconds of the processor, all threads: what others do on the machine changes it less.</param>
/// <param name="PeakMb">The most memory that it had at once by then, in 2^20 bytes.</param>
internal readonly record struct InTerminal(double Elapsed, double Processor, double PeakMb)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>What a terminal is asked, and what an ordinary one answers: where the cursor is, what it can do.</summary>
    private static readonly (string Asked, string Answer)[] Questions = [("\u001b[6n", "\u001b[1;1R"), ("\u001b[0c", "\u001b[?1;2c")];

    /// <param name="last">What stands near the end of the first screen. Silence would not tell: some programs repaint for ever.</param>
    public static InTerminal Start(string program, string last)
    {
        var start = new ProcessStartInfo("script") { RedirectStandardOutput = true, RedirectStandardInput = true };
        foreach (var argument in new[] { "-q", "-f", "-c", $"stty rows 40 cols 120; TERM=xterm-256color exec {program}", "/dev/null" })
        {
            start.ArgumentList.Add(argument);
        }

        var begun = Stopwatch.GetTimestamp();
        using var process = Process.Start(start)!;
        try
        {
            Await(process, last);
            return new(Stopwatch.GetElapsedTime(begun).TotalMilliseconds, ProcessorOf(Child(process)), PeakOf(Child(process)));
        }
        finally
        {
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
        }
    }

    private static void Await(Process process, string last)
    {
        var (shown, buffer, answered) = (new StringBuilder(), new byte[65536], new HashSet<string>());
        using var late = new CancellationTokenSource(Patience);
        while (shown.ToString() is var seen && !seen.Contains(last, StringComparison.Ordinal))
        {
            foreach (var (asked, answer) in Questions.Where(q => seen.Contains(q.Asked, StringComparison.Ordinal) && answered.Add(q.Asked)))
            {
                process.StandardInput.Write(answer);
                process.StandardInput.Flush();
            }

            var read = process.StandardOutput.BaseStream.ReadAsync(buffer, late.Token).AsTask().GetAwaiter().GetResult();
            if (read == 0)
            {
                throw new InvalidOperationException($"it ended without a screen: {shown}");
            }

            shown.Append(Encoding.UTF8.GetString(buffer, 0, read));
        }
    }

    /// <summary>The program that <c>script</c> started.</summary>
    private static string Child(Process script) => File.ReadAllText($"/proc/{script.Id}/task/{script.Id}/children").Trim();

    private static double ProcessorOf(string id) => Directory.EnumerateDirectories($"/proc/{id}/task")
        .Sum(t => double.Parse(File.ReadAllText(Path.Combine(t, "schedstat")).Split(' ')[0], CultureInfo.InvariantCulture)) / 1e6;

    private static double PeakOf(string id) => double.Parse(
        File.ReadLines($"/proc/{id}/status").Single(l => l.StartsWith("VmHWM:", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2],
        CultureInfo.InvariantCulture) / 1024;
}
