using System.Globalization;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Turning;

namespace Closeout.Screens;

/// <summary>The forms of a lead's desk, what stands above them, and the acts that they come to.</summary>
public static class LeadForms
{
    public static Form Of(DeskTask task) => task switch
    {
        DeskTask.Check => Form.Of(Lead),
        DeskTask.Reopen => Form.Of(Why("Why it is reopened"), Lead),
        DeskTask.Behalf => Form.Of(new Field("for", "For whom", FieldKind.Code, ""), Why("Why"), Lead),
        DeskTask.Excuse => Form.Of(new Field("stayed", "Stayed in", FieldKind.Letter, "Y", "Y it never went out  N it did"), Why("Why it is not closed"), Lead),
        DeskTask.Move => Form.Of(
            new Field("date", "Date", FieldKind.Date, ""),
            new Field("from", "From van", FieldKind.Code, ""),
            new Field("to", "To van", FieldKind.Code, ""),
            new Field("kind", "Visit kind", FieldKind.Code, "", "empty: all"),
            Why("Why"),
            Lead),
        DeskTask.EndDay => Form.Of(new Field("next", "Next business date", FieldKind.Date, ""), Lead),
        _ => throw new InvalidOperationException($"no form for {task}"),
    };

    /// <summary>The form with what is most likely right already in it.</summary>
    public static Form Of(DeskTask task, Depot depot, Code<Van>? van)
    {
        var form = Of(task);
        return (task, van) switch
        {
            (DeskTask.Behalf, { } code) when (depot.Shift(code)?.Technician ?? depot.Setup.Rostered(code, depot.Date)?.Code) is { } who => Shown(form, "for", who.Text),
            (DeskTask.Excuse, { } code) when depot.Shift(code) is not null => Shown(form, "stayed", "N"),
            (DeskTask.Move, _) => Shown(Shown(form, "date", Iso(RestockPlan.Tomorrow(depot))), "from", van?.Text ?? ""),
            (DeskTask.EndDay, _) => Shown(form, "next", Iso(DayEnd.Next(depot))),
            _ => form,
        };
    }

    public static string Title(DeskTask task) => task switch
    {
        DeskTask.Check => "CHECK A CLOSE-OUT",
        DeskTask.Reopen => "REOPEN A CLOSE-OUT",
        DeskTask.Behalf => "CLOSE OUT FOR SOMEBODY",
        DeskTask.Excuse => "EXCUSE A VAN",
        DeskTask.Move => "MOVE BOOKINGS",
        DeskTask.EndDay => "END THE DAY",
        _ => throw new InvalidOperationException($"no title for {task}"),
    };

    /// <summary>What stands above the form.</summary>
    public static IEnumerable<string> About(Depot depot, DeskScreen s)
    {
        var name = s.Van is { } code ? $"{code} {depot.Setup.Van(code).Name}" : "";
        var shift = s.Van is { } van ? depot.Shift(van) : null;
        return s.Task switch
        {
            DeskTask.Check =>
            [
                shift is { IsClosed: true } ? $"{name}, brought in by {shift.Technician}, signed by {shift.SignedBy}. Look over its card and its page first." : $"{name} is not signed.",
                .. shift is null ? [] : SummaryLines.Of(depot, shift),
                "Four eyes: whoever brought it in or signed it cannot check it.",
            ],
            DeskTask.Reopen => [$"{name} goes back to its sign-off: every answer may be changed, and it must be signed again. Not once anything was loaded into it."],
            DeskTask.Behalf => [$"{name}: what was not answered is confirmed as booked: leftovers by the book, not driven, no damage, kit all there. Your name stands under it, and the wall says so.", "Better: call them, or count it yourself."],
            DeskTask.Excuse => [$"{name} is not closed out. Stayed in: it never went out, so what the book has aboard is aboard. Else it is out or half way, and nobody counted it."],
            DeskTask.Move =>
            [
                .. depot.Bookings.Where(b => b.Date > depot.Date && b.Visits > 0).GroupBy(b => (b.Date, b.Van)).OrderBy(g => g.Key.Date).ThenBy(g => g.Key.Van).Take(8)
                    .Select(g => $"{Iso(g.Key.Date)} {g.Key.Van}: {string.Join(", ", g.Select(b => $"{b.Visits} {b.Kind}"))}").DefaultIfEmpty("No visits are booked."),
            ],
            DeskTask.EndDay =>
            [
                DayEnd.Open(depot) is { Count: > 0 } open
                    ? $"Neither closed nor explained: {string.Join(", ", open.Select(v => $"{v.Code} {v.Name}"))}. Close them out, or explain each: F7 on the wall, then X."
                    : "Every van is closed out or explained.",
                "The next page takes over balances, odometers, holds, incidents, boxes missing, bookings. This page is never written again.",
            ],
            _ => throw new InvalidOperationException($"nothing to say of {s.Task}"),
        };
    }

    /// <summary>What a form comes to.</summary>
    public static DeskAnswer Answer(Depot depot, DeskScreen s)
    {
        var form = s.Form;
        if (DeskForms.By(form) is not { } lead)
        {
            return ("by", "That is a lead's: type the lead's code.");
        }

        return s.Task switch
        {
            DeskTask.Check => new CheckCloseout(s.Van!.Value, lead),
            DeskTask.Reopen => new Reopen(s.Van!.Value, form["reason"].Text, lead),
            DeskTask.Behalf => DeskForms.CodeOf<Technician>(form["for"]) is { } who ? new BehalfAct(s.Van!.Value, who, form["reason"].Text, lead) : ("for", "Type the code of whoever it is for."),
            DeskTask.Excuse => form["stayed"].Text.ToUpperInvariant() is var stayed && stayed is "Y" or "N"
                ? new ExplainVan(s.Van!.Value, stayed == "Y", form["reason"].Text, lead)
                : ("stayed", "Say whether it stayed in: Y or N."),
            DeskTask.Move => Move(form, lead),
            DeskTask.EndDay => Date(form["next"]) is { } next ? new EndDayAct(next, lead) : ("next", "Type the next business date as YYYY-MM-DD."),
            _ => throw new InvalidOperationException($"no command for {s.Task}"),
        };
    }

    private static DeskAnswer Move(Form form, Code<Technician> lead) => (Date(form["date"]), DeskForms.CodeOf<Van>(form["from"]), DeskForms.CodeOf<Van>(form["to"])) switch
    {
        (null, _, _) => ("date", "Type the date as YYYY-MM-DD."),
        (_, null, _) => ("from", "Type the van whose visits are moved."),
        (_, _, null) => ("to", "Type the van that takes them."),
        ({ } date, { } from, { } to) => new MoveBookings(date, from, to, DeskForms.CodeOf<VisitKind>(form["kind"]), form["reason"].Text, lead),
    };

    private static Field Lead => new("by", "Lead's code", FieldKind.Code, "");

    private static Field Why(string label) => new("reason", label, FieldKind.Words, "");

    private static Form Shown(Form form, string field, string text) => form.With(form[field] with { Shown = text });

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static DateOnly? Date(Field field) =>
        DateOnly.TryParseExact(field.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;
}
