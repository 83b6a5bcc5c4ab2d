using Closeout.Screens.Parts;
using Closeout.Screens.Steps;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>
/// A van that was not used today comes in with stock, boxes and miles unchanged, one entry each; what somebody must look at is asked.
/// </summary>
/// <param name="Van">On the road, as the book has it.</param>
public sealed record NotUsedAct(Code<Van> Van, Code<Technician> Technician) : Act
{
    public override Reply Do(World world, Screen from)
    {
        var desk = world.Desk;
        if (world.Elsewhere(Van) is { } walked)
            return new(from, walked);

        if (desk.Depot.Setup.Items.Any(i => desk.Depot.Reported(Van, i.Code) > 0))
            return new(from, T($"Visit reports say that {Van} was used today. Press Enter and close it out step by step."));

        var come = new ComeIn(Van, Technician);
        if (desk.Record(come) is { } refused)
            return from.Refused(world.Scene, come, refused);

        var said = "";
        while (said.Length == 0 && desk.Depot.Shift(Van) is { Step: < Step.Damage } shift)
            said = desk.Record(StepPages.Of(shift.Step).Unchanged(Van))?.Text ?? "";

        var opened = (CloseoutScreen)from.Recorded(world.Scene, [come], "").Screen;
        return new(opened with { IsNotUsed = true }, said);
    }

    /// <summary>Whether the kit of a van that nobody used needs no look: nothing of it is short, and no date has come.</summary>
    public static bool KitIsAsItWas(Depot depot, Code<Van> van) => !KitCheck.MissingOf(depot, van).Any() && !KitCheck.Due(depot, van).Any();
}
