using System.Globalization;
using Closeout.DayBook;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>Draws a model on a sheet. Pure but for the moment, which the desk's clock tells.</summary>
public static class View
{
    /// <summary>The smallest size that the screens are made for; below it they are cut, and stay usable with the keys known.</summary>
    public const int LeastWidth = 80;

    public static Sheet Of(Desk desk, Model model, int width, int height)
    {
        var sheet = new Sheet(width, height);
        switch (model.Screen)
        {
            case WallScreen s:
                WallView.Draw(sheet, desk, s);
                break;
            case WhoScreen s:
                WhoView.Draw(sheet, desk.Depot, s);
                break;
            case CloseoutScreen s:
                CloseoutView.Draw(sheet, desk, s);
                break;
            case TomorrowScreen s:
                TomorrowView.Draw(sheet, desk.Depot, desk.Plan, s);
                break;
            case WhyScreen s:
                WhyView.Draw(sheet, desk.Depot, desk.Plan, s);
                break;
            case LoadScreen s:
                LoadView.Draw(sheet, desk.Depot, desk.Plan, s);
                break;
            case DeskScreen s:
                DeskView.Draw(sheet, desk.Depot, desk.Plan, s);
                break;
            case AccuracyScreen s:
                AccuracyView.Draw(sheet, desk.Depot, s);
                break;
            case CardboardScreen s:
                CardboardView.Draw(sheet, desk.Depot, s);
                break;
            case VanScreen s:
                VanView.Draw(sheet, desk.Depot, desk.Plan, s);
                break;
            case DayBookScreen s:
                DayBookView.Draw(sheet, desk.Depot, s);
                break;
            case AttachScreen s:
                AttachView.Draw(sheet, desk.Depot, s);
                break;
            case PinScreen s:
                PinView.Draw(sheet, desk, s, isTold: model.Said.Length > 0);
                break;
            case IssuedScreen s:
                PinView.Draw(sheet, desk.Depot, s);
                break;
            case PeopleScreen s:
                PeopleView.Draw(sheet, desk.Depot, s);
                break;
            case HelpScreen s:
                HelpView.Draw(sheet, desk.Depot, s);
                break;
            default:
                throw new InvalidOperationException($"no view for {model.Screen.GetType().Name}");
        }

        Say(sheet, model.Said);
        return sheet;
    }

    /// <summary>The line on top: depot, date, what is shown, and the time. A depot's name is what gives way when it is long, then a van's in the title.</summary>
    public static void Head(Sheet sheet, Depot depot, string title, string right)
    {
        var when = $"   {Day(depot.Date)}{(depot.Rehearsal ? "  REHEARSAL" : "")}  ";
        var room = sheet.Width - 2 - Sheet.Columns(when) - (right.Length > 0 ? Sheet.Columns(right) + 2 : 0);
        var shown = Sheet.Cut(title, room);
        sheet.Write(0, 1, Sheet.Cut(depot.Setup.Depot.Name, room - Sheet.Columns(shown)) + when + shown, Look.Strong);
        sheet.WriteRight(0, right, Look.Strong);
    }

    /// <summary>The last line: every key that works here.</summary>
    public static void Keys(Sheet sheet, string keys) => sheet.Write(sheet.Height - 1, 1, keys, Look.Strong, sheet.Width - 2);

    /// <summary>A date as people say it: <c>Wed 18 Nov 2026</c>.</summary>
    public static string Day(DateOnly date) => date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    public static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The words for a number of things.</summary>
    public static string Count(int number, string one, string many) => string.Create(CultureInfo.InvariantCulture, $"{number} {(number == 1 ? one : many)}");

    /// <summary>A sentence to the person, above the keys and over whatever stands there.</summary>
    private static void Say(Sheet sheet, string said)
    {
        if (said.Length == 0)
        {
            return;
        }

        var lines = Sheet.Wrap(said, sheet.Width - 6);
        for (var i = 0; i < lines.Count; i++)
        {
            var row = sheet.Height - 2 - lines.Count + i;
            sheet.Write(row, 0, new string(' ', sheet.Width));
            sheet.Write(row, 1, (i == 0 ? "!! " : "   ") + lines[i], Look.Strong);
        }
    }
}
