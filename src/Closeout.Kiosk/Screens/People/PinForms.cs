using Closeout.People;
using Closeout.Screens.Forms;
using Closeout.Screens.Parts;
using Closeout.Store;

namespace Closeout.Screens.People;

/// <summary>A lead's forms for somebody's PIN.</summary>
public static class PinForms
{
    /// <summary>A lead resets somebody's PIN.</summary>
    public static DeskForm Reset => new(T("RESET A PIN"))
    {
        Fields = _ => [],
        About = f =>
            [Of(f),
                T("The PIN and its failures go. I issues a new one; to a lead another lead issues one.")],
        Help = [
            T(
                "A PIN that is locked or forgotten is taken away, and its failures with it. I on the same screen issues a new one; to a "
                    + "lead another lead issues it.")],
        Answer = (f, lead) => FormAnswer.Record(new ResetPin(f.On.ThePerson, lead), T($"The PIN of {f.On.ThePerson} is reset.")),
    };

    /// <summary>A lead issues a PIN to somebody.</summary>
    public static DeskForm Issue => new(T("ISSUE A PIN"))
    {
        Fields = _ => [],
        About = f =>
            [Of(f), T("Six digits are drawn and shown once: let the owner stand beside you. An old PIN and its failures are gone.")],
        Help =
        [
            T(
                "Six digits are drawn and shown once, on the next screen: let their owner stand beside you. They are in no file. What "
                    + "the person had before opens nothing any more, and a lock is gone."),
            T("Whoever has one takes another of his own with C on the same screen."),
        ],
        Answer = (f, lead) => new IssuePinAct(f.On.ThePerson, lead),
    };

    private static string Of(Filled f) =>
        T($"{f.On.ThePerson} {f.Depot.Setup.Find(f.On.ThePerson)?.Name}: PIN {PinWords.State(f.Depot, f.On.ThePerson)}");
}

/// <summary>Issue a PIN to somebody; it is on disk before it is shown.</summary>
public sealed record IssuePinAct(Code<Technician> Person, Code<Technician> Lead) : Act
{
    public override Reply Do(World world, Screen from)
    {
        if (world.Desk.Depot.Setup.Find(Person) is not { } person)
            return new(from, Refusal.NoSuchTechnician(Person).Text);

        var pin = Pins.Draw(person);
        var issue = new IssuePin(person.Code, world.Pins.Hash(pin), Lead);
        return world.Desk.Record(issue) is { } refusal
            ? from.Refused(world.Scene, issue, refusal)
            : new IssuedScreen(person.Code, pin, ((FormScreen)from).Back);
    }
}
