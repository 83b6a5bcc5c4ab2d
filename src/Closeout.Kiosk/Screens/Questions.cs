using System.Collections.Immutable;
using System.Globalization;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>The questions of a close-out: for each step the fields, with the answer most likely right already in them.</summary>
public static class Questions
{
    /// <summary>Parts of a van to point at, each by its number.</summary>
    public static readonly IReadOnlyList<string> Zones =
        ["front", "rear", "left side", "right side", "roof or ladder rack", "windscreen", "lights or mirrors", "tyres or wheels", "inside"];

    /// <summary>The screen of a van's step. In leftovers the first item not counted yet, unless one is named.</summary>
    public static CloseoutScreen At(Depot depot, Code<Van> van, Step step, Code<Item>? item = null)
    {
        var shift = depot.Shift(van)!;
        var asked = step == Step.Leftovers ? item ?? NextItem(depot, shift) : null;
        return new(van, step, asked, FormOf(depot, shift, step, asked));
    }

    /// <summary>The same question after pictures were attached: what was typed stays, their number follows, on the walk-round behind a report too.</summary>
    public static CloseoutScreen Refreshed(this CloseoutScreen s, Depot depot)
    {
        Form With(Form form) => form.With(form["photos"] with { Shown = Text(depot.Shift(s.Van)!.Photos.Count) });
        return s switch
        {
            { At: Step.Weekly, IsReport: false } => s with { Form = With(s.Form) },
            { Behind: { } behind } => s with { Behind = With(behind) },
            _ => s,
        };
    }

    /// <summary>The question that is open now.</summary>
    public static CloseoutScreen Open(Depot depot, Code<Van> van) => At(depot, van, depot.Shift(van)!.Step);

    /// <summary>The form that asks for a damage. A mere note ends with what it is.</summary>
    /// <param name="part">Of the walk-round, when it was found not in order.</param>
    public static Form Report(string part = "") => Form.Of(
        new Field("zone", "Where", FieldKind.Words, part),
        new Field("severity", "How bad", FieldKind.Letter, part.Length > 0 ? "R" : "N", "N note  R to repair  U unsafe"),
        new Field("what", "What", FieldKind.Words, ""),
        new Field("drivable", "Drivable", FieldKind.Letter, "Y", "Y yes  N no: holds the van"),
        new Field("told", "Who was told", FieldKind.Words, ""),
        new Field("told_at", "At", FieldKind.Clock, "", "HH:MM")) with { Focus = part.Length > 0 ? 1 : 0 };

    public static Form Who(Depot depot, Code<Van> van) => Form.Of(
        new Field("technician", "Your code", FieldKind.Code, depot.Setup.Rostered(van, depot.Date)?.Code.Text ?? ""));

    /// <summary>The first item that nobody counted yet; null: all are.</summary>
    public static Code<Item>? NextItem(Depot depot, Shift shift, Code<Item>? after = null)
    {
        var items = Leftovers.ToCount(depot, shift).Select(i => i.Code).ToList();
        var start = after is { } a ? items.IndexOf(a) + 1 : 0;
        return items.Skip(start).Concat(items.Take(start)).Where(i => !shift.Counts.ContainsKey(i)).Select(i => (Code<Item>?)i).FirstOrDefault();
    }

    /// <summary>
    /// The fields of a count, the ones not typed filled with what follows from the others. Where visits report what was
    /// used, what is loose goes to the bin, where every van can have it: leftovers that stay aboard cost a depot most
    /// (docs/methods.md, a year in simulation).
    /// </summary>
    public static Form Refill(Depot depot, Shift shift, Code<Item> code, Form form)
    {
        var item = depot.Setup.Item(code);
        var before = Leftovers.BeforeOf(depot, shift, item);
        var reported = depot.Reported(shift.Van, code);
        var left = before.Units(item.UnitsPerCarton) - (reported ?? 0);
        var (boxed, bin, kept) = (form["sealed"], form["bin"], form["kept"]);
        var counted = shift.Counts.TryGetValue(code, out var count) && form.IsUntouched ? count.Count : (LeftoverCount?)null;

        var nowSealed = Typed(boxed) ?? counted?.Sealed
            ?? (reported is > 0 ? Math.Clamp(left / item.UnitsPerCarton, 0, before.Sealed) : before.Sealed);
        var nowKept = Typed(kept) ?? counted?.Kept
            ?? (reported is > 0 || nowSealed != before.Sealed ? 0 : Math.Max(0, before.Loose - (Typed(bin) ?? 0)));
        var nowBin = Typed(bin) ?? counted?.Bin
            ?? (reported is > 0 ? Math.Max(0, left - nowSealed * item.UnitsPerCarton - nowKept) : 0);
        return form
            .With(boxed with { Shown = Text(nowSealed) })
            .With(bin with { Shown = Text(nowBin) })
            .With(kept with { Shown = Text(nowKept) });
    }

    /// <summary>Whether the item is to be counted without seeing the book's figure, and nobody did yet.</summary>
    public static bool IsBlind(Shift shift, Code<Item> item) => shift.SpotItems.Contains(item) && !shift.Counts.ContainsKey(item);

    /// <summary>The first item that must not be passed by: counted blind tonight, or used as visits report; null: none is left.</summary>
    public static Code<Item>? Unseen(Depot depot, Shift shift) => Leftovers.ToCount(depot, shift)
        .Concat(depot.Setup.Items.Where(i => !shift.Before.ContainsKey(i.Code)))
        .Where(i => !shift.Counts.ContainsKey(i.Code) && (shift.SpotItems.Contains(i.Code) || depot.Reported(shift.Van, i.Code) > 0))
        .Select(i => (Code<Item>?)i.Code)
        .FirstOrDefault();

