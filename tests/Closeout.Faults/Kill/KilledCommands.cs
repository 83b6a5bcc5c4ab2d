using System.Diagnostics;
using Closeout.Commands;
using Closeout.Faults.Machine;
using Closeout.Store;
using Closeout.Tests;

namespace Closeout.Faults.Kill;

/// <summary>Programs without a screen, killed at a random moment.</summary>
public static class KilledCommands
{
    /// <summary>The program that says each count on standard output as soon as it is recorded.</summary>
    public static Figure Appender(int rounds, int seed)
    {
        using var temp = new TempFolder();
        var (faults, random, said) = (new FaultList(), new Random(seed), 0);
        BookFolder? book = null;
        for (var round = 0; round < rounds; round++)
        {
            if (book is null || round % 40 == 0)
            {
                book = new BookFolder(temp[$"book-{round}"]);
                Books.New(book);
            }

            using var writer = new SecondWriter(book, "B1");
            writer.AwaitFirst();
            Thread.Sleep(TimeSpan.FromMilliseconds(random.NextDouble() * 80));
            writer.Kill();
            said += writer.Said;
            if (Books.WhyNotGood(book) is { } bad)
            {
                faults.Add($"round {round}: NOT OPENABLE {bad}");
                book = null;
            }
            else if (writer.WhyNotKept(SecondWriter.Apart(Books.Entries(book), "B1").Others) is { } gone)
            {
                faults.Add($"round {round}: {gone}");
            }
        }

        return Figure.Of(
            "kill (appender)", faults.All,
            $"{rounds} kills, {said} entries said to be recorded; acknowledged and lost {faults.All.Count(f => f.Contains("LOST"))}, wrong or doubled {faults.All.Count(f => f.Contains("WRONG"))}, not openable {faults.All.Count(f => f.Contains("NOT OPENABLE"))}",
            ("rounds", rounds), ("said", said));
    }

    /// <summary>
    /// <c>rehearse</c> over its own earlier output. It acknowledges by its exit code alone; killed, it must leave whole files, a
    /// book that is good or none, and must run again.
    /// </summary>
    /// <param name="calls">The system calls that change names, at which it is killed; null: all of them.</param>
    /// <param name="sparse">
    /// At each of the first eight of a call, which are the book's own, and at every third behind them, which are files out; else
    /// at each.
    /// </param>
    public static Figure Rehearsal(int rounds, int seed, IReadOnlyList<string>? calls = null, bool sparse = false)
    {
        using var temp = new TempFolder();
        var (faults, random, outDir) = (new FaultList(), new Random(seed), temp["out"]);
        var begun = Stopwatch.GetTimestamp();
        Ended(Begin(outDir));
        var whole = Stopwatch.GetElapsedTime(begun);
        var expected = Files(outDir);
        var (noBook, left, acts) = (0, 0, 0);
        for (var round = 0; round < rounds; round++)
        {
            using var process = Begin(outDir);
            Thread.Sleep(whole * (random.NextDouble() * 1.1));
            process.Kill();
            process.WaitForExit();
            Look($"round {round}");
        }

        // And once at every change of names that it makes, the last of which it outlives.
        foreach (var call in calls ?? ["mkdir", "rename", "unlink", "rmdir"])
        {
            for (var times = 1; KilledAt(call, times, outDir); times += sparse && times >= 8 ? 3 : 1)
            {
                acts++;
                Look($"at {call} {times}");
            }
        }

        return Figure.Of(
            "kill (rehearse)", faults.All,
            $"{rounds} kills at random and one at each of {acts} changes of names; files that are not whole {faults.All.Count(f => f.Contains("not whole"))}, books not openable {faults.All.Count(f => f.Contains("NOT OPENABLE"))}, not to be run again {faults.All.Count(f => f.Contains("does not run"))}; {noBook} times without a book, between the old one and the new one, {left} books left beside",
            ("rounds", rounds), ("acts", acts), ("no book", noBook));

        void Look(string when)
        {
            var book = new BookFolder(Path.Combine(outDir, "book"));
            noBook += book.HasPages ? 0 : 1;
            if (book.HasPages && Books.WhyNotGood(book) is { } bad)
            {
                faults.Add($"{when}: NOT OPENABLE {bad}");
            }

            foreach (var (file, bytes) in Files(outDir).Where(f => !f.Value.AsSpan().SequenceEqual(expected[f.Key])))
            {
                faults.Add($"{when}: {file} is not whole: {bytes.Length} bytes of {expected[file].Length}");
            }

            left += Beside(outDir).Count;
            var again = Spoken.By(() => RehearseCommand.Run(Repository.SampleDay, outDir, null, null, final: false));
            if (again.Code != ExitCode.Done)
            {
                faults.Add($"{when}: it does not run again: {again.Err.Trim()}");
                Directory.Delete(outDir, recursive: true);
                Directory.CreateDirectory(outDir);
            }

            if (Beside(outDir) is [var beside, ..])
            {
                faults.Add($"{when}: {beside} is left when it ran again");
                Directory.Delete(beside, recursive: true);
            }
        }
    }

    /// <summary>Runs it and kills it as it makes a system call, the first time or a later one.</summary>
    /// <returns>Whether it came to so many.</returns>
    private static bool KilledAt(string call, int times, string outDir)
    {
        string[] arguments = ["-f", "-o", "/dev/null", "-e", $"trace={call}", "-e", $"inject={call}:signal=SIGKILL:when={times}"];
        var start = new ProcessStartInfo("strace") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        foreach (var word in (string[])[.. arguments, .. Built.Words(Built.Closeout), "rehearse", Repository.SampleDay, "--out", outDir])
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode switch
        {
            0 => false,
            128 + 9 => true,
            var code => throw new InvalidOperationException($"the rehearsal ended with {code}: {process.StandardError.ReadToEnd()}"),
        };
    }

    private static Dictionary<string, byte[]> Files(string folder) =>
        Directory.EnumerateFiles(folder, "*.csv").ToDictionary(f => Path.GetFileName(f), File.ReadAllBytes);

    /// <summary>What lies beside the book; the pattern matches the book too.</summary>
    private static IReadOnlyList<string> Beside(string outDir) => [.. Directory.GetDirectories(outDir, "book.*").Where(d => Path.GetFileName(d) != "book")];

    private static Process Begin(string outDir) => Started.Begin(Built.Closeout, Path.GetTempPath(), "rehearse", Repository.SampleDay, "--out", outDir);

    private static void Ended(Process process)
    {
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException(process.StandardError.ReadToEnd());
        }
    }
}
