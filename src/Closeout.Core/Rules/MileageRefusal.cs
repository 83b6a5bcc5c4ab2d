namespace Closeout.Rules;

/// <summary>Why an odometer reading or a fill is refused, or asked again.</summary>
public static class MileageRefusal
{
    /// <param name="instead">The reading that two swapped digits make of it, in the screen's units and in miles; null: none fits.</param>
    public static Refusal BelowStart(string end, string start, (string Shown, decimal Mi)? instead = null) => new(
        "odometer-below-start", T($"{end} is below this morning's {start}. Read the odometer again.{Swapped(instead)}"),
        AskAgain: true, instead?.Mi);

    /// <param name="usual">What the van usually does in a day; null: not known well enough.</param>
    public static Refusal TooFar(string end, string start, string distance, string? usual, (string Shown, decimal Mi)? instead = null) =>
        new("odometer-too-far",
            T($"From {start} to {end} is {distance} in one day{(usual is null ? "" : T($"; a typical day is {usual}"))}. Read the odometer "
                + $"again.{Swapped(instead)}"),
            AskAgain: true, instead?.Mi);

    public static Refusal TooFarForADay(string end, string start, string most) =>
        new("odometer-impossible",
            T(
                $"From {start} to {end} in one day is not possible; the limit is {most}. Read the odometer again. If {start} is wrong, a "
                    + $"lead corrects it: F7 on the wall, then O."));

    public static Refusal UsedNotDriven(int units) =>
        new("used-not-driven",
            T($"{units} {(units == 1 ? T("unit was") : T("units were"))} used tonight, but the van did not move. Read the odometer."),
            AskAgain: true);

    public static Refusal DrivenNotUsed(string distance, int visits) =>
        new("driven-not-used",
            T($"The van drove {distance} to {visits} {(visits == 1 ? T("visit") : T("visits"))}, but nothing was used. Check the "
                    + $"leftovers (PgUp)."),
            AskAgain: true);

    public static Refusal FueledNotDriven(string fuel) =>
        new("fueled-not-driven", T($"{fuel} was filled, but the van did not move. Read the odometer."), AskAgain: true);

    public static Refusal MoreThanTheTank(string fuel, string tank) =>
        new("more-than-the-tank", T($"{fuel} is more than the tank holds ({tank}). Read the slip again."), AskAgain: true);

    /// <param name="economy">What this fill makes of it.</param>
    /// <param name="usual">What the van does over several fills.</param>
    public static Refusal OddEconomy(string fuel, string economy, string usual) =>
        new("odd-economy", T($"{fuel} makes {economy}; this van does about {usual}. Read the slip and the odometer again."),
            AskAgain: true);

    public static Refusal WrongFuel(Van van, string grade) =>
        new("wrong-fuel",
            T(
                $"{van.Code} {van.Name} takes {van.Fuel}, not {grade}. Read the slip again. If it is in the tank, do not start the "
                    + $"engine: ask the shop."),
            AskAgain: true);

    private static string Swapped((string Shown, decimal Mi)? instead) => instead is { } i
        ? T($" Two digits may be swapped: {i.Shown} is in the field now, and Enter takes it.")
        : "";
}
