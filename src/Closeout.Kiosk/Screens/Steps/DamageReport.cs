using System.Globalization;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens.Steps;

/// <summary>The report of a damage, found at the step of damages or on the walk-round.</summary>
internal static class DamageReport
{
    /// <summary>Parts of a van to point at, each by its number.</summary>
    private static readonly string[] Zones =
    [
        Later("front"), Later("rear"), Later("left side"), Later("right side"), Later("roof or ladder rack"),
        Later("windshield"), Later("lights or mirrors"), Later("tires or wheels"), Later("inside"),
    ];

    /// <summary>A van seen from above, its parts numbered: our own drawing, nobody's van.</summary>
    private static string[] Picture =>
    [
        $"           1 {T("front")}",
        $"        .----------.       3 {T("left side")}",
        $"       7|    6     |7      4 {T("right side")}",
        $"        |----------|       5 {T("roof, rack")}",
        $"        |          |       6 {T("windshield")}",
        $"       3|  5   9   |4      7 {T("lights, mirrors")}",
        $"        |          |       8 {T("tires, wheels")}",
        $"       8'----------'8      9 {T("inside")}",
        $"           2 {T("rear")}",
    ];

    /// <summary>The form that asks for a damage. A mere note ends with what it is.</summary>
    /// <param name="part">Of the walk-round, when it was found not in order.</param>
    public static Form Fields(string part = "") => Form.Of(
        new Field("zone", T("Where"), FieldKind.Words, T(part)),
        new Field("severity", T("How bad"), FieldKind.Letter, part.Length > 0 ? "R" : "N", T("N note  R to repair  U unsafe")),
        new Field("what", T("What"), FieldKind.Words, ""),
        new Field("drivable", T("Drivable"), FieldKind.Letter, T("Y"), T("Y yes  N no, on hold")),
        new Field("told", T("Who was told"), FieldKind.Words, ""),
        new Field("told_at", T("At"), FieldKind.Clock, "", "HH:MM")) with { Focus = part.Length > 0 ? 1 : 0 };

    public static Answer Answer(Code<Van> van, Form form)
    {
        var (zone, what) = (form["zone"].Text, form["what"].Text);
        if (int.TryParse(zone, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= Zones.Length)
            zone = Zones[number - 1];

        // The book has the program's own words in English, whatever was spoken; a person's words stay as they are.
        zone = WalkRound.Parts.Concat(Zones).FirstOrDefault(w => T(w) == zone) ?? zone;

        if (SeverityOf(form) is not { } severity)
            return Wrong(form, form["severity"])!.Value;

        if (severity == Severity.Note)
        {
            // The fields below are not shown then: what may stand in them from before is not said.
            return Steps.Answer.Of(new ReportDamage(van, zone, severity, what, true, "", null));
        }

        var drives = form["drivable"].Letter == "Y" && severity != Severity.Unsafe;
        return Wrong(form, form["drivable"]) ?? Wrong(form, form["told_at"])
            ?? Steps.Answer.Of(new ReportDamage(van, zone, severity, what, drives, form["told"].Text, form["told_at"].Clock));
    }

    /// <summary>What Enter does in the report: a field is looked at when it is left.</summary>
    public static StepReply Enter(Question q) => Wrong(q.Form, q.Form.Now) is { } wrong ? wrong
        : (q.Form.Now is { Name: "what" } && SeverityOf(q.Form) == Severity.Note) || q.Form.IsLast ? Answer(q.Van, q.Form) : q.Move(1);

    /// <summary>What is wrong with a field that only a few letters or a time may stand in; null: nothing.</summary>
    private static Answer? Wrong(Form form, Field? field) => field switch
    {
        { Name: "severity" } when SeverityOf(form) is null =>
            Steps.Answer.Lacks(field.Name, T("Say how bad it is: N note, R to repair, U unsafe.")),
        { Name: "drivable", Letter: not ("Y" or "N") } =>
            Steps.Answer.Lacks(field.Name, T("Say whether it can be driven: Y yes, N no.")),
        { Name: "told_at", Text.Length: > 0, Clock: null } =>
            Steps.Answer.Lacks(field.Name, T($"\"{field.Text}\" is no time. Type it as HH:MM, or clear the field.")),
        _ => null,
    };

    /// <summary>Unsafe is not drivable, until somebody says otherwise.</summary>
    public static Question Refilled(Question q) =>
        q with { Form = q.Form.With(q.Form["drivable"] with { Shown = SeverityOf(q.Form) == Severity.Unsafe ? "N" : T("Y") }) };

    public static void Draw(Sheet sheet, Form form)
    {
        foreach (var (row, line) in Picture.Index())
            sheet.Write(3 + row, 1, line, Look.Plain, StepPage.Columns);

        var severity = SeverityOf(form);
        var shown = form with { Fields = form.Fields.SetItem(1, form["severity"] with { After = "" }) };
        FormView.Draw(sheet, 13, 1, shown, 0, severity == Severity.Note ? 3 : 6, 15);
        sheet.Write(14, 22, T("N note R repair U unsafe"), Look.Faint, StepPage.Columns - 21);
        sheet.Write(20, 1, severity switch
        {
            Severity.Note => T("A note: it shows on the wall."),
            Severity.Unsafe => T("Unsafe holds the van. Tell the lead now."),
            _ when form["drivable"].Letter == "Y" => T("To repair: it shows on the wall. Who was told?"),
            _ => T("Not drivable holds the van. Who was told?"),
        }, Look.Strong, StepPage.Columns);
    }

    /// <summary>How bad a damage is said to be; null: not said.</summary>
    private static Severity? SeverityOf(Form form) => form["severity"].Letter switch
    {
        "N" => Severity.Note,
        "R" => Severity.Repair,
        "U" => Severity.Unsafe,
        _ => null,
    };
}
