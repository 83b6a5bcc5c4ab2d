using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Screens;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Turning;
using LiteDB;

namespace Closeout.Bench.Kiosk;

/// <summary>
/// The bay wall of a depot of 100 vans with five years behind it, beside the same evening with one day behind it, and the
/// same depot on its first day: from the start of the program to the first screen, and one answer made durable. Once in the
/// morning, when the page has just been opened, and once in the evening, with half the vans closed out.
/// </summary>
public static class OpeningBench
{
    private const int Pages = 5 * 365 + 1;
    private const int Rounds = 15;
    private const int Commits = 200;

    public static void Run()
    {
        using var temp = new TempFolder();
        var (empty, young, old) = (new BookFolder(temp.At("empty")), new BookFolder(temp.At("young")), new BookFolder(temp.At("old")));
        Book.New(empty, HundredVans.Write(temp.At("first-day"), history: false).FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch);
        var yesterday = Yesterday(new BookFolder(temp.At("evening")), HundredVans.Write(temp.At("day"), history: true));
        Age(young, yesterday, 1);
        Age(old, yesterday, Pages - 1);
        FillArchive(old);
        var program = Published.Packed(temp.Path).Program;
        BookFolder[] books = [empty, young, old];
        foreach (var moment in new[] { "morning", "evening, half the vans closed out" })
        {
            if (moment != "morning")
            {
                FillEvening(young);
                FillEvening(old);
            }

            Told.Line($"## The bay wall of 100 vans: {moment}");
            Told.Line($"five years: {old.Dates.Count} pages, {Size(old.Path) / 1_048_576.0:0} MB with an archive; a day: {young.Dates.Count} pages; the open page {new FileInfo(old.Page(old.Newest!.Value)).Length / 1024} KB; first day: one page of {new FileInfo(empty.Page(empty.Newest!.Value)).Length / 1024} KB");
            var (elapsed, processor) = Starts(program, books);
            Tell("start to the first wall, by the clock", elapsed);
            Tell("the same, processor time", processor);
            Tell("opening and drawing in a program that runs, processor time", Timed.ProcessorRounds(Rounds, [.. books.Select(b => (Action)(() => Wall(b)))]));
        }

        Tell("one answer made durable, by the clock", Timed.Rounds(Commits, [.. books.Select(Desk).ToList().Select(d => (Action)(() => Count(d)))]));
    }

    private static (double[][] Elapsed, double[][] Processor) Starts(string program, BookFolder[] books)
    {
        var (elapsed, processor) = (books.Select(_ => new double[Rounds]).ToArray(), books.Select(_ => new double[Rounds]).ToArray());
        for (var round = -1; round < Rounds; round++)
        {
            for (var i = 0; i < books.Length; i++)
            {
                var time = InTerminal.Start($"{program} --book {books[i].Path}", StartBench.WallIsThere);
                if (round >= 0)
                {
                    (elapsed[i][round], processor[i][round]) = (time.Elapsed, time.Processor);
                }
            }
        }

        return (elapsed, processor);
    }

    private static void Tell(string what, double[][] times) => Told.Line(
        $"{what}: five years / first day {Timed.Ratio(times[2], times[0]):0.00}, five years / one day {Timed.Ratio(times[2], times[1]):0.00} (medians {Timed.Median(times[2]):0.0}, {Timed.Median(times[1]):0.0}, {Timed.Median(times[0]):0.0} ms)");

    private static void Wall(BookFolder folder) => _ = new KioskSession(new Desk(Book.Open(folder), TimeProvider.System), new Archive(folder), new Attachments(folder)).Show(120, 40);

    private static int turn;

    private static Desk Desk(BookFolder folder)
    {
        var desk = new Desk(Book.Open(folder), TimeProvider.System);
        Tell(desk, new ComeIn(new("B100"), desk.Depot.Setup.Crew[0].Code));
        return desk;
    }

    private static void Count(Desk desk) => Tell(desk, new CountLeftover(new("B100"), desk.Depot.Setup.Items[0].Code, null, 0, turn++ % 9, Installed: 0, Sure: true));

    /// <summary>The entries of an evening on which half the vans were closed.</summary>
    private static IReadOnlyList<Recorded> Yesterday(BookFolder folder, DayGiven given)
    {
        Book.New(folder, given.FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch);
        FillEvening(folder);
        return Book.Open(folder).Entries();
    }

    private static void FillEvening(BookFolder folder)
    {
        var desk = new Desk(Book.Open(folder), TimeProvider.System);
        var setup = desk.Depot.Setup;
        foreach (var van in setup.Vans.Take(50))
        {
            Tell(desk, new ComeIn(van.Code, setup.Crew[0].Code));
            foreach (var item in setup.Items.Take(20))
            {
                Tell(desk, new CountLeftover(van.Code, item.Code, null, 1, 2, Installed: 1, Sure: true));
            }

            ICommand[] rest = [new ConfirmLeftovers(van.Code), new ConfirmCardboard(van.Code), new LogMileage(van.Code, null), new ConfirmDamage(van.Code, None: true), new ConfirmKit(van.Code)];
            Array.ForEach(rest, c => Tell(desk, c));
            if (desk.Depot.Shift(van.Code)!.Step == Step.Weekly)
            {
                Tell(desk, new CheckWeekly(van.Code, null, 0, Clean: true));
            }

            Tell(desk, new Sign(van.Code, setup.Crew[0].Code));
        }
    }

    /// <summary>So many pages of the past, each line in its place in the chain, and the page that follows from the last of them.</summary>
    private static void Age(BookFolder folder, IReadOnlyList<Recorded> yesterday, int days)
    {
        Directory.CreateDirectory(folder.Pages);
        var (number, sha, first) = (0, PageLine.Nothing, (string?)null);
        for (var back = days - 1; back >= 0; back--)
        {
            var opened = (PageOpened)yesterday[0].Entry;
            using var page = File.Create(folder.Page(opened.Date.AddDays(-back)));
            foreach (var recorded in yesterday)
            {
                var entry = recorded.Entry is PageOpened ? opened with { Date = opened.Date.AddDays(-back) } : recorded.Entry;
                (var bytes, sha) = PageLine.Write(new(++number, recorded.At.AddDays(-back), entry), sha, recorded.Entry is PageOpened ? first : null);
                first ??= sha;
                page.Write(bytes);
            }
        }

        var last = Book.Open(folder);
        last.Record(d => NextPage.After(d, d.Date.AddDays(1)), DateTimeOffset.UnixEpoch);
    }

    /// <summary>As large as an archive may become: a million rows. What is in them does not matter to whoever opens the wall, for it reads none.</summary>
    private static void FillArchive(BookFolder folder)
    {
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

    private static void Tell(Desk desk, ICommand command)
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
