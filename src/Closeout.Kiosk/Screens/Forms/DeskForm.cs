using Closeout.Screens.Parts;

namespace Closeout.Screens.Forms;

/// <summary>
/// A form of a desk as one value: what it is called, what it asks, what stands above it, what helps with it, what it comes to.
/// </summary>
public sealed record DeskForm(string Title)
{
    /// <summary>Whether a lead stands under it; else whoever fills it in.</summary>
    public bool IsLeads { get; init; } = true;

    /// <summary>The fields but the last, with what is most likely right already in them.</summary>
    public required Func<Asked, IEnumerable<Field>> Fields { get; init; }

    /// <summary>What stands above: what the book says now, and the caution where the work can hurt somebody.</summary>
    public required Func<Filled, IEnumerable<string>> About { get; init; }

    /// <summary>What it records, and what follows from that.</summary>
    public required string[] Help { get; init; }

    /// <summary>What it comes to in somebody's name, or what is missing that no field tells by itself.</summary>
    public required Func<Filled, Code<Technician>, FormAnswer> Answer { get; init; }

    /// <summary>What is said where the name under it is missing.</summary>
    public string? NoName { get; init; }

    /// <summary>The form that F5 changes to, and what its key says; null: none.</summary>
    public (string Line, Func<DeskForm> Form)? Other { get; init; }

    /// <summary>Whether it stays for the next of its kind once it was recorded.</summary>
    public bool Stays { get; init; }

    /// <summary>What stands at the right of the first line.</summary>
    public Func<Tonight, string> Right { get; init; } = _ => "";

    /// <summary>The field in which the cursor begins.</summary>
    public Func<Asked, int> Focus { get; init; } = _ => 0;

    /// <summary>The form, ready to be filled in.</summary>
    public Form Open(Asked asked)
    {
        var known = asked.Known is { } person && (!IsLeads || asked.Depot.Setup.Find(person) is { IsLead: true }) ? person.Text : "";
        var name = IsLeads
            ? DeskFields.Person("by", T("Lead's code"), known, NoName ?? T("That is a lead's: type the lead's code."))
            : DeskFields.Person("by", T("Your code"), known, NoName ?? T("Type your own code."));
        return new([.. Fields(asked), name], Focus(asked));
    }
}

/// <summary>What a form is opened on.</summary>
/// <param name="Van">The van that it is of; null: the depot's own.</param>
/// <param name="Person">Whose PIN it is about; null: nobody's.</param>
public sealed record Asked(Tonight Tonight, Code<Van>? Van = null, Code<Item>? Item = null, Code<Technician>? Person = null)
{
    public Depot Depot => Tonight.Depot;

    /// <summary>Who is known at the kiosk; null: nobody.</summary>
    public Code<Technician>? Known { get; init; }

    /// <summary>The van that it is of.</summary>
    /// <exception cref="InvalidOperationException">The form was opened on none.</exception>
    public Van TheVan => Van is { } van ? Depot.Setup.Van(van) : throw new InvalidOperationException("the form is of no van");

    /// <summary>Whom it is about.</summary>
    /// <exception cref="InvalidOperationException">The form was opened on nobody.</exception>
    public Code<Technician> ThePerson => Person ?? throw new InvalidOperationException("the form is about nobody");

    /// <summary>The van with its name; without one the depot.</summary>
    public string Name => Van is null ? T("the depot") : $"{TheVan.Code} {TheVan.Name}";
}

/// <summary>A form as it is filled in, and what it was opened on.</summary>
public sealed record Filled(Asked On, Form Form)
{
    public Depot Depot => On.Depot;

    public string this[string field] => Form[field].Text;

    public Code<T>? Code<T>(string field) => Facts.Code<T>.IsValid(this[field]) ? new Facts.Code<T>(this[field]) : null;

    public int? Whole(string field) => Form[field].Whole;

    /// <summary>The code in a field that is checked when it is left.</summary>
    public Code<T> Known<T>(string field) => new(this[field]);

    public DateOnly? Date(string field) => Form[field].Date;

    public decimal? Number(string field) => Form[field].Number;

    /// <summary>The letter in a field, as a capital.</summary>
    public string Letter(string field) => Form[field].Letter;
}

/// <summary>What a filled-in form asks to have done, or a sentence that says what is missing.</summary>
/// <param name="Field">The field that it is missing in.</param>
public readonly record struct FormAnswer(Act? Act, string? Field = null, string Missing = "")
{
    public static implicit operator FormAnswer(Act act) => new(act);

    public static implicit operator FormAnswer((string Field, string Missing) lacks) => new(null, lacks.Field, lacks.Missing);

    /// <summary>Record a command, and say so.</summary>
    public static FormAnswer Record(ICommand command, string? done = null) => new RecordAct([command], done ?? T("Recorded."));
}
