namespace Closeout.Tests.Screens;

/// <summary>A clock that stands still until it is told to go on.</summary>
internal sealed class FixedClock(int hour, int minute) : TimeProvider
{
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    private TimeSpan passed;

    public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2026, 11, 18, hour, minute, 0, TimeSpan.Zero) + passed;

    public void Pass(double seconds) => passed += TimeSpan.FromSeconds(seconds);
}
