using Closeout.Facts;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;

namespace Closeout.Appender;

/// <summary>A kiosk without an archive: asked for the cardboard totals, it meets a bug.</summary>
internal static class FaultyKiosk
{
    public static int Run()
    {
        var folder = new BookFolder(Path.Combine(Path.GetTempPath(), $"closeout-faulty-{Guid.NewGuid():N}"));
        try
        {
            var setup = new Setup(
                new DepotSettings("Faulty", new TimeOnly(16, 30), false, 0.98, 0.95, 0.9, 8, 85, 106, null, null, []),
                [],
                [new Van(new("B1"), 1, "Avocet", 1500, "regular", 0, 0, 0, 0, default)],
                [], [], [], [], [], []);
            var page = new PageOpened(new DateOnly(2026, 11, 18), true, new Carried(setup, [], [], [], [], [], [], [], [], [], [], [], YardCarried.Empty, 0, [], []));
            var book = Book.New(folder, page, DateTimeOffset.UnixEpoch);
            return KioskTerminal.Run(new KioskSession(new Desk(book, TimeProvider.System), null!, null!), new Paint(hasColors: true));
        }
        catch
        {
            Directory.Delete(folder.Path, recursive: true);
            throw;
        }
    }
}
