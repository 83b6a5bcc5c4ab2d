using Closeout.Bench.Plan;
using Closeout.Screens;
using Closeout.Shifts;
using Closeout.Stock;
using Closeout.Store;

namespace Closeout.Bench.Kiosk;

/// <summary>
/// One answer made durable, beside a bare append of the same bytes to a file on the same disk. Three widths: the desk's
/// commit (lock, read what others wrote, decide, append, flush, fold); the commit and the screen drawn anew; and, bare,
/// open, append, flush, close. A bare append to a file that stays open is the disk's own floor.
/// </summary>
public static class AppendBench
{
    private const int Times = 300;
    private const int Begin = 20;

    public static void Run()
    {
        using var temp = new TempFolder();
        var folder = new BookFolder(temp.At("book"));
        var book = Book.OpenPage(folder, null, BigPlan.Read(TempFolder.InTree("sample-day")).FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch);
        var desk = new Desk(book, TimeProvider.System);
        var van = desk.Depot.Setup.Vans[0];
        var item = desk.Depot.Setup.Items[0].Code;
        Tell(desk, new ComeIn(van.Code, desk.Depot.Setup.Crew[0].Code));
        var session = new KioskSession(desk, new Archive(folder), new Attachments(folder));
        var bytes = LastLine(folder, desk, new CountLeftover(van.Code, item, null, 0, 0, Installed: 0, Sure: true));
        using var open = new FileStream(temp.At("open"), FileMode.Create);
        var (bare, floor, commit, screen) = (new List<double>(), new List<double>(), new List<double>(), new List<double>());
        for (var n = 0; n < Times + Begin; n++)
        {
            var times = new[]
            {
                Timed.Of(() => Bare(temp.At("bare"), bytes)),
                Timed.Of(() => Flushed(open, bytes)),
                Timed.Of(() => Tell(desk, Count(van.Code, item, n))),
                Timed.Of(() =>
                {
                    Tell(desk, Count(van.Code, item, n + 1));
                    session.Show(120, 40);
                }),
            };
            foreach (var (list, time) in new[] { bare, floor, commit, screen }.Zip(times).Where(_ => n >= Begin))
            {
                list.Add(time);
            }
        }

        var one = Timed.Median(bare);
        Told.Line($"## A durable answer of {bytes.Length} bytes, median of {Times}, in turns");
        Told.Line($"commit / bare open, append, flush, close {Timed.Median(commit) / one:0.00}; commit and screen / bare {Timed.Median(screen) / one:0.00}; commit / append to an open file {Timed.Median(commit) / Timed.Median(floor):0.00}");
        Told.Line($"milliseconds: bare {one:0.000}, open file {Timed.Median(floor):0.000}, commit {Timed.Median(commit):0.000}, commit and screen {Timed.Median(screen):0.000}; 95 % of commits within {commit.Order().ElementAt(Times * 95 / 100):0.000}");
    }

    private static CountLeftover Count(Code<DayBook.Van> van, Code<Item> item, int n) => new(van, item, null, 0, n % 9, Installed: 0, Sure: true);

    private static void Tell(Desk desk, Command command)
    {
        if (desk.Record(command) is { } refusal)
        {
            throw new InvalidOperationException(refusal.Text);
        }
    }

    /// <summary>The bytes that the command's entry takes in the page.</summary>
    private static byte[] LastLine(BookFolder folder, Desk desk, Command command)
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
