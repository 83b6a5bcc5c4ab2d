using Closeout.Vans;

namespace Closeout.Shifts.Steps;

/// <summary>The van was opened by mistake, and nothing is recorded of it yet.</summary>
public sealed record SendBack(Code<Van> Van) : CloseoutCommand(Van)
{
    public override Step? Step => null;

    protected override Decision Decide(Depot depot, Shift shift) =>
        shift.IsUntouched ? new VanSentBack(shift.Van) : Refusal.HasAnswers(depot.Setup.Van(shift.Van));
}

/// <summary>The van is back.</summary>
public sealed record ComeIn(Code<Van> Van, Code<Technician> Technician) : ICommand
{
    public Decision Decide(Depot depot)
    {
        if (depot.Setup.Find(Van) is not { } van)
            return Refusal.NoSuchVan(Van);

        if (depot.Shift(van.Code) is { } shift)
            return Refusal.AlreadyIn(van, shift);

        return depot.Setup.Find(Technician) is { } technician
            ? new VanCameIn(van.Code, technician.Code, IsWeeklyDue(depot, van, technician), SpotCount.Choose(depot, van.Code),
                HandoverDue: depot.Setup.Questions.Count > 0)
            : Refusal.NoSuchTechnician(Technician) with { About = "technician" };
    }

    private static bool IsWeeklyDue(Depot depot, Van van, Technician technician) =>
        WeeklyCheck.IsDue(technician.Workdays, depot.Date, depot.Van(van.Code).WeeklyCheckedOn);
}
