using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Turning;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>Laws of holds, incidents, boxes and other waste over random evenings with leads and people in the yard among the technicians.</summary>
public sealed class DeskLaws
{
    private static readonly Code<Van>[] Vans = [Tiny.B1, Tiny.B2, Tiny.B3];

    [Fact]
    public void Holds_that_were_lifted_hold_no_longer_and_one_put_on_stands() => Watch((before, after, entry) =>
    {
        switch (entry)
        {
            case HoldsLifted e:
                Readiness.Standing(after, e.Van).Should().BeEmpty();
                e.Reasons.Should().Equal(Readiness.Standing(before, e.Van).Select(h => h.Reason));
                Incidents.Open(after, e.Van).Select(i => i.Number).Should().Equal(Incidents.Open(before, e.Van).Select(i => i.Number), "lifted is not closed");
                break;
            case HoldPlaced e:
                Readiness.Standing(after, e.Van).Select(h => h.Reason).Should().Contain(e.Reason).And.OnlyHaveUniqueItems();
                break;
        }
    });

    [Fact]
    public void A_van_is_held_by_its_unsafe_and_undrivable_incidents_and_by_nothing_of_another_van() => Watch((before, after, entry) =>
    {
        foreach (var van in Vans)
        {
            var holds = Readiness.Standing(after, van).Select(h => h.Reason).ToList();
            foreach (var incident in Incidents.Open(after, van))
            {
                var placed = after.Vans.Placed.Any(p => p.Van == van && p.Reason == Incidents.Words(incident)) && !Readiness.Lifted(after, van).Contains(Incidents.Words(incident));
                holds.Contains(Incidents.Words(incident)).Should().Be(placed || (!incident.Lifted && (incident.Severity == Severity.Unsafe || !incident.Drivable)));
            }

            if (OfVan(entry) is { } of && of != van)
            {
                holds.Should().Equal(Readiness.Standing(before, van).Select(h => h.Reason), $"{entry} is of {of}");
            }
        }
    });

    [Fact]
    public void Incidents_are_numbered_over_the_whole_book_and_each_is_open_closed_or_withdrawn() => Watch((before, after, entry) =>
    {
        IncidentLog.Of(after).Select(i => i.Incident.Number).Should().Equal(Enumerable.Range(1, after.Vans.Incidents), "one more each, and none is lost");
        if (entry is IncidentClosed closed)
        {
            Incidents.Open(before, closed.Van).Should().Contain(i => i.Number == closed.Number);
            Incidents.Open(after, closed.Van).Should().NotContain(i => i.Number == closed.Number);
        }
    });

    [Fact]
    public void What_came_home_is_in_the_collecting_boxes_or_was_shipped() => Watch((_, after, _) =>
    {
        foreach (var stream in WasteStream.All)
        {
            var carried = after.Yard.Carried.Collecting.Where(b => b.Stream == stream.Code).Sum(b => b.Amount);
            var tonight = after.Shifts.Values.Sum(s => s.StreamOf(stream.Code));
            var shipped = after.Yard.Shipped.Where(s => s.Stream == stream.Code).Sum(s => s.Amount);
            (after.Yard.AmountOf(stream.Code) + shipped).Should().Be(carried + tonight);
        }

        after.Yard.Collecting.Values.Should().NotContain(b => b.Amount <= 0 || b.StartedOn > after.Date);
    });

    [Fact]
    public void Boxes_missing_are_never_fewer_than_none_and_no_more_are_written_off_than_were_missing() => Watch((before, after, entry) =>
    {
        Missing(after).Should().NotContain(m => m.Boxes.Boxes <= 0 || m.Boxes.Since > after.Date);
        if (entry is BoxesWrittenOff off)
        {
            Boxes(after, off.Van, off.Item).Should().Be(Boxes(before, off.Van, off.Item) - off.Boxes);
        }
    });

