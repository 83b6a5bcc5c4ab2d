using System.Globalization;
using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens.Steps;

/// <summary>The odometer, and the fuel slip.</summary>
public sealed class MileagePage : StepPage
{
    /// <summary>Digits that stand for a whole reading, and how far behind this morning's it may lie.</summary>
    private const int LastDigits = 3;
    private const int Thousand = 1_000;
    private const int MostDriven = 500;

    public override Step Step => Step.Mileage;

    public override string Caution => T("Read it parked, brake set. Fuel only with the engine off.");

    public override string? Help => T("Mileage: the odometer or its last 3 digits; fuel if filled.");

    public override ICommand Unchanged(Code<Van> van) => new LogMileage(van, null);

    public override EveningStep Evening => new(
        Step,
        "mileage",
        [
            new("odometer", EveningItem.None, row => row.Number("value", 0, Refusal.MostMiles)),
            new("fuel_gal", EveningItem.None, row => row.Number("value", 0, Refusal.MostGallons, openBelow: true)),
            new("fuel_grade", EveningItem.None, row => row.Text("value")),
        ],
        a => new LogMileage(a.Van, a.Number("odometer"), a.Number("fuel_gal"), a.Text("fuel_grade")));

    public override IEnumerable<StepKey> Keys(Depot depot, Question q) =>
    [
        EnterKey(T("next"), depot, q),
        UpKey(depot, q),
        new(Parts.Keys.Letter('='), T("not driven"), _ => Steps.Answer.Of(new LogMileage(q.Van, depot.Van(q.Van).OdometerMi))),
    ];

    public override Answer Answer(Depot depot, Question q)
    {
        var (form, units) = (q.Form, depot.Setup.Units);
        if (form["odometer"].Number is not { } odometer)
        {
            return Steps.Answer.Lacks("odometer",
                T($"Type the odometer reading. This morning it was {units.Distance(depot.Van(q.Van).OdometerMi)}; = means not driven."));
        }

        if (form["fuel"].Text.Length > 0 && form["fuel"].Number is null)
            return Steps.Answer.Lacks("fuel", T($"\"{form["fuel"].Text}\" is not a number. Type how much was filled, 0 for none."));

        // What is shown again and not typed is what was recorded: converting it twice would shift it.
        var read = depot.Shift(q.Van)!.Mileage;
        var end = form["odometer"].Typed is null ? read!.EndMi : units.Miles(odometer);
        var fuel = form["fuel"].Typed is null ? read?.FuelGal : form["fuel"].Number is > 0 and var filled ? units.Gallons(filled) : null;
        return Steps.Answer.Of(
            new LogMileage(q.Van, end, fuel, fuel is null || form["grade"].Text.Length == 0 ? null : form["grade"].Text));
    }

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        var units = depot.Setup.Units;
        sheet.Write(4, 1, T($"This morning   {units.Distance(depot.Van(shift.Van).OdometerMi)}"), Look.Plain, Columns);
        FormView.Draw(sheet, 6, 1, q.Form, 0, q.Form["fuel"].Text.Length > 0 ? 3 : 2, 17);
        var row = 10;
        if (DrivingHabit.Of(depot, shift.Van) is { } habit)
            row = Say(sheet, row, T($"Typical day: {units.Distance(habit.MedianMi)}"));

        if (Service.NoteOf(depot, depot.Setup.Van(shift.Van), units) is { } service)
            row = Say(sheet, row, service);

        if (FuelEconomy.Of(depot, shift.Van) is { } economy)
            Say(sheet, row, economy.Words(units));
    }

    public override Form Refused(Depot depot, Question q, Refusal refusal) => refusal.InsteadMi is { } mi
        ? q.Form.With(q.Form["odometer"] with { Typed = Digits(depot, mi) })
        : q.Form;

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) => entry is MileageLogged e
        ?
        [
            (0, T($"{depot.Setup.Units.Distance(e.DistanceMi)}, odometer {depot.Setup.Units.Distance(e.EndMi)}")),
            .. e.FuelGal is { } fuel
                ? new[] { (2, T($"{depot.Setup.Units.Fuel(fuel)} {depot.Setup.Units.FuelUnit} {e.FuelGrade}").TrimEnd()) }
                : [],
        ]
        : null;

    public override IEnumerable<string> Summary(Depot depot, Shift shift)
    {
        if (shift.Mileage is not { } read)
            yield break;

        var units = depot.Setup.Units;
        yield return T($"Mileage     {units.Distance(read.DistanceMi)}, odometer {units.Distance(read.EndMi)}")
            + (read.Sure ? T(", confirmed as read") : "");
        yield return read.FuelGal is { } fuel
            ? T($"Fuel        {units.Fuel(fuel)} {units.FuelUnit} {read.FuelGrade}")
            : T("Fuel        none");
    }

    protected override StepReply Enter(Depot depot, Shift shift, Question q) =>
        q.Form.Now is { Name: "odometer", Typed.Length: LastDigits } last && Whole(depot, shift.Van, last.Typed) is { } whole
            ? new(q with { Form = q.Form.With(last with { Typed = whole, Caret = null }).Move(1) },
                Said: T($"Odometer {whole}: see that it is so.")) { IsDone = true }
        : q.Form.Now is { Name: "odometer" or "fuel", Text.Length: > 0 } ? q.Move(1) : Answer(depot, q);

    /// <summary>
    /// The last three digits will do: the reading that ends so and comes next after this morning's. Null: less than three digits stand
    /// before them, or it would be further than the van can have gone.
    /// </summary>
    private static string? Whole(Depot depot, Code<Van> van, string digits)
    {
        if (!int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var last))
            return null;

        var start = (int)decimal.Parse(Digits(depot, depot.Van(van).OdometerMi), CultureInfo.InvariantCulture);
        var end = (start / Thousand * Thousand) + last;
        end += end < start ? Thousand : 0;
        return start >= Thousand && end - start < MostDriven ? end.ToString(CultureInfo.InvariantCulture) : null;
    }

    protected override Form Fields(Depot depot, Shift shift)
    {
        var (units, read) = (depot.Setup.Units, shift.Mileage);
        return Form.Of(
            new Field("odometer", T("Odometer now"), FieldKind.Number, read is null ? "" : Digits(depot, read.EndMi), units.DistanceUnit)
                { Decimals = 1 },
            new Field("fuel", T("Fuel filled"), FieldKind.Number, read?.FuelGal is { } fuel ? units.Fuel(fuel) : "",
                units.FuelUnit + T(", 0 for none")),
            new Field("grade", T("Fuel grade"), FieldKind.Words, read?.FuelGrade ?? depot.Setup.Van(shift.Van).Fuel));
    }

    private static string Digits(Depot depot, decimal miles) => depot.Setup.Units.Distance(miles).Split(' ')[0];
}
