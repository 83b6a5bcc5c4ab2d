using Closeout.DayBook;
using Closeout.Vans;

namespace Closeout.Shifts;

/// <summary>The rules of lifting a hold. It says that a lead decided, and why; it does not say that the van is safe.</summary>
public static class HoldDesk
{
    public static Decision Lift(Depot depot, Van van, LiftHolds command)
    {
        if (depot.Setup.Find(command.Lead) is not { } lead)
        {
            return Refusal.NoSuchTechnician(command.Lead);
        }

        if (!lead.IsLead)
        {
            return Refusal.OnlyALead(lead, "lifts a hold");
        }

        var holds = Readiness.Of(depot, van).Holds;
        if (holds.Count == 0)
        {
            return Refusal.NotHeld(van);
        }

        var why = command.Why.Trim();
        return why.Length switch
        {
            0 => Refusal.NoWords("why the hold is lifted"),
            > Refusal.MostWords => Refusal.TooManyWords("why the hold is lifted", why.Length),
            _ => new HoldsLifted(van.Code, holds, why, lead.Code),
        };
    }
}