    [Fact]
    public void The_container_holds_what_was_flattened_since_it_was_emptied() => Watch((before, after, entry) =>
    {
        Container.LoadedLb(after).Should().BeGreaterThanOrEqualTo(0);
        if (entry is ContainerEmptied)
        {
            Container.LoadedLb(after).Should().BeApproximately(0, 1e-9);
            Container.EmptiedOn(after).Should().Be(after.Date);
        }
        else if (before.Yard.Emptied.IsEmpty)
        {
            Container.LoadedLb(after).Should().BeApproximately(200 + CardboardTotals.Rows(after).Sum(r => r.WeightLb), 1e-9);
        }
    });

    [Fact]
    public void The_next_page_goes_on_with_the_same_holds_incidents_boxes_and_waste()
    {
        var (held, open, missing) = (0, 0, 0);
        AnyEvening.Whole.Holds(acts =>
        {
            var depot = Played(acts);
            var next = Depot.Open(new Recorded(depot.Number + 1, Tiny.FiveOClock.AddDays(1), NextPage.After(depot, depot.Date.AddDays(1))));

            foreach (var van in Vans)
            {
                Readiness.Standing(next, van).Should().BeEquivalentTo(Readiness.Standing(depot, van));
                Incidents.Open(next, van).Should().Equal(Incidents.Open(depot, van));
                LostBoxes.Of(next, van).Should().Equal(LostBoxes.Of(depot, van));
                held += Readiness.Standing(next, van).Count;
                open += Incidents.Open(next, van).Count;
            }

            LostBoxes.OfDepot(next).Should().Equal(LostBoxes.OfDepot(depot));
            next.Yard.Collecting.Values.Should().BeEquivalentTo(depot.Yard.Collecting.Values);
            Container.LoadedLb(next).Should().BeApproximately(Container.LoadedLb(depot), 1e-9);
            next.Vans.Incidents.Should().Be(depot.Vans.Incidents);
            next.Planning.Bookings.Should().Equal(depot.Planning.Bookings.Where(b => b.Date > depot.Date));
            missing += Missing(next).Count();
        });

        new[] { held, open, missing }.Should().OnlyContain(n => n > 100, "the law is about something");
    }

    [Fact]
    public void Moved_bookings_are_as_many_as_before() => Watch((before, after, entry) =>
    {
        if (entry is BookingsMoved moved)
        {
            after.Planning.Bookings.GroupBy(b => (b.Date, b.Kind)).Select(g => (g.Key, g.Sum(b => b.Visits))).Should()
                .BeEquivalentTo(before.Planning.Bookings.GroupBy(b => (b.Date, b.Kind)).Select(g => (g.Key, g.Sum(b => b.Visits))));
            after.Planning.Bookings.Should().NotContain(b => b.Visits <= 0);
        }
    });

    private static Code<Van>? OfVan(Entry entry) => entry switch
    {
        VanEntry e => e.Van,
        HoldsLifted e => e.Van,
        HoldPlaced e => e.Van,
        IncidentClosed e => e.Van,
        VanExplained e => e.Van,
        _ => null,
    };

    private static IEnumerable<(Code<Van>? Van, MissingBoxes Boxes)> Missing(Depot depot) =>
        Vans.SelectMany(v => LostBoxes.Of(depot, v).Select(m => ((Code<Van>?)v, m))).Concat(LostBoxes.OfDepot(depot).Select(m => ((Code<Van>?)null, m)));

    private static int Boxes(Depot depot, Code<Van>? van, Code<Item> item) => Missing(depot).Where(m => m.Van == van && m.Boxes.Item == item).Sum(m => m.Boxes.Boxes);

    private static Depot Played(IEnumerable<Asking> acts) =>
        acts.Aggregate(AnyEvening.Afternoon(), (depot, act) => act.On(depot).Entry is { } entry ? depot.Take(entry) : depot);

    /// <summary>Plays random evenings and looks at every entry.</summary>
    private static void Watch(Action<Depot, Depot, Entry> look) => AnyEvening.Whole.Holds(acts =>
    {
        var depot = AnyEvening.Afternoon();
        foreach (var act in acts)
        {
            if (act.On(depot).Entry is { } entry)
            {
                var after = depot.Take(entry);
                look(depot, after, entry);
                depot = after;
            }
        }
    });
}
