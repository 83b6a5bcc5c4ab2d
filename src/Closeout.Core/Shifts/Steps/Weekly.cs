using Closeout.Vans;

namespace Closeout.Shifts.Steps;

/// <summary>The longer check of the week.</summary>
/// <param name="NotInOrder">Parts that were not in order; each must have been reported as a damage there. Null: those that were.</param>
public sealed record CheckWeekly(
    Code<Van> Van, DateOnly? OilChangedOn, int Photos, bool Clean, IReadOnlyList<string>? NotInOrder = null) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Weekly;

    protected override Decision Decide(Depot depot, Shift shift)
    {
        if (OilChangedOn is { } oil && oil > depot.Date)
            return Refusal.DateAhead(T("The last oil change"), oil, depot.Date) with { About = "oil" };

        if (Given.Range(T("Photos"), Photos, 0, Refusal.MostAtOnce, "photos") is { } refused)
            return refused;

        var told = shift.Damages.Select(d => WalkRound.Find(d.Zone)).OfType<string>().ToHashSet();
        return (NotInOrder ?? []).FirstOrDefault(p => WalkRound.Find(p) is not { } known || !told.Contains(known)) is { } part
            ? Refusal.PartNotTold(part) with { About = part }
            : new WeeklyChecked(shift.Van, OilChangedOn, Photos, Clean, [.. WalkRound.Parts.Where(told.Contains)]);
    }
}
