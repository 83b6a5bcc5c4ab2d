using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>What tomorrow's plan is made from, and how the plans before were kept.</summary>
/// <param name="Use">Visit history of the planning window.</param>
/// <param name="ByVan">What visits report, by date and van.</param>
/// <param name="Counted">Days of vans without visit reports.</param>
/// <param name="Overrides">Changes of the plan that stand.</param>
/// <param name="Promises">What the plan promised for the business date.</param>
/// <param name="Kept">How the promises of the dates before were kept.</param>
/// <param name="AsBooked">The business date's bookings as they were when its page was opened.</param>
/// <param name="Booked">What was booked and made on earlier dates.</param>
/// <param name="Returned">Units that vans gave back on the evenings before and did not get again.</param>
/// <param name="Handled">The work of the evenings before.</param>
/// <param name="NotAboard">Items that no van had on the dates before.</param>
public sealed record PlanningState(
    ImmutableList<Booking> Bookings,
    ImmutableList<DailyUse> Use,
    ImmutableDictionary<(DateOnly Date, Code<Van> Van), VanUse> ByVan,
    ImmutableList<CountedDay> Counted,
    ImmutableList<Standing> Overrides,
    ImmutableList<Promise> Promises,
    ImmutableList<KeptPromises> Kept,
    ImmutableList<Booking> AsBooked,
    ImmutableList<BookedVan> Booked,
    ImmutableList<ReturnedUnits> Returned,
    ImmutableList<Handled> Handled,
    ImmutableList<NotAboard> NotAboard)
{
    /// <param name="date">The page's business date.</param>
    public static PlanningState Open(Carried carried, DateOnly date) => new(
        [.. carried.Bookings],
        [.. carried.Use],
        carried.ByVan.ToImmutableDictionary(v => (v.Date, v.Van)),
        [.. carried.Counted],
        [.. carried.Overrides],
        [.. carried.Promises],
        [.. carried.Kept],
        [.. carried.Bookings.Where(b => b.Date == date && b.Visits > 0)],
        [.. carried.Learned?.Booked ?? []],
        [.. carried.Learned?.Returned ?? []],
        [.. carried.Learned?.Handled ?? []],
        [.. carried.Learned?.NotAboard ?? []]);

    /// <summary>What an entry of the plan does.</summary>
    /// <exception cref="InvalidOperationException">The entry is impossible here.</exception>
    public PlanningState Evolve(PlanEntry entry, int number) => entry switch
    {
        PlanOverridden e => this with { Overrides = [.. Overrides.Where(o => !Replaces(e, o.Change)), new Standing(number, e)] },
        OverrideWithdrawn e when Overrides.Any(o => o.Number == e.Number) =>
            this with { Overrides = Overrides.RemoveAll(o => o.Number == e.Number) },
        BookingsMoved e => this with { Bookings = Moved(e) },
        _ => throw new InvalidOperationException("it cannot stand in the plan"),
    };

    /// <summary>After a day folder: the dates that it names are replaced.</summary>
    public PlanningState Loaded(DayFolderLoaded e) => this with
    {
        Bookings = [.. Bookings.Where(b => !e.BookingDates.Contains(b.Date)), .. e.Bookings],
        Use = [.. Use.Where(u => !e.UseDates.Contains(u.Date)), .. e.Use],
        ByVan = ByVan.RemoveRange(ByVan.Keys.Where(k => e.UseDates.Contains(k.Date)))
            .SetItems(e.ByVan.Select(v => KeyValuePair.Create((v.Date, v.Van), v))),
        Counted = Counted.RemoveAll(d => e.Reported.Contains(new VanDay(d.Date, d.Van))),
        Booked = Reported(e),
    };

    /// <summary>The days before, with what the folder says of visits that were made on them.</summary>
    private ImmutableList<BookedVan> Reported(DayFolderLoaded e)
    {
        var dates = e.UseDates.ToHashSet();
        if (!Booked.Exists(b => dates.Contains(b.Date)))
            return Booked;

        var made = (e.Made ?? []).ToDictionary(m => (m.Date, m.Van), m => m.Visits);
        return [.. Booked.Select(b => dates.Contains(b.Date) ? b with { Made = made.GetValueOrDefault((b.Date, b.Van)) } : b)];
    }

    /// <summary>A second change of the same thing replaces the first.</summary>
    private static bool Replaces(PlanOverridden change, PlanOverridden old) =>
        (change.Kind, change.Van, change.Item, change.Date) == (old.Kind, old.Van, old.Item, old.Date);

    /// <summary>The bookings with visits of one van on another; booked visits of a kind stay one line.</summary>
    private ImmutableList<Booking> Moved(BookingsMoved moved)
    {
        var bookings = Bookings.ToBuilder();
        foreach (var (kind, visits) in moved.Visits)
        {
            foreach (var (van, change) in new[] { (moved.From, -visits), (moved.To, visits) })
            {
                var at = bookings.FindIndex(b => b.Date == moved.Date && b.Van == van && b.Kind == kind);
                var now = (at < 0 ? 0 : bookings[at].Visits) + change;
                if (now < 0)
                    throw new InvalidOperationException($"{visits} visits {kind} of {van} were not booked");

                var booking = new Booking(moved.Date, van, kind, now);
                if (at < 0)
                    bookings.Add(booking);
                else
                    bookings[at] = booking;
            }
        }

        bookings.RemoveAll(b => b.Visits == 0 && b.Date == moved.Date && b.Van == moved.From);
        return bookings.ToImmutable();
    }
}
