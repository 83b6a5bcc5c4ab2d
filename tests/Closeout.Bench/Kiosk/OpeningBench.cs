using Closeout.DayBook;
using Closeout.Restock;
using Closeout.Screens;
using Closeout.Shifts;
using Closeout.Store;
using LiteDB;

namespace Closeout.Bench.Kiosk;

/// <summary>
/// The bay wall of a depot of 100 vans with five years behind it, beside the same depot on its first day: from the start of
/// the program to the first screen, without the program's own start, and one answer made durable.
/// </summary>
public static class OpeningBench
{
    private const int Pages = 5 * 365 + 1;
    private const int Rounds = 15;
    private const int Commits = 200;

    public static void Run()
    {
        using var temp = new TempFolder();
        var (empty, old) = (new BookFolder(temp.At("empty")), new BookFolder(temp.At("old")));
        Book.OpenPage(empty, null, HundredVans.Write(temp.At("first-day"), history: false).FirstPage(rehearsal: false), DateTimeOffset.UnixEpoch);
        var evening = Evening(new BookFolder(temp.At("evening")), HundredVans.Write(temp.At("day"), history: true));
        Aged(old, evening);
        Told.Line($"## The bay wall of 100 vans, {Pages} pages and {Size(old.Path) / 1_048_576.0:0} MB against one page and {Size(empty.Path) / 1_048_576.0:0.00} MB");

        StartBench.Build($"publish {TempFolder.InTree("src/Closeout.Kiosk")} -p:PublishProfile=ReadyToRun -p:PublishDir={temp.At("ahead")}/");
        var program = temp.At("ahead/closeout");
        var start = Timed.Rounds(Rounds, () => StartBench.FirstScreen(program, empty.Path), () => StartBench.FirstScreen(program, old.Path));
        Told.Line($"start to the first wall, five years / first day: {Timed.Ratio(start[1], start[0]):0.00} (medians {Timed.Median(start[1]):0} and {Timed.Median(start[0]):0} ms, {Rounds} rounds)");

        var wall = Timed.Rounds(Rounds, () => Wall(empty), () => Wall(old));
        Told.Line($"the same in a program that runs: {Timed.Ratio(wall[1], wall[0]):0.00} (medians {Timed.Median(wall[1]):0.0} and {Timed.Median(wall[0]):0.0} ms)");
        Told.Line($"bytes of the page read: {new FileInfo(old.Page(old.Dates[^1])).Length} and {new FileInfo(empty.Page(empty.Dates[^1])).Length}");

        var (ages, firsts) = (Desk(old), Desk(empty));
        var commit = Timed.Rounds(Commits, () => Count(firsts), () => Count(ages));
        Told.Line($"one answer made durable: {Timed.Ratio(commit[1], commit[0]):0.00} (medians {Timed.Median(commit[1]):0.00} and {Timed.Median(commit[0]):0.00} ms)");
    }

    private static void Wall(BookFolder folder) => _ = new KioskSession(new Desk(Book.Open(folder), TimeProvider.System), new Archive(folder)).Show(120, 40);

    private static int turn;

    private static Desk Desk(BookFolder folder)
    {
        var desk = new Desk(Book.Open(folder), TimeProvider.System);
        Tell(desk, new ComeIn(new("B100"), desk.Depot.Setup.Crew[0].Code));
        return desk;
    }

    private static void Count(Desk desk) => Tell(desk, new CountLeftover(new("B100"), desk.Depot.Setup.Items[0].Code, null, 0, turn++ % 9, Installed: 0, Sure: true));

    /// <summary>A page of an evening on which half the vans are closed.</summary>
    private static BookFolder Evening(BookFolder folder, DayGiven given)
    {
        var book = Book.OpenPage(folder, null, given.FirstPage(rehearsal: false), DateTimeOffset.UnixEpoch);
        var desk = new Desk(book, TimeProvider.System);
        foreach (var van in given.Setup.Vans.Take(50))
        {
            Tell(desk, new ComeIn(van.Code, given.Setup.Crew[0].Code));
            foreach (var item in given.Setup.Items.Take(20))
            {
                Tell(desk, new CountLeftover(van.Code, item.Code, null, 1, 2, Installed: 1, Sure: true));
            }

            Command[] rest = [new ConfirmLeftovers(van.Code), new ConfirmCardboard(van.Code), new LogMileage(van.Code, null), new ConfirmDamage(van.Code, None: true), new ConfirmKit(van.Code)];
            Array.ForEach(rest, c => Tell(desk, c));
            if (desk.Depot.Shift(van.Code)!.Step == Step.Weekly)
            {
                Tell(desk, new CheckWeekly(van.Code, null, 0, Clean: true));
            }

            Tell(desk, new Sign(van.Code, given.Setup.Crew[0].Code));
        }

        return folder;
    }

    /// <summary>Five years of such pages, the last of which is open, and an archive. Pages of the past are copies of one evening: nobody reads them to open the wall.</summary>
    private static void Aged(BookFolder folder, BookFolder evening)
    {
        var (last, bytes) = (evening.Dates[^1], File.ReadAllBytes(evening.Page(evening.Dates[^1])));
        Directory.CreateDirectory(folder.Pages);
        for (var back = Pages - 1; back >= 0; back--)
        {
            File.WriteAllBytes(folder.Page(last.AddDays(-back)), bytes);
        }

        Directory.CreateDirectory(folder.Archive);
        using var db = new LiteDatabase($"Filename=\"{Path.Combine(folder.Archive, "closeout.db")}\";Connection=direct;Collation=/Ordinal");
        var entries = db.GetCollection("entries");
        entries.EnsureIndex("date");
        for (var batch = 0; batch < 100; batch++)
        {
            entries.InsertBulk(Enumerable.Range(batch * 10_000 + 1, 10_000).Select(n => new BsonDocument { ["_id"] = n, ["date"] = 20260000 + n / 2740, ["kind"] = "leftover-counted", ["van"] = "B" + n % 100 }));
        }
    }

    private static long Size(string folder) => new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories).Sum(f => f.Length);

    private static void Tell(Desk desk, Command command)
    {
        var refusal = desk.Record(command);
        if (refusal is { AskAgain: true } && command is LogMileage miles)
        {
            refusal = desk.Record(miles with { Sure = true });
        }

        if (refusal is not null)
        {
            throw new InvalidOperationException(refusal.Text);
        }
    }
}
