using Closeout.DayBook;
using Closeout.Restock;
using Closeout.Screens;
using Closeout.Shifts;
using Closeout.Store;
using LiteDB;

namespace Closeout.Bench.Kiosk;

/// <summary>
/// The bay wall of a depot of 100 vans with five years behind it, beside the same evening without the years, and the same
/// depot on its first day: from the start of the program to the first screen, without the program's own start, and one
/// answer made durable.
/// </summary>
public static class OpeningBench
{
    private const int Pages = 5 * 365 + 1;
    private const int Rounds = 15;
    private const int Commits = 200;

    public static void Run()
    {
        using var temp = new TempFolder();
        var (empty, evening, old) = (new BookFolder(temp.At("empty")), new BookFolder(temp.At("evening")), new BookFolder(temp.At("old")));
        Book.OpenPage(empty, null, HundredVans.Write(temp.At("first-day"), history: false).FirstPage(rehearsal: false), DateTimeOffset.UnixEpoch);
        FillEvening(evening, HundredVans.Write(temp.At("day"), history: true));
        Age(old, evening);
        Told.Line($"## The bay wall of 100 vans");
        Told.Line($"five years: {Pages} pages, {Size(old.Path) / 1_048_576.0:0} MB with an archive; one evening: 1 page, {Size(evening.Path) / 1_048_576.0:0.00} MB; first day: 1 page, {Size(empty.Path) / 1_048_576.0:0.00} MB");

        StartBench.Build($"publish {TempFolder.InTree("src/Closeout.Kiosk")} -p:PublishProfile=ReadyToRun -p:PublishDir={temp.At("ahead")}/");
        BookFolder[] books = [empty, evening, old];
        var (elapsed, processor) = (books.Select(_ => new double[Rounds]).ToArray(), books.Select(_ => new double[Rounds]).ToArray());
        for (var round = -1; round < Rounds; round++)
        {
            for (var i = 0; i < books.Length; i++)
            {
                var time = StartBench.Start(temp.At("ahead/closeout"), books[i].Path);
                if (round >= 0)
                {
                    (elapsed[i][round], processor[i][round]) = time;
                }
            }
        }

        Tell("start to the first wall, by the clock", elapsed);
        Tell("the same, processor time", processor);
        Tell("opening and drawing in a program that runs, processor time", Timed.ProcessorRounds(Rounds, [.. books.Select(b => (Action)(() => Wall(b)))]));
        Tell("one answer made durable, by the clock", Timed.Rounds(Commits, [.. books.Select(Desk).ToList().Select(d => (Action)(() => Count(d)))]));
    }

    private static void Tell(string what, double[][] times) => Told.Line(
        $"{what}: five years / first day {Timed.Ratio(times[2], times[0]):0.00}, five years / one evening {Timed.Ratio(times[2], times[1]):0.00} (medians {Timed.Median(times[2]):0.0}, {Timed.Median(times[1]):0.0}, {Timed.Median(times[0]):0.0} ms)");

    private static void Wall(BookFolder folder) => _ = new KioskSession(new Desk(Book.Open(folder), TimeProvider.System), new Archive(folder), new Attachments(folder)).Show(120, 40);

    private static int turn;

    private static Desk Desk(BookFolder folder)
    {
        var desk = new Desk(Book.Open(folder), TimeProvider.System);
        Tell(desk, new ComeIn(new("B100"), desk.Depot.Setup.Crew[0].Code));
        return desk;
    }

    private static void Count(Desk desk) => Tell(desk, new CountLeftover(new("B100"), desk.Depot.Setup.Items[0].Code, null, 0, turn++ % 9, Installed: 0, Sure: true));

    /// <summary>A page of an evening on which half the vans are closed.</summary>
    private static void FillEvening(BookFolder folder, DayGiven given)
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
    }

    /// <summary>Five years of such pages, the last of which is open, and an archive. Pages of the past are copies of one evening: nobody reads them to open the wall.</summary>
    private static void Age(BookFolder folder, BookFolder evening)
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
