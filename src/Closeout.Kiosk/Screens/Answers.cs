using System.Globalization;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>What a filled-in question asks to have recorded, or a sentence that says what is missing.</summary>
/// <param name="Field">The field that it is missing in.</param>
public readonly record struct Answer(IReadOnlyList<Command> Commands, string? Missing, string? Field = null)
{
    public static Answer Of(params Command[] commands) => new(commands, null);

    public static Answer Lacks(string field, string what) => new([], what, field);
}

/// <summary>Turns forms into commands.</summary>
public static partial class Answers
{
    /// <summary>The whole question, as it stands.</summary>
    public static Answer All(Depot depot, CloseoutScreen screen)
    {
        var (van, form) = (screen.Van, screen.Form);
        return screen.At switch
        {
            _ when screen.IsReport => Report(van, form),
            Step.Leftovers when screen.Item is { } blind && Questions.IsBlind(depot.Shift(van)!, blind) && form.Empty("sealed", "kept") is { } unseen =>
                Answer.Lacks(unseen.Name, "This one is counted blind: type the sealed cartons and the loose units that you see, 0 where there are none."),
            Step.Leftovers when screen.Item is { } seen && !Questions.IsBlind(depot.Shift(van)!, seen) && form.Empty("sealed", "bin", "kept") is { } empty =>
                Answer.Lacks(empty.Name, $"\"{empty.Label}\" is empty: type how many there are, 0 where there are none."),
            Step.Leftovers when screen.Item is { } item =>
                Answer.Of(new CountLeftover(van, item, Whole(form["sealed"]), Whole(form["bin"]), Whole(form["kept"]))),
            Step.Leftovers => Answer.Of(new ConfirmLeftovers(van)),
            Step.Cardboard => Rest(form.Fields.Where(f => f.Typed is not null).Select(f => One(depot, screen, f)), new ConfirmCardboard(van)),
            Step.Mileage => Mileage(depot, van, form),
            Step.Damage => Damage(depot.Shift(van)!, form),
            Step.Kit => Rest(form.Fields.Where(f => f.Typed is not null).Select(f => One(depot, screen, f)), new ConfirmKit(van)),
            Step.Weekly => Weekly(van, form),
            Step.SignOff => form["technician"].Text is { Length: > 0 } code && Code<Technician>.IsValid(code)
                ? Answer.Of(new Sign(van, new(code)))
                : Answer.Lacks("technician", "Type or scan your own code to sign, then Enter."),
            _ => throw new InvalidOperationException($"nothing to answer at {screen.At}"),
        };
    }

    /// <summary>The one field of a list that was typed in.</summary>
    public static Answer One(Depot depot, CloseoutScreen screen, Field field)
    {
        var piece = field.Name.Split('/')[0];
        if (screen.Form.Empty(screen.At == Step.Kit ? [piece, field.Name] : [field.Name]) is { } empty)
        {
            return Answer.Lacks(empty.Name, empty.Kind == FieldKind.Date
                ? "The date is empty: type it as YYYY-MM-DD. PgUp, then PgDn shows again what stood there."
                : $"\"{empty.Label}\" is empty: type how many there are, 0 where there are none.");
        }

        if (screen.At == Step.Cardboard && field.Name.StartsWith(Questions.StreamField, StringComparison.Ordinal))
        {
            if (Number(field) is not { } amount)
            {
                return Answer.Lacks(field.Name, $"\"{field.Text}\" is no number. Type how much, 0 where it is nothing.");
            }

            return Answer.Of(new CountStream(screen.Van, new(field.Name[Questions.StreamField.Length..]), field.Kind == FieldKind.Number ? depot.Setup.Units.Pounds(amount) : amount));
        }

        if (screen.At == Step.Cardboard)
        {
            return Answer.Of(new CountBoxes(screen.Van, new(field.Name), Whole(field)));
        }

        if (field.Kind != FieldKind.Date)
        {
            return Answer.Of(new CountKit(screen.Van, new(piece), Whole(field)));
        }

        var isTest = field.Name.EndsWith("/tested", StringComparison.Ordinal);
        return Date(field) is { } date
            ? Answer.Of(new CountKit(screen.Van, new(piece), Whole(screen.Form[piece]), isTest ? null : date, isTest ? date : null))
            : Answer.Lacks(field.Name, $"\"{field.Text}\" is no date. Type it as YYYY-MM-DD.");
    }

