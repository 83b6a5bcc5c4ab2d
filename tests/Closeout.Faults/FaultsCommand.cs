using System.Globalization;
using Closeout.Faults.Full;
using Closeout.Faults.Fuzz;
using Closeout.Faults.Kill;
using Closeout.Faults.Power;
using Closeout.Faults.Processes;

namespace Closeout.Faults;

/// <summary>The arguments of this program.</summary>
internal static class FaultsCommand
{
    private const int Seed = 20261118;

    private static readonly Dictionary<string, (int Rounds, Func<int, int, IEnumerable<Figure>> Run)> Parts = new()
    {
        ["kill-writer"] = (300, (rounds, seed) => Each(() => KilledKiosks.Run(rounds, seed, withWriter: true))),
        ["kill"] = (300, (rounds, seed) => Each(
            () => KilledKiosks.Run(rounds, seed, withWriter: false),
            () => KilledKiosks.Run(rounds, seed, withWriter: true),
            () => KilledCommands.Appender(rounds, seed),
            () => KilledCommands.Rehearsal(rounds / 3, seed))),
        ["processes"] = (2000, (rounds, seed) => Each(() => ManyProcesses.Run(rounds, seed), () => HeldLocks.Run(Math.Max(4, rounds / 100), seed))),
        ["full"] = (int.MaxValue, (rounds, seed) => Each(() => FullDisk.SmallDisk(rounds, seed), () => FullDisk.FileLimit(rounds, seed))),
        ["fuzz"] = (100_000, (inputs, seed) => Fuzzing.Run(inputs, seed)),
        ["power"] = (4000, (rounds, seed) => [PowerLosses.Run(rounds, seed)]),
    };

    public static int Run(string[] args)
    {
        if (Part(args))
        {
            return 0;
        }

        var names = args is ["all", ..] ? [.. Parts.Keys.Where(k => !k.Contains('-'))] : args.Take(1).Where(Parts.ContainsKey).ToArray();
        if (names.Length == 0)
        {
            Console.Error.WriteLine($"{string.Join(", ", Parts.Keys)} or all; --rounds N, --seed S; for fuzz --only NAME, a reader's name");
            return 2;
        }

        var (rounds, start) = (Option(args, "--rounds"), Option(args, "--seed") ?? Seed);
        var only = Array.IndexOf(args, "--only") is >= 0 and var at ? args[at + 1] : null;
        var good = true;
        foreach (var name in names)
        {
            var (most, run) = Parts[name];
            foreach (var figure in only is null ? run(rounds ?? most, start) : Fuzzing.Run(rounds ?? most, start, only))
            {
                Console.WriteLine(figure);
                foreach (var fault in figure.Faults.Take(20))
                {
                    Console.WriteLine($"  FAULT {(fault.Length > 1500 ? fault[..1500] : fault)}");
                }

                good &= figure.IsGood;
            }
        }

        return good ? 0 : 1;
    }

    /// <summary>What this program does as a process of its own.</summary>
    private static bool Part(string[] args)
    {
        switch (args)
        {
            case ["record", var folder, var seed, var answers]:
                RecordedEvening.Play(folder, Number(seed), Number(answers));
                return true;
            case ["append", var book, var van, var times]:
                Appending.Play(book, van, Number(times));
                return true;
            case ["hold", var book]:
                Appending.Hold(book);
                return true;
            case ["filled", var rounds, var seed]:
                FullDisk.Filled(Number(rounds), Number(seed));
                return true;
            case ["limited", var rounds, var seed]:
                FullDisk.Limited(Number(rounds), Number(seed));
                return true;
            default:
                return false;
        }
    }

    /// <summary>One after the other, so that each is told as soon as it is there.</summary>
    private static IEnumerable<Figure> Each(params Func<Figure>[] runs) => runs.Select(run => run());

    private static int? Option(string[] args, string name) => Array.IndexOf(args, name) is >= 0 and var at ? Number(args[at + 1]) : null;

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
