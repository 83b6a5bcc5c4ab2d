using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Shifts;

/// <summary>The answer to a van's open step that says nothing new: as booked, as expected, not driven, no damage, all there, clean.</summary>
public static class AsBooked
{
    public static Command Answer(Depot depot, Code<Van> van) => depot.Shift(van)!.Step switch
    {
        Step.Leftovers => new ConfirmLeftovers(van),
        Step.Cardboard => new ConfirmCardboard(van),
        Step.Mileage => new LogMileage(van, null),
        Step.Damage => new ConfirmDamage(van, None: false),
        Step.Kit => new ConfirmKit(van),
        Step.Weekly => new CheckWeekly(van, null, 0, Clean: true),
        var step => throw new InvalidOperationException($"{step} cannot be confirmed as booked"),
    };
}
