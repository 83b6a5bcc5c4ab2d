using System.Globalization;
using Closeout.Facts;
using Closeout.Shifts;

namespace Closeout.Screens;

/// <summary>The report of a damage.</summary>
public static partial class Answers
{
    private static Answer Report(Code<Van> van, Form form)
    {
        var zone = form["zone"].Text;
        if (int.TryParse(zone, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= Questions.Zones.Count)
        {
            zone = Questions.Zones[number - 1];
        }

        if (Severity(form) is not { } severity)
        {
            return Answer.Lacks("severity", "Say how bad it is: N note, R to repair, U unsafe.");
        }

        if (severity == Facts.Severity.Note)
        {
            // The fields below are not shown then: what may stand in them from before is not said.
            return Answer.Of(new ReportDamage(van, zone, severity, form["what"].Text, true, "", null));
        }

        var (drivable, at) = (form["drivable"].Text.ToUpperInvariant(), form["told_at"].Text);
        if (drivable is not ("Y" or "N"))
        {
            return Answer.Lacks("drivable", "Say whether it can be driven: Y yes, N no.");
        }

        return at.Length > 0 && Clock(at) is null
            ? Answer.Lacks("told_at", $"\"{at}\" is no time. Type it as HH:MM, or clear the field.")
            : Answer.Of(new ReportDamage(van, zone, severity, form["what"].Text, drivable == "Y" && severity != Facts.Severity.Unsafe, form["told"].Text, Clock(at)));
    }

    /// <summary>How bad a damage is said to be; null: not said.</summary>
    public static Severity? Severity(Form form) => form["severity"].Text.ToUpperInvariant() switch
    {
        "N" => Facts.Severity.Note,
        "R" => Facts.Severity.Repair,
        "U" => Facts.Severity.Unsafe,
        _ => null,
    };
}
