using System.Globalization;
using Closeout.Faults.Machine;
using Closeout.Store;
using Closeout.Tests;

namespace Closeout.Faults.Full;

/// <summary>
/// The disk is full at every write of close-outs at the kiosk. Two ways, each in a process of its own: a small disk in memory
/// that is filled, which needs the right to mount, and a limit on the length of files, to the byte.
/// </summary>
public static class FullDisk
{
    private const int Kilobytes = 2048;

    /// <summary>What the process of its own says when it may not mount.</summary>
    private const string NotAllowed = "not allowed";

    /// <summary>A disk that is filled. In a mount table of its own it goes with its process, however that ends.</summary>
    /// <param name="rounds">At most so many writes are tried, spread over the evening.</param>
    public static Figure SmallDisk(int rounds, int seed) => Apart("full (small disk)", [.. OwnMounts.Words, .. Child.Command("filled", $"{rounds}", $"{seed}")]);

    /// <summary>Files that may not become longer.</summary>
    /// <param name="rounds">At most so many writes are tried, spread over the evening.</param>
    public static Figure FileLimit(int rounds, int seed) => Apart("full (file limit)", [.. Child.Command("limited", $"{rounds}", $"{seed}")]);

    /// <summary>What the process does that fills a disk.</summary>
    public static void Filled(int rounds, int seed)
    {
        using var temp = new TempFolder();
        using var disk = new TinyDisk(temp["disk"], Kilobytes);
        if (!disk.IsThere)
        {
            Console.WriteLine(NotAllowed);
            return;
        }

        All(new FullEvening(temp["undisturbed"], seed), disk.Path, new RoomOnDisk(disk), rounds, _ => [0]);
    }

    /// <summary>What the process does that limits itself: nothing of a line fits, or its beginning, or all but its end.</summary>
    public static void Limited(int rounds, int seed)
    {
        using var temp = new TempFolder();
        var evening = new FullEvening(temp["undisturbed"], seed);
        All(evening, temp.Path, new RoomByLimit(), rounds, write => [0, 1, 100, evening.Length(write) - 1]);
    }

    /// <summary>Says the figures on the first line, faults on the others.</summary>
    private static void All(FullEvening evening, string folder, IRoom room, int rounds, Func<int, int[]> spares)
    {
        var (faults, failed, tried) = (new FaultList(), 0, 0);
        foreach (var write in Spread(evening.Writes, rounds))
        {
            foreach (var spare in spares(write))
            {
                tried++;
                failed += Round(evening, Path.Combine(folder, $"{write}-{spare}"), room, write, spare, faults);
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{evening.Writes} {tried} {failed}"));
        foreach (var fault in faults.All)
        {
            Console.WriteLine(fault.ReplaceLineEndings(" "));
        }
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

    private static Figure Apart(string name, string[] command)
    {
        using var child = Child.Begin(command);
        var said = child.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var err = child.StandardError.ReadToEnd();
        child.WaitForExit();
        if (said is [NotAllowed] || (command[0] == "unshare" && said.Length == 0))
        {
            return Figure.Of(name, [], $"not run: mounting is not allowed here");
        }

        if (child.ExitCode != 0)
        {
            throw new InvalidOperationException($"{name}: the program of its own ended with {child.ExitCode}: {err}");
        }

        var (counts, faults) = (said[0].Split(' ').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToList(), said[1..]);
        return Figure.Of(
            name, faults,
            $"an evening of {counts[0]} writes, filled up {counts[1]} times; {counts[2]} answers could not be written, said so and were taken once there was room; acknowledged and lost {faults.Count(f => f.Contains("LOST"))}, other faults {faults.Count(f => !f.Contains("LOST"))}",
            ("writes", counts[0]), ("tried", counts[1]), ("failed", counts[2]));
    }

    private static IEnumerable<int> Spread(int writes, int rounds) =>
        Enumerable.Range(0, writes).Where(w => w == 0 || rounds >= writes || (long)w * rounds / writes != (long)(w - 1) * rounds / writes);
}
