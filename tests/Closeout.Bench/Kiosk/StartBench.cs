using System.Diagnostics;
using System.Text;
using Closeout.Bench.Plan;
using Closeout.Store;

namespace Closeout.Bench.Kiosk;

/// <summary>From the start of the program to the first full screen in a pseudo-terminal: compiled ahead (ReadyToRun) and compiled as it runs.</summary>
public static class StartBench
{
    private const int Rounds = 9;
    private const string Seen = "BAY WALL";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    public static void Run()
    {
        using var temp = new TempFolder();
        var book = new BookFolder(temp.At("book"));
        Book.New(book, BigPlan.Read(TempFolder.InTree("sample-day")).FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch);
        var project = TempFolder.InTree("src/Closeout.Kiosk");
        Build($"publish {project} -p:PublishProfile=ReadyToRun -p:PublishDir={temp.At("ahead")}/");
        Build($"build {project} -c Release -o {temp.At("jit")}");

        var (ahead, jit) = (new List<double>(), new List<double>());
        for (var round = 0; round <= Rounds; round++)
        {
            var (a, j) = (FirstScreen(temp.At("ahead/closeout"), book.Path), FirstScreen(temp.At("jit/closeout"), book.Path));
            if (round > 0)
            {
                ahead.Add(a);
                jit.Add(j);
            }
        }

        Told.Line($"## Start-up to the first full screen, median of {Rounds}, in turns");
        Told.Line($"compiled ahead / compiled as it runs {Timed.Median(ahead) / Timed.Median(jit):0.00}");
        Told.Line($"milliseconds: ahead {Timed.Median(ahead):0} ({ahead.Min():0} to {ahead.Max():0}), as it runs {Timed.Median(jit):0} ({jit.Min():0} to {jit.Max():0})");
    }

    internal static void Build(string arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", arguments) { RedirectStandardOutput = true })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException(said);
        }
    }

    internal static double FirstScreen(string program, string book) => Start(program, book).Elapsed;

    /// <summary>Milliseconds to the first full screen: by the clock, and of the processor, which what others do on the machine changes less.</summary>
    internal static (double Elapsed, double Processor) Start(string program, string book)
    {
        var start = new ProcessStartInfo("script") { RedirectStandardOutput = true, RedirectStandardInput = true };
        foreach (var argument in new[] { "-q", "-f", "-c", $"stty rows 40 cols 120; TERM=xterm-256color exec {program} --book {book}", "/dev/null" })
        {
            start.ArgumentList.Add(argument);
        }

        var begun = Stopwatch.GetTimestamp();
        using var process = Process.Start(start)!;
        try
        {
            var (shown, buffer) = (new StringBuilder(), new byte[65536]);
            using var late = new CancellationTokenSource(Patience);
            while (!shown.ToString().Contains(Seen, StringComparison.Ordinal))
            {
                var read = process.StandardOutput.BaseStream.ReadAsync(buffer, late.Token).AsTask().GetAwaiter().GetResult();
                if (read == 0)
                {
                    throw new InvalidOperationException($"the kiosk ended without a screen: {shown}");
                }

                shown.Append(Encoding.UTF8.GetString(buffer, 0, read));
            }

            return (Stopwatch.GetElapsedTime(begun).TotalMilliseconds, Processor(process.Id));
        }
        finally
        {
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
        }
    }

    /// <summary>The processor time so far of the program that <c>script</c> started, all its threads.</summary>
    private static double Processor(int script)
    {
        var id = File.ReadAllText($"/proc/{script}/task/{script}/children").Trim();
        return Directory.EnumerateDirectories($"/proc/{id}/task")
            .Sum(t => double.Parse(File.ReadAllText(Path.Combine(t, "schedstat")).Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)) / 1e6;
    }
}
