using Closeout.Bench.Plan;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;
using Closeout.Turning;

namespace Closeout.Bench.Kiosk;

/// <summary>
/// A key on the bay wall, from the key to the whole sheet, and what it allocates: 200 vans with 400 items beside the sample's
/// six vans. First with nothing but the clock changed, then after an answer was recorded elsewhere.
/// </summary>
public static class WallBench
{
    private const int Vans = 200;
    private const int Keys = 400;
    private const int Answers = 15;

    public static void Run()
    {
        using var temp = new TempFolder();
        BigDay.Write(temp.At("big"), Vans);
        var sample = Open(BigPlan.Read(TempFolder.InTree("sample-day")), temp.At("sample-book"));
        var big = Open(BigPlan.Read(temp.At("big")), temp.At("big-book"));

        Told.Line($"## Key to sheet on the bay wall: {Vans} vans x {BigDay.Items} items beside the sample's 6 x 28");
        Told.Line($"milliseconds, p50 and p95, in turns; bytes allocated, the mean");
        var (s, b) = (new List<Measured>(), new List<Measured>());
        for (var n = 0; n < Keys; n++)
        {
            var key = new Keystroke(n % 2 == 0 ? Press.Down : Press.Up);
            s.Add(Measure(() => Paint(sample.Session, key)));
            b.Add(Measure(() => Paint(big.Session, key)));
        }

        Report("nothing but the clock changed", s, b);
        (s, b) = ([], []);
        for (var n = 0; n < Answers; n++)
        {
            Answer(sample, n);
            Answer(big, n);
            s.Add(Measure(() => Refreshed(sample.Session)));
            b.Add(Measure(() => Refreshed(big.Session)));
        }

        Report("after an answer at another kiosk", s, b);
    }

    private static void Report(string what, List<Measured> sample, List<Measured> big)
    {
        // The first keys are compiled as they run.
        foreach (var list in new[] { sample, big })
        {
            list.RemoveRange(0, list.Count / 5);
        }

        var (small, large) = (Quantiles(sample), Quantiles(big));
        Told.Line($"{what}: sample {small.P50:0.00} / {small.P95:0.00} ms, {small.Bytes:0} B; {Vans} vans {large.P50:0.00} / {large.P95:0.00} ms, {large.Bytes:0} B; p95 {large.P95 / small.P95:0.00} times");
    }

    private static (double P50, double P95, double Bytes) Quantiles(List<Measured> all)
    {
        var times = all.Select(m => m.Milliseconds).Order().ToList();
        return (times[times.Count / 2], times[times.Count * 95 / 100], all.Average(m => m.Bytes));
    }

    private static Measured Measure(Action thing)
    {
        var bytes = GC.GetAllocatedBytesForCurrentThread();
        var time = Timed.Of(thing);
        return new(time, GC.GetAllocatedBytesForCurrentThread() - bytes);
    }

    private static void Paint(KioskSession session, Keystroke key)
    {
        session.Press(key);
        session.Show(80, 24);
    }

    private static void Refreshed(KioskSession session)
    {
        session.Refresh();
        session.Show(80, 24);
    }

    private static (KioskSession Session, Desk Other) Open(DayGiven given, string path)
    {
        var folder = new BookFolder(path);
        var book = Book.New(folder, given.FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch);
        return (new(new Desk(book, TimeProvider.System), new Archive(folder), new Attachments(folder)), new Desk(Book.Open(folder), TimeProvider.System));
    }

    /// <summary>Another van comes in.</summary>
    private static void Answer((KioskSession Session, Desk Other) kiosk, int n)
    {
        var setup = kiosk.Other.Depot.Setup;
        var (van, who) = (setup.Vans[n % setup.Vans.Count].Code, setup.Crew[0].Code);
        var shift = kiosk.Other.Depot.Shift(van);
        kiosk.Other.Record(shift is null ? new Closeout.Shifts.Steps.ComeIn(van, who) : new Closeout.Shifts.Steps.ConfirmLeftovers(van));
    }

    private readonly record struct Measured(double Milliseconds, long Bytes);
}
