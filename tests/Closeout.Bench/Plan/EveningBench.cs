using System.Diagnostics;
using Closeout.Restock;
using Closeout.Store;
using CsvHelper;

namespace Closeout.Bench.Plan;

/// <summary>
/// A whole evening - read the folder, open a book with its first page on disk, plan, write the files - against a bare split
/// of the same files, and the memory that it takes beside the input's bytes.
/// </summary>
public static class EveningBench
{
    private const int Vans = 200;
    private const int Rounds = 7;

    public static void Run()
    {
        using var temp = new TempFolder();
        BigDay.Write(temp.Path, Vans);
        var input = Directory.EnumerateFiles(temp.Path).Sum(f => new FileInfo(f).Length);
        Told.Line($"## A whole evening against a bare split: {Vans} vans, {BigDay.Items} items, {input / 1e6:0.0} MB in");
        var given = BigPlan.Read(temp.Path);
        Book? book = null;
        RestockPlan? plan = null;
        Action[] parts =
        [
            () => Whole(temp.Path),
            () => Split(temp.Path),
            () => BigPlan.Read(temp.Path),
            () => book = NewBook(temp.Path, given),
            () => plan = RestockPlan.For(book!.Depot),
            () => BigPlan.Save(temp.Path, BigPlan.Bytes(plan!)),
        ];
        foreach (var (clock, times) in new[] { ("elapsed", Timed.Rounds(Rounds, parts)), ("processor time", Timed.ProcessorRounds(Rounds, parts)) })
        {
            var (whole, bare) = (times[0], times[1]);
            Told.Line($"{clock}: whole / bare split {Timed.Ratio(whole, bare):0.0} (rounds {whole.Zip(bare, (w, b) => w / b).Min():0.0} to {whole.Zip(bare, (w, b) => w / b).Max():0.0}; aim at most 6); bare split {Timed.Median(bare):0} ms");
            Told.Line($"to the bare split: read {Timed.Ratio(times[2], bare):0.0}, open {Timed.Ratio(times[3], bare):0.0}, plan {Timed.Ratio(times[4], bare):0.0}, write {Timed.Ratio(times[5], bare):0.0}; reading is {Timed.Ratio(times[2], whole):0.00} of the whole");
        }

        Memory(temp, input);
    }

    /// <summary>What a process of its own, which does this and nothing else, takes at most.</summary>
    public static void Once(string part, string folder)
    {
        switch (part)
        {
            case "read":
                GC.KeepAlive(BigPlan.Read(folder));
                break;
            case "whole":
                Whole(folder);
                break;
            default:
                throw new ArgumentException($"no such part: {part}", nameof(part));
        }

        Console.WriteLine(Process.GetCurrentProcess().PeakWorkingSet64);
    }

    private static void Memory(TempFolder temp, long input)
    {
        var small = temp.At("small");
        BigDay.Write(small, 1);
        foreach (var part in new[] { "read", "whole" })
        {
            var (start, peak) = (Median(part, small), Median(part, temp.Path));
            Told.Line($"memory, {part}: {peak / 1e6:0} MB at most, {start / 1e6:0} MB with one van; the difference is {(peak - start) / input:0.0} times the input");
        }

        double Median(string part, string folder) => Timed.Median(Enumerable.Range(0, 3).Select(_ => Peak(part, folder)));
    }

    private static double Peak(string part, string folder)
    {
        using var child = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, ["plan", "once", part, folder]) { RedirectStandardOutput = true })!;
        var told = child.StandardOutput.ReadToEnd();
        child.WaitForExit();
        return double.Parse(told, System.Globalization.CultureInfo.InvariantCulture);
    }

    private static void Whole(string folder)
    {
        var book = NewBook(folder, BigPlan.Read(folder));
        BigPlan.Save(folder, BigPlan.Bytes(RestockPlan.For(book.Depot)));
    }

    private static Book NewBook(string folder, Turning.DayGiven given)
    {
        var target = BookFolder.At(Path.Combine(folder, "book"));
        if (Directory.Exists(target.Path))
        {
            Directory.Delete(target.Path, recursive: true);
        }

        return Book.New(target, given.FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch);
    }

    /// <summary>Every field of every file as a string, and nothing else.</summary>
    public static void Split(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(folder, "*.csv").Where(f => !f.EndsWith("-out.csv", StringComparison.Ordinal)))
        {
            using var csv = CsvReader.Create(File.ReadAllBytes(file), new CsvReaderOptions { Separator = ',', HasHeader = false });
            var length = 0L;
            while (csv.Read())
            {
                for (var i = 0; i < csv.FieldCount; i++)
                {
                    length += csv.GetString(i).Length;
                }
            }
        }
    }
}
