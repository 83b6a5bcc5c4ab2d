using System.Globalization;
using Closeout.Faults.Machine;
using Closeout.Store;
using Closeout.Tests;

namespace Closeout.Faults.Full;

/// <summary>The disk is full at every write of close-outs at the kiosk.</summary>
public static class FullDisk
{
    private const int Kilobytes = 2048;

    /// <summary>Two ways: a small disk in memory that is filled, where mounting is allowed, and a limit on the length of files, to the byte.</summary>
    /// <param name="rounds">At most so many writes are tried, spread over the evening.</param>
    public static IEnumerable<Figure> Run(int rounds, int seed)
    {
        using var temp = new TempFolder();
        using (var disk = new TinyDisk(temp["disk"], Kilobytes))
        {
            yield return disk.IsThere
                ? OnDisk(disk, rounds, seed)
                : Figure.Of("full (small disk)", [], $"not run: mounting is not allowed here");
        }

        yield return ByLimit(rounds, seed);
    }

    /// <summary>In a process of its own, for a limit holds for all that a process writes.</summary>
    private static Figure ByLimit(int rounds, int seed)
    {
        using var child = Child.Begin("limited", rounds.ToString(CultureInfo.InvariantCulture), seed.ToString(CultureInfo.InvariantCulture));
        var said = child.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var err = child.StandardError.ReadToEnd();
        child.WaitForExit();
        if (child.ExitCode != 0)
        {
            throw new InvalidOperationException($"the limited program ended with {child.ExitCode}: {err}");
        }

        var counts = said[0].Split(' ').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToList();
        return Told("full (file limit)", counts[0], counts[1], counts[2], said[1..]);
    }

    /// <summary>What the process of its own does: figures on the first line, faults on the others.</summary>
    public static void Limited(int rounds, int seed)
    {
        using var temp = new TempFolder();
        var evening = new FullEvening(temp["undisturbed"], seed);
        var (room, faults, failed, tried) = (new RoomByLimit(), new FaultList(), 0, 0);
        foreach (var write in Spread(evening.Writes, rounds))
        {
            foreach (var spare in new[] { 0, 1, 100, evening.Length(write) - 1 })
            {
                tried++;
                failed += Round(evening, temp[$"{write}-{spare}"], room, write, spare, faults);
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{evening.Writes} {tried} {failed}"));
        foreach (var fault in faults.All)
        {
            Console.WriteLine(fault.ReplaceLineEndings(" "));
        }
    }

    private static Figure OnDisk(TinyDisk disk, int rounds, int seed)
    {
        using var temp = new TempFolder();
        var evening = new FullEvening(temp["undisturbed"], seed);
        var (faults, failed, tried) = (new FaultList(), 0, 0);
        foreach (var write in Spread(evening.Writes, rounds))
        {
            tried++;
            failed += Round(evening, Path.Combine(disk.Path, $"{write}"), new RoomOnDisk(disk), write, spare: 0, faults);
        }

        return Told("full (small disk)", evening.Writes, tried, failed, faults.All);
    }

    private static int Round(FullEvening evening, string folder, IRoom room, int write, int spare, FaultList faults)
    {
        try
        {
            return evening.Disturbed(new BookFolder(folder), room, write, spare);
        }
        catch (FullException e)
        {
            faults.Add($"full before write {write}, {spare} bytes left: {e.Message}");
        }
        catch (Exception e)
        {
            faults.Add($"full before write {write}, {spare} bytes left: the program failed: {e}");
        }
        finally
        {
            room.Give();
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    private static IEnumerable<int> Spread(int writes, int rounds) => Enumerable.Range(0, writes).Where(w => rounds >= writes || w * rounds / writes != (w - 1) * rounds / writes || w == 0);

    private static Figure Told(string name, int writes, int tried, int failed, IReadOnlyList<string> faults) => Figure.Of(
        name, faults,
        $"an evening of {writes} writes, filled up {tried} times; {failed} answers could not be written, said so and were taken once there was room; acknowledged and lost {faults.Count(f => f.Contains("LOST"))}, other faults {faults.Count(f => !f.Contains("LOST"))}",
        ("writes", writes), ("tried", tried), ("failed", failed));
}