    /// <summary>A count as typed; null: nothing.</summary>
    public static int? Typed(Field field) =>
        int.TryParse(field.Typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static Form FormOf(Depot depot, Shift shift, Step step, Code<Item>? item) => step switch
    {
        Step.Leftovers when item is { } blind && IsBlind(shift, blind) => Form.Of(
            new Field("sealed", "Sealed, on the van", FieldKind.Count, "", "cartons"),
            new Field("bin", "Loose into the bin", FieldKind.Count, "", "units, empty: none"),
            new Field("kept", "Loose, stay aboard", FieldKind.Count, "", "units")),
        Step.Leftovers when item is { } code => Refill(depot, shift, code, Form.Of(
            new Field("sealed", "Still sealed", FieldKind.Count, "", "cartons"),
            new Field("bin", "Loose into the bin", FieldKind.Count, "", "units"),
            new Field("kept", "Loose kept aboard", FieldKind.Count, "", "units"))),
        Step.Leftovers => Form.None,
        Step.Cardboard => new([.. Boxes(depot, shift)]),
        Step.Mileage => Mileage(depot, shift),
        Step.Damage => Form.Of(new Field("damage", "Damage", FieldKind.Letter, shift.Damages.Count == 0 ? "N" : "T")),
        Step.Kit => new([.. Kit(depot, shift)]),
        Step.Weekly => Weekly(depot, shift),
        Step.SignOff => Form.Of(new Field("technician", "Sign with your code", FieldKind.Code, shift.Technician.Text)),
        Step.Closed => Form.None,
        _ => throw new InvalidOperationException($"no question for {step}"),
    };

    private static IEnumerable<Field> Boxes(Depot depot, Shift shift) => depot.Setup.Items
        .Select(i => (Item: i, Missing: depot.Van(shift.Van).MissingBoxes.Where(m => m.Item == i.Code).Sum(m => m.Boxes)))
        .Where(i => shift.ExpectedOf(i.Item.Code) > 0 || shift.Boxes.ContainsKey(i.Item.Code) || i.Missing > 0)
        .Select(i => new Field(
            i.Item.Code.Text, i.Item.Description, FieldKind.Count,
            Text(shift.Boxes.TryGetValue(i.Item.Code, out var counted) ? counted.Flattened : shift.ExpectedOf(i.Item.Code)),
            $"of {shift.ExpectedOf(i.Item.Code)}{(i.Missing > 0 ? $", {i.Missing} lost" : "")}"))
        .Concat(Collecting.On(depot.Setup.Depot).Select(s => new Field(
            StreamField + s.Code, s.Description, s.IsWeighed ? FieldKind.Number : FieldKind.Count,
            s.IsWeighed ? depot.Setup.Units.Amount(shift.StreamOf(s.Code)) : Text((int)shift.StreamOf(s.Code)), s.IsWeighed ? depot.Setup.Units.WeightUnit : "pieces")));

    /// <summary>Before the name of a waste stream in a field's name.</summary>
    public const string StreamField = "stream/";

    private static Form Mileage(Depot depot, Shift shift)
    {
        var units = depot.Setup.Units;
        var read = shift.Mileage;
        return Form.Of(
            new Field("odometer", "Odometer now", FieldKind.Number, read is null ? "" : Digits(units.Distance(read.EndMi)), units.DistanceUnit),
            new Field("fuel", "Fuel filled", FieldKind.Number, read?.FuelGal is { } fuel ? units.Fuel(fuel) : "", units.FuelUnit + ", empty: none"),
            new Field("grade", "Fuel grade", FieldKind.Words, read?.FuelGrade ?? depot.Setup.Van(shift.Van).Fuel));
    }

    private static IEnumerable<Field> Kit(Depot depot, Shift shift)
    {
        foreach (var piece in depot.Setup.Kit)
        {
            var required = depot.Setup.Required(shift.Van, piece);
            var there = shift.Kit.TryGetValue(piece.Code, out var counted) ? counted.Count : required;
            yield return new(piece.Code.Text, piece.Description, FieldKind.Count, Text(there), $"of {required}{(piece.Critical ? " must" : "")}");
            var dates = KitCheck.DatesOf(depot, shift.Van, piece.Code);
            if (piece.Expires)
            {
                yield return new(piece.Code.Text + "/date", "  good until", FieldKind.Date, Iso(dates.Expires));
            }

            if (piece.TestEveryDays > 0)
            {
                yield return new(piece.Code.Text + "/tested", "  last tested", FieldKind.Date, Iso(dates.TestedOn));
            }
        }
    }

    private static Form Weekly(Depot depot, Shift shift)
    {
        var done = shift.Weekly;
        var oil = done?.OilChangedOn ?? depot.Van(shift.Van).OilChangedOn;
        var told = shift.Damages.Select(d => WalkRound.Find(d.Zone)).ToHashSet();
        return new(
        [
            .. WalkRound.Parts.Select(p => new Field(p, char.ToUpperInvariant(p[0]) + p[1..], FieldKind.Letter, told.Contains(p) ? "N" : "Y", p == WalkRound.Parts[0] ? "Y in order  N not" : "")),
            new Field("oil", "Oil last changed", FieldKind.Date, Iso(oil), "empty: none"),
            new Field("photos", "Photos taken", FieldKind.Count, Text(done?.Photos ?? shift.Photos.Count), "F8 attaches"),
            new Field("clean", "Clean inside", FieldKind.Letter, done is { Clean: false } ? "N" : "Y", "Y yes  N no"),
        ]);
    }

    private static string Iso(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    private static string Digits(string distance) => distance.Split(' ')[0];

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
