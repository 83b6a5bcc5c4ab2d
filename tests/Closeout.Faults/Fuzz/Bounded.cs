using System.Diagnostics;
using System.Globalization;
using Closeout.Faults.Machine;

namespace Closeout.Faults.Fuzz;

/// <summary>A reader that takes generated inputs. One object is used by one thread.</summary>
internal interface IFuzzed
{
    string Name { get; }

    /// <summary>Makes the input; what is returned is what is saved when it fails.</summary>
    byte[] Make(Random random);

    /// <summary>Gives the input to the reader. Anything that it throws is a fault.</summary>
    /// <returns>A word for what came of it, to be counted.</returns>
    string Give(byte[] input);
}

/// <summary>Gives a reader many inputs, each with its own seed, and holds it to bounds of time and memory.</summary>
internal static class Bounded
{
    /// <summary>An input that takes longer counts as a hang, on a busy machine.</summary>
    private static readonly TimeSpan MostTime = TimeSpan.FromSeconds(20);

    /// <summary>What an input may allocate, in bytes: a fixed part, and so many for each of its own.</summary>
    private const long MostFixed = 32L * 1024 * 1024;
    private const long MostPerByte = 400;

    public static Figure Run(IFuzzed fuzzed, int inputs, int seed)
    {
        var (faults, state) = (new FaultList(), new State());
        var worker = new Thread(() => Work(fuzzed, inputs, seed, faults, state), 16 * 1024 * 1024) { IsBackground = true };
        var start = Stopwatch.GetTimestamp();
        worker.Start();
        while (!worker.Join(100))
        {
            if (state.Since is var since && since != 0 && Stopwatch.GetElapsedTime(since) > MostTime)
            {
                faults.Add($"input {state.Index} of seed {seed}: HANGS, saved in {Save(fuzzed, seed, state.Index, state.Input)}");
                break;
            }
        }

        var outcomes = string.Join(", ", state.Outcomes.OrderByDescending(o => o.Value).Select(o => string.Create(CultureInfo.InvariantCulture, $"{o.Value} {o.Key}")));
        return Figure.Of(
            $"fuzz ({fuzzed.Name})", faults.All,
            $"{state.Index} inputs of seed {seed}: {outcomes}; failed {faults.All.Count}; {Stopwatch.GetElapsedTime(start).TotalSeconds:0} s in all, the longest took {state.Longest:0} ms, the most memory {state.Most / 1_048_576.0:0.0} MB",
            [("inputs", state.Index), ("longest", state.Longest), .. state.Outcomes.Select(o => (o.Key, (double)o.Value))]);
    }

    private static void Work(IFuzzed fuzzed, int inputs, int seed, FaultList faults, State state)
    {
        for (var index = 0; index < inputs; index++)
        {
            var random = new Random(Numbers.Mix(seed, index));
            var input = state.Input = fuzzed.Make(random);
            state.Index = index;
            var (begun, allocated) = (Stopwatch.GetTimestamp(), GC.GetAllocatedBytesForCurrentThread());
            state.Since = begun;
            try
            {
                var outcome = fuzzed.Give(input);
                state.Outcomes[outcome] = state.Outcomes.GetValueOrDefault(outcome) + 1;
            }
            catch (Exception e)
            {
                faults.Add($"input {index} of seed {seed}: {e.GetType().Name}: {e.Message.ReplaceLineEndings(" ")} {First(e)}; saved in {Save(fuzzed, seed, index, input)}");
            }

            state.Since = 0;
            var (took, used) = (Stopwatch.GetElapsedTime(begun).TotalMilliseconds, GC.GetAllocatedBytesForCurrentThread() - allocated);
            (state.Longest, state.Most) = (Math.Max(state.Longest, took), Math.Max(state.Most, used));
            if (used > MostFixed + MostPerByte * input.Length)
            {
                faults.Add($"input {index} of seed {seed}: MEMORY {used} bytes for {input.Length}; saved in {Save(fuzzed, seed, index, input)}");
            }
        }

        state.Index = inputs;
    }

    private static string First(Exception e) => e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Closeout.", StringComparison.Ordinal))?.Trim() ?? "";

    private static string Save(IFuzzed fuzzed, int seed, int index, byte[] input)
    {
        var folder = Directory.CreateDirectory(Path.Combine(Environment.CurrentDirectory, "out", "faults")).FullName;
        var path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{fuzzed.Name.Replace(' ', '-')}-{seed}-{index}.bin"));
        File.WriteAllBytes(path, input);
        return path;
    }

    private sealed class State
    {
        public volatile int Index;

        public long Since;

        public byte[] Input = [];

        public double Longest { get; set; }

        public long Most { get; set; }

        public Dictionary<string, int> Outcomes { get; } = [];
    }
}