    /// <summary>The step as booked, at one key: as expected, not driven, no more damage, all there.</summary>
    public static Command AsBooked(Depot depot, CloseoutScreen screen) => screen.At switch
    {
        Step.Leftovers when screen.Item is { } item && Leftovers.BeforeOf(depot, depot.Shift(screen.Van)!, depot.Setup.Item(item)) is var before =>
            new CountLeftover(screen.Van, item, before.Sealed, 0, before.Loose),
        Step.Leftovers => new ConfirmLeftovers(screen.Van),
        Step.Mileage => new LogMileage(screen.Van, depot.Van(screen.Van).OdometerMi),
        _ => throw new InvalidOperationException($"{screen.At} is not as booked at one key"),
    };

    private static Answer Rest(IEnumerable<Answer> typed, Command confirm)
    {
        var answers = typed.ToList();
        return answers.FirstOrDefault(a => a.Missing is not null) is { Missing: not null } lacks
            ? lacks
            : new([.. answers.SelectMany(a => a.Commands), confirm], null);
    }

    private static Answer Mileage(Depot depot, Code<Van> van, Form form)
    {
        var units = depot.Setup.Units;
        if (Number(form["odometer"]) is not { } odometer)
        {
            return Answer.Lacks("odometer", $"Read the odometer and type it; this morning it said {units.Distance(depot.Van(van).OdometerMi)}. The key = says: not driven.");
        }

        if (form["fuel"].Text.Length > 0 && Number(form["fuel"]) is null)
        {
            return Answer.Lacks("fuel", $"\"{form["fuel"].Text}\" is no number. Type how much was filled, or clear the field.");
        }

        // What is shown again and not typed is what was recorded: converting it twice would shift it.
        var read = depot.Shift(van)!.Mileage;
        var end = form["odometer"].Typed is null ? read!.EndMi : units.Miles(odometer);
        var fuel = form["fuel"].Typed is null ? read?.FuelGal : Number(form["fuel"]) is { } filled ? units.Gallons(filled) : null;
        return Answer.Of(new LogMileage(van, end, fuel, fuel is null || form["grade"].Text.Length == 0 ? null : form["grade"].Text));
    }

    private static Answer Damage(Shift shift, Form form) => form["damage"].Text.ToUpperInvariant() switch
    {
        "N" => Answer.Of(new ConfirmDamage(shift.Van, None: true)),
        "T" when shift.Damages.Count > 0 => Answer.Of(new ConfirmDamage(shift.Van, None: false)),
        _ => Answer.Lacks("damage", "Type N for none, or D to describe a damage."),
    };

    private static Answer Weekly(Code<Van> van, Form form)
    {
        var oil = form["oil"];
        if (oil.Text.Length > 0 && Date(oil) is null)
        {
            return Answer.Lacks("oil", $"\"{oil.Text}\" is no date. Type it as YYYY-MM-DD, or clear the field.");
        }

        if (WalkRound.Parts.FirstOrDefault(p => form[p].Text.ToUpperInvariant() is not ("Y" or "N")) is { } open)
        {
            return Answer.Lacks(open, $"Say whether this part is in order: {open}. Y yes, N no.");
        }

        if (form.Empty("photos") is not null)
        {
            return Answer.Lacks("photos", "Type how many photos were taken, 0 where there are none.");
        }

        return form["clean"].Text.ToUpperInvariant() is var clean && clean is "Y" or "N"
            ? Answer.Of(new CheckWeekly(van, Date(oil), Whole(form["photos"]), clean == "Y", [.. WalkRound.Parts.Where(p => IsNot(form, p))]))
            : Answer.Lacks("clean", "Say whether it is clean inside: Y yes, N no.");
    }

    /// <summary>A part of the walk-round that is said not to be in order.</summary>
    public static bool IsNot(Form form, string part) => form[part].Text.ToUpperInvariant() == "N";

    private static TimeOnly? Clock(string text) =>
        TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var clock) ? clock : null;

    private static int Whole(Field field) => int.TryParse(field.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;

    private static decimal? Number(Field field) =>
        decimal.TryParse(field.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static DateOnly? Date(Field field) =>
        DateOnly.TryParseExact(field.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;
}
