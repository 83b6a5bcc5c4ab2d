using System.Globalization;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Rules;
using Closeout.Screens;
using Closeout.Shifts.Steps;

namespace Closeout.Tests.Screens;

/// <summary>The keys that give an evening's answers at the kiosk, one van after the other.</summary>
internal static class EveningKeys
{
    public static void Play(SampleKiosk kiosk, IEnumerable<EveningAnswer> answers)
    {
        foreach (var van in answers.GroupBy(a => a.Van))
        {
            kiosk.Press($"{van.Key}{{Enter}}{Code(van.First().Technician.Text)}");
            foreach (var answer in van)
            {
                while (kiosk.Closeout.At is var at && at != answer.Step)
                {
                    Again(kiosk.Press(at > answer.Step ? "{PageUp}" : at < kiosk.Depot.Shift(van.Key)!.Step ? "{PageDown}" : AsBooked(kiosk, at)));
                }

                kiosk.Press(answer.Photo is { } path ? $"{{F8}}{path}{{Enter}}" : Keys(kiosk, answer.Step, answer.Command!));
                Again(kiosk);
            }
        }
    }

    private static string AsBooked(SampleKiosk kiosk, Step step) => step switch
    {
        Step.Leftovers => "**",
        Step.Cardboard or Step.Mileage or Step.Kit => "=",
        Step.Damage => kiosk.Depot.Shift(kiosk.Closeout.Van)!.Damages.Count == 0 ? "n" : "{Enter}",
        Step.Weekly => "={Enter}{Enter}{Enter}",
        _ => throw new InvalidOperationException($"{step}"),
    };

    /// <summary>What was asked again is recorded as it is; over a reading that was suggested one's own is typed.</summary>
    private static void Again(SampleKiosk kiosk)
    {
        if (kiosk.Session.Model.Screen is CloseoutScreen { Question: { Doubted: LogMileage { EndMi: { } read }, IsSuggested: true } })
            kiosk.Press(Text(read) + "{Enter}");
        else if (kiosk.Session.Model.Screen is CloseoutScreen { Question.Doubted: not null })
            kiosk.Press("!");
    }

    private static string Keys(SampleKiosk kiosk, Step step, ICommand command) => command switch
    {
        CountLeftover c => Count(kiosk.Press($"/{c.Item}{{Enter}}"), c),
        ConfirmLeftovers => "**",
        CountBoxes c => $"{To(kiosk, c.Item.Text)}{c.Flattened}{{Enter}}",
        CountStream c => $"{To(kiosk, $"stream/{c.Stream}")}{Text(c.Amount)}{{Enter}}",
        ConfirmCardboard or ConfirmKit => kiosk.Closeout.Form.Fields.Count == 0 ? "{Enter}" : "=",
        LogMileage c => $"{Text(c.EndMi!.Value)}{{Enter}}" + (c.FuelGal is null ? "{Enter}" : $"{Text(c.FuelGal.Value)}{{Enter}}{(c.FuelGrade is null ? Erase(kiosk) : c.FuelGrade)}{{Enter}}"),
        ConfirmDamage { None: true } => kiosk.Depot.Shift(kiosk.Closeout.Van)!.Damages.Count == 0 ? "n" : "n{Enter}",
        ConfirmDamage => "{Enter}",
        ReportDamage c => (step == Step.Weekly ? $"{To(kiosk, c.Zone)}n" : $"d{c.Zone}{{Enter}}") + Report(c),
        CountKit { TestedOn: { } date } c => $"{To(kiosk, c.Piece + "/tested")}{date:yyyy-MM-dd}{{Enter}}",
        CountKit { Expires: { } date } c => $"{To(kiosk, c.Piece + "/date")}{date:yyyy-MM-dd}{{Enter}}",
        CountKit c => $"{To(kiosk, c.Piece.Text)}{c.Count}{{Enter}}",
        CheckWeekly c => $"={c.OilChangedOn:yyyy-MM-dd}{{Enter}}{c.Photos}{{Enter}}{(c.Clean ? "y" : "n")}{{Enter}}",
        Sign c => Code(c.Technician.Text),
        _ => throw new InvalidOperationException(command.GetType().Name),
    };

    /// <summary>The three counts, in the order in which they are asked; the last Enter records them.</summary>
    private static string Count(SampleKiosk kiosk, CountLeftover c)
    {
        var booked = Leftovers.BeforeOf(kiosk.Depot.Shift(c.Van)!, kiosk.Depot.Setup.Item(c.Item)).Sealed;
        return string.Join("{Down}", kiosk.Closeout.Form.Fields.Select(f => f.Name switch { "sealed" => c.Sealed ?? booked, "bin" => c.Bin, _ => c.Kept })) + "{Enter}";
    }

    /// <summary>How bad, what, and behind a mere note whether it drives, who was told and when.</summary>
    private static string Report(ReportDamage c)
    {
        var what = $"{c.Severity.ToString()[0]}{{Enter}}{c.What}{{Enter}}";
        var drivable = c.Drivable switch { null => "", true => "y", false => "n" };
        return c.Severity == Severity.Note ? what : $"{what}{drivable}{{Enter}}{c.Told}{{Enter}}{c.ToldAt:HH:mm}{{Enter}}";
    }

    /// <summary>A code over whatever stands in the field.</summary>
    private static string Code(string code) => $"{code}{{Enter}}";

    private static string Erase(SampleKiosk kiosk) => string.Concat(Enumerable.Repeat("{Backspace}", kiosk.Closeout.Form["grade"].Shown.Length));

    private static string To(SampleKiosk kiosk, string field)
    {
        var form = kiosk.Closeout.Form;
        var by = form.Fields.FindIndex(f => f.Name == field) - form.Focus;
        return string.Concat(Enumerable.Repeat(by > 0 ? "{Down}" : "{Up}", Math.Abs(by)));
    }

    private static string Text(decimal number) => number.ToString(CultureInfo.InvariantCulture);
}
