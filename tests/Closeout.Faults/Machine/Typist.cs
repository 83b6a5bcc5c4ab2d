using System.Globalization;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Screens.Steps;
using Closeout.Shifts.Steps;

namespace Closeout.Faults.Machine;

/// <summary>Somebody at the kiosk who closes out one van after the other, in no hurry to be right: some answers as shown, some typed, some refused at first.</summary>
/// <param name="vans">The vans that he or she closes out; null: all.</param>
internal sealed class Typist(Random random, IReadOnlyList<string>? vans = null)
{
    private int seen = -1;
    private int tries;

    /// <summary>Whether there is nothing left to close out.</summary>
    public bool IsDone(Depot depot) => Open(depot).Count == 0;

    /// <summary>The keys of the next answer, as <see cref="Keystroke.Parse"/> reads them.</summary>
    public string Next(KioskSession kiosk)
    {
        tries = seen == kiosk.Desk.Depot.Number ? tries + 1 : 0;
        seen = kiosk.Desk.Depot.Number;
        return kiosk.Model.Screen switch
        {
            WallScreen => $"{Open(kiosk.Desk.Depot)[random.Next(Open(kiosk.Desk.Depot).Count)].Code}{{Enter}}",
            WhoScreen => $"{Technician(kiosk.Desk.Depot)}{{Enter}}",
            CloseoutScreen { Question.At: Step.Closed } => "{Escape}",
            // Asked again: the same answer once more. Refused: out, and in again to a fresh form.
            CloseoutScreen { Question: { Doubted: LogMileage { EndMi: { } read }, IsSuggested: true } } =>
                $"{read.ToString(CultureInfo.InvariantCulture)}{{Enter}}",
            CloseoutScreen { Question: { Doubted: IAskedAgain, IsRetyped: false } } => "!",
            CloseoutScreen when tries % 4 == 3 => "{Escape}",
            CloseoutScreen s when tries > 4 => Plain(s.Question),
            CloseoutScreen s => Answer(kiosk.Desk.Depot, s.Question),
            _ => "{Escape}",
        };
    }

    private List<Van> Open(Depot depot) =>
        [.. depot.Setup.Vans.Where(v => (vans is null || vans.Contains(v.Code.Text)) && depot.Shift(v.Code) is not { IsClosed: true })];

    private string Technician(Depot depot) => depot.Setup.Crew[random.Next(depot.Setup.Crew.Count)].Code.Text;

    private string Answer(Depot depot, Question s) => (s.At, random.Next(10)) switch
    {
        (Step.Leftovers, 0) when random.Next(10) == 0 => "**",
        (Step.Leftovers, < 5) when s.Form.Fields is [{ Name: "kept" }, ..] => $"{random.Next(20)}{{Enter}}",
        (Step.Leftovers, < 5) when s.Form.Fields is [_, { Name: "kept" }, ..] => $"{random.Next(3)}{{Enter}}{random.Next(9)}{{Enter}}",
        (Step.Leftovers, < 4) => $"{random.Next(3)}{{Enter}}{random.Next(6)}{{Enter}}{random.Next(9)}{{Enter}}",
        (Step.Leftovers, < 8) => "=",
        (Step.Leftovers, _) => "{Enter}",
        (Step.Cardboard, < 5) => $"{random.Next(4)}{{Enter}}",
        (Step.Mileage, < 7) => $"{Miles(depot, s)}{{Enter}}{(random.Next(2) == 0 ? "11.5" : "")}{{Enter}}{{Enter}}",
        (Step.Damage, < 3) when !s.IsReport => $"dleft side{{Enter}}{"NR"[random.Next(2)]}{{Enter}}scratch {random.Next(100)}{{Enter}}{{Enter}}{{Enter}}{{Enter}}",
        (Step.Kit, < 3) => $"{random.Next(4)}{{Enter}}",
        (Step.SignOff, < 5) => $"{Technician(depot)}{{Enter}}",
        _ => Plain(s),
    };

    /// <summary>What gets on at any question.</summary>
    private static string Plain(Question s) => s.At switch
    {
        _ when s.IsReport => "{Escape}",
        Step.Leftovers when s.Item is null => "*",
        Step.Leftovers when s.Form.Fields is [{ Name: "kept" }, ..] => "0{Enter}",
        Step.Leftovers when s.Form.Fields is [_, { Name: "kept" }, ..] => "0{Enter}0{Enter}",
        Step.Leftovers => "0{Enter}0{Enter}0{Enter}{Enter}",
        Step.Handover => "y",
        Step.Weekly => "={Enter}{Enter}{Enter}",
        Step.Damage => s.Form["damage"].Letter == "T" ? "{Enter}" : "n",
        Step.SignOff => "{Enter}",
        _ => "=",
    };

    private string Miles(Depot depot, Question s) =>
        Math.Floor(depot.Van(s.Van).OdometerMi + random.Next(5, 90)).ToString(CultureInfo.InvariantCulture);
}
