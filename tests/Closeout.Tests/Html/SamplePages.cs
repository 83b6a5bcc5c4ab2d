using Closeout.Facts;
using Closeout.Html;
using Closeout.Store;
using Closeout.Tests.Screens;
using Closeout.Vans;

namespace Closeout.Tests.Html;

/// <summary>Every page of ours, of one evening.</summary>
internal static class SamplePages
{
    public static readonly IReadOnlyList<string> Names = ["wall", "recycling", "accuracy", "stow", "incident", "weekly", "labels"];

    public static IReadOnlyDictionary<string, string> Of(SampleKiosk kiosk) => new Dictionary<string, string>
    {
        ["wall"] = WallPage.Html(kiosk.Session.Desk.Tonight, new(kiosk.Clock.GetLocalNow())),
        ["recycling"] = RecyclingPage.Html(kiosk.Depot, new Archive(kiosk.Folder).Boxes(DateOnly.MinValue, kiosk.Depot.Date)),
        ["accuracy"] = AccuracyPage.Html(new(kiosk.Depot.Planned(p => p with { Kept = [.. Kept(kiosk.Depot.Date)] }))),
        ["stow"] = StowCard.Html(kiosk.Depot, kiosk.Depot.Setup.Vans[0]),
        ["incident"] = IncidentReport.Of(kiosk.Depot, IncidentLog.Of(kiosk.Depot).First(i => i.Van.Text == "B2"), kiosk.Depot.Shift(new("B2"))!.Photos, new Attachments(kiosk.Folder).Read).Html,
        ["weekly"] = WeeklyReport.Of([kiosk.Depot], kiosk.Depot.Setup.Vans[1], new Attachments(kiosk.Folder).Read).Html,
        ["labels"] = Labels.Html(kiosk.Depot, "boxes", Labels.Sheets[0].Labels(kiosk.Depot.Setup)),
    };

    /// <summary>Forty days before a date, each with its three priorities.</summary>
    private static IEnumerable<KeptPromises> Kept(DateOnly date) =>
        from day in Enumerable.Range(1, 40)
        from priority in new[] { 1, 2, 3 }
        select new KeptPromises(date.AddDays(day - 41), priority, 20, 20 - day * priority % 4, day % 3, day % 2, 400, 90);
}
