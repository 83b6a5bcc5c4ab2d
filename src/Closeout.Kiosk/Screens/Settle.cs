using Closeout.DayBook;

namespace Closeout.Screens;

/// <summary>Other programs may change the set-up or open the next page under a screen: what it shows may be gone.</summary>
public static class Settle
{
    /// <summary>The model, or the bay wall where its screen no longer has anything to show.</summary>
    public static Model On(Depot depot, Model model) => model.Screen switch
    {
        WallScreen s when s.Selected >= depot.Setup.Vans.Count => model with { Screen = new WallScreen(Math.Max(0, depot.Setup.Vans.Count - 1)) },
        var screen when Stands(depot, screen) => model,
        _ => new(new WallScreen(), $"The book was changed by another program; it is at {View.Day(depot.Date)} now. Everything confirmed is kept."),
    };

    private static bool Stands(Depot depot, Screen screen) => screen switch
    {
        WhoScreen s => depot.Setup.Find(s.Van) is not null && depot.Shift(s.Van) is null,
        CloseoutScreen s => depot.Setup.Find(s.Van) is not null && depot.Shift(s.Van) is { } shift
            && s.At <= shift.Step && (s.Item is not { } item || depot.Setup.Find(item) is not null),
        VanScreen s => depot.Setup.Find(s.Van) is not null,
        AttachScreen s => Stands(depot, s.Back) && depot.Shift(s.Van) is { IsClosed: false },
        LoadScreen s => depot.Setup.Find(s.Van) is not null,
        DeskScreen s => (s.Van is not { } van || depot.Setup.Find(van) is not null) && (s.Item is not { } item || depot.Setup.Find(item) is not null)
            && (s.Person is not { } person || depot.Setup.Find(person) is not null),
        PinScreen s => depot.Setup.Find(s.Person) is not null && Stands(depot, s.Back),
        IssuedScreen s => depot.Setup.Find(s.Person) is not null,
        HelpScreen s => Stands(depot, s.Back),
        _ => true,
    };
}
