namespace Closeout.Tests.Screens;

/// <summary>A clock that stands still.</summary>
internal sealed class FixedClock(int hour, int minute) : TimeProvider
{
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => new(2026, 11, 18, hour, minute, 0, TimeSpan.Zero);
}
