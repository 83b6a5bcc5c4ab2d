namespace Closeout.People;

/// <summary>How often a PIN may be tried. All of it follows from entries, so that it outlasts a restart of the program.</summary>
/// <remarks>
/// NIST SP 800-63B (revision 3), 5.2.2: at most 100 failures in a row; waits that grow. The ten are those of an activation
/// secret (revision 4 draft, 5.2.11): a PIN of six digits is weak against many tries. The waits, and the twenty at one
/// kiosk, are our own choice.
/// </remarks>
public static class PinTries
{
    /// <summary>The longest wait after a failure, in seconds: 1, 2, 4, 8, 16, then this.</summary>
    public const int LongestSeconds = 30;

    /// <summary>
    /// So long <see cref="KioskTries.Most"/> failures at one kiosk are counted together, and so long it rests after them.
    /// </summary>
    public static readonly TimeSpan Window = TimeSpan.FromMinutes(15);

    /// <summary>The wait after so many failures in a row.</summary>
    public static TimeSpan Wait(int failures) => failures switch
    {
        <= 0 => TimeSpan.Zero,
        > 5 => TimeSpan.FromSeconds(LongestSeconds),
        _ => TimeSpan.FromSeconds(1 << (failures - 1)),
    };

    /// <summary>
    /// Why the person's PIN is not even looked at now. Null: it is. A clock that was set back ends a wait; the ten in a row still count.
    /// </summary>
    public static Refusal? Now(Depot depot, Technician person, string kiosk, DateTimeOffset now)
    {
        var (own, here) = (depot.Pins.Of(person.Code), depot.Pins.At(kiosk));
        if (own.IsLocked)
            return PinRefusal.Locked(person, own.Failures);

        if (here.Failed.Count >= KioskTries.Most && here.Failed[^1] - here.Failed[^KioskTries.Most] <= Window
            && Left(here.Failed[^1], Window, now) is var pause && pause > TimeSpan.Zero)
        {
            return PinRefusal.KioskRests(kiosk, KioskTries.Most, Seconds(pause));
        }

        var waits = new List<(int Failures, TimeSpan Left)>();
        if (own.FailedAt is { } failedAt)
            waits.Add((own.Failures, Left(failedAt, Wait(own.Failures), now)));

        if (here.Failed.Count > 0)
            waits.Add((here.InARow, Left(here.Failed[^1], Wait(here.InARow), now)));

        var longest = waits.OrderByDescending(w => w.Left).FirstOrDefault();
        return longest.Left > TimeSpan.Zero ? PinRefusal.Wait(longest.Failures, Seconds(longest.Left)) : null;
    }

    /// <summary>Whether a PIN that fits clears anything: only then is it an entry.</summary>
    public static bool Clears(Depot depot, Code<Technician> person, string kiosk) =>
        depot.Pins.Of(person).Failures > 0 || depot.Pins.At(kiosk).InARow > 0;

    private static TimeSpan Left(DateTimeOffset since, TimeSpan wait, DateTimeOffset now) => now < since || now - since >= wait
        ? TimeSpan.Zero
        : wait - (now - since);

    /// <summary>Whole seconds, begun ones counted.</summary>
    private static int Seconds(TimeSpan left) => (int)Math.Ceiling(left.TotalSeconds);
}
