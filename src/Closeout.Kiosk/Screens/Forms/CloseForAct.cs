using Closeout.Leads;
using Closeout.Screens.Parts;
using Closeout.Screens.Steps;
using Closeout.Shifts.Steps;

namespace Closeout.Screens.Forms;

/// <summary>
/// Close a van out for somebody: what was not answered is unchanged, one entry each, then the lead's name. The lead is looked
/// at first, so that nothing is half done; and a van that is counted at another kiosk is not confirmed under its hands.
/// </summary>
public sealed record CloseForAct(SignFor Sign) : Act
{
    public override Reply Do(World world, Screen from) => Close(world) is { } refusal
        ? from.Refused(world.Scene, Sign, refusal)
        : from.Recorded(world.Scene, [Sign], T($"{Sign.Van} is closed out for {Sign.For}; the wall says so."));

    private Refusal? Close(World world)
    {
        var desk = world.Desk;
        if (world.Seats?.Take(Sign.Van, desk.Now) is { } holder)
            return new("walked-elsewhere", world.WalkedAt(Sign.Van, holder));

        if ((Sign.NotAllowed(desk.Depot) ?? ComeIn(world)) is { } refused)
            return refused;

        while (desk.Depot.Shift(Sign.Van) is { Step: < Step.SignOff } shift)
        {
            if (desk.Record(StepPages.Of(shift.Step).Unchanged(Sign.Van)) is { } refusal)
                return refusal;
        }

        return desk.Record(Sign);
    }

    private Refusal? ComeIn(World world) => world.Desk.Depot.Shift(Sign.Van) is null
        ? world.Desk.Record(new ComeIn(Sign.Van, Sign.For))
        : null;
}

/// <summary>Excuse vans, unless somebody is just counting one of them at another kiosk, or one may not be: then none is.</summary>
public sealed record ExcuseAct(IReadOnlyList<ExplainVan> Commands) : Act
{
    public override Reply Do(World world, Screen from)
    {
        if (Commands.Select(c => world.Elsewhere(c.Van)).FirstOrDefault(w => w is not null) is { } walked)
            return new(from, walked);

        return Commands.FirstOrDefault(c => c.Decide(world.Desk.Depot).Refusal is not null) is { } refused
            ? from.Refused(world.Scene, refused, refused.Decide(world.Desk.Depot).Refusal!)
            : new RecordAct(Commands, Commands.Count == 1 ? T("Recorded.") : T($"{Commands.Count} vans are excused.")).Do(world, from);
    }
}
