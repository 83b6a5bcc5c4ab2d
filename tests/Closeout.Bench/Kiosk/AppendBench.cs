using Closeout.Bench.Plan;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Screens;
using Closeout.Shifts.Steps;
using Closeout.Store;

namespace Closeout.Bench.Kiosk;

/// <summary>
/// One answer made durable, beside a bare append of the same bytes to a file on the same disk. Three widths: the desk's
/// commit (lock, read what others wrote, decide, append, flush, fold); the commit and the screen drawn anew; and, bare,
/// open, append, flush, close. A bare append to a file that stays open is the disk's own floor. And SQLite in its two safe
/// modes, the same bytes as a row of their own.
/// </summary>
public static class AppendBench
{
    private const int Times = 300;
    private const int Begin = 20;
    private const int Warm = 1000;

    public static void Run()
    {
        using var temp = new TempFolder();
        var folder = new BookFolder(temp.At("book"));
        var book = Book.New(folder, BigPlan.Read(TempFolder.InTree("sample-day")).FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch);
        var desk = new Desk(book, TimeProvider.System);
        var van = desk.Depot.Setup.Vans[0];
        var item = desk.Depot.Setup.Items[0].Code;
        Tell(desk, new ComeIn(van.Code, desk.Depot.Setup.Crew[0].Code));
        var session = new KioskSession(desk, new Archive(folder), new Attachments(folder));
        var bytes = LastLine(folder, desk, new CountLeftover(van.Code, item, null, 0, 0, Installed: 0, Sure: true));
        using var open = new FileStream(temp.At("open"), FileMode.Create);
        using var wal = new SafeSqlite(temp.At("wal.db"), "WAL", "FULL");
        using var delete = new SafeSqlite(temp.At("delete.db"), "DELETE", "EXTRA");
        var turn = 0;
        var things = new (string Name, Action Do)[]
        {
            ("bare open, append, flush, close", () => Bare(temp.At("bare"), bytes)),
            ("append to an open file", () => Flushed(open, bytes)),
            ("commit", () => Tell(desk, Count(van.Code, item, turn))),
            ("commit and screen", () =>
            {
                Tell(desk, Count(van.Code, item, turn + 1));
                session.Show(120, 40);
            }),
            ("SQLite WAL FULL", () => wal.Append(bytes)),
            ("SQLite DELETE EXTRA", () => delete.Append(bytes)),
        };
        var times = things.ToDictionary(t => t.Name, _ => new List<double>());
        for (; turn < Warm + Times; turn++)
        {
            foreach (var (name, thing) in things)
            {
                times[name].Add(Timed.Of(thing));
            }
        }

        Tell($"## A durable answer of {bytes.Length} bytes, {Times} of each in turns, in a program that has just started", Begin, times, things[0].Name);
        Tell($"## The same after {Warm} turns, when the program's code is compiled to its end", Warm, times, things[0].Name);
    }

    private static void Tell(string what, int from, Dictionary<string, List<double>> times, string first)
    {
        var bare = times[first].Skip(from).Take(Times).ToArray();
        Told.Line($"{what}");
        Told.Row($"what", $"median, ms", $"beside bare: of medians", $"median of the turns' ratios", $"95 % within, ms");
        Told.Row($"---", $"---", $"---", $"---", $"---");
        foreach (var (name, all) in times)
        {
            var list = all.Skip(from).Take(Times).ToArray();
            Told.Row($"{name}", $"{Timed.Median(list):0.000}", $"{Timed.Median(list) / Timed.Median(bare):0.00}", $"{Timed.Ratio(list, bare):0.00}", $"{list.Order().ElementAt(Times * 95 / 100):0.000}");
        }
    }

    private static CountLeftover Count(Code<Van> van, Code<Item> item, int n) => new(van, item, null, 0, n % 9, Installed: 0, Sure: true);

    private static void Tell(Desk desk, ICommand command)
    {
        if (desk.Record(command) is { } refusal)
        {
            throw new InvalidOperationException(refusal.Text);
        }
    }

    /// <summary>The bytes that the command's entry takes in the page.</summary>
    private static byte[] LastLine(BookFolder folder, Desk desk, ICommand command)
    {
        var page = folder.Page(desk.Depot.Date);
        var before = new FileInfo(page).Length;
        Tell(desk, command);
        return File.ReadAllBytes(page)[(int)before..];
    }

    private static void Bare(string path, byte[] bytes)
    {
        using var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.Write);
        file.Seek(0, SeekOrigin.End);
        Flushed(file, bytes);
    }

    private static void Flushed(FileStream file, byte[] bytes)
    {
        file.Write(bytes);
        file.Flush(flushToDisk: true);
    }
}
