using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Turning;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.People.TinyPeople;

namespace Closeout.Tests.People;

/// <summary>A PIN ends when its owner's role changes or its owner leaves the crew, whatever the way.</summary>
public sealed class PinEndsTests
{
    private static readonly Setup Without = With(Tiny.Setup.Crew.Where(t => t.Code != Tiny.T1));
    private static readonly Setup AsLead = With(Tiny.Setup.Crew.Select(t => t.Code == Tiny.T1 ? t with { IsLead = true } : t));
    private static readonly Setup NoLead = With(Tiny.Setup.Crew.Select(t => t with { IsLead = false }));

    [Fact]
    public void Another_folder_with_the_same_crew_leaves_it() => HasPin(Loaded(WithPins(), Tiny.Setup), Tiny.T1).Should().BeTrue();

    [Fact]
    public void Whoever_becomes_a_lead_loses_it() => HasPin(Loaded(WithPins(), AsLead), Tiny.T1).Should().BeFalse();

    [Fact]
    public void Whoever_is_a_lead_no_longer_loses_it() => HasPin(Loaded(WithPins(), NoLead), Tiny.Lead).Should().BeFalse();

    [Fact]
    public void A_technician_who_was_gone_and_comes_back_as_a_lead_has_none() =>
        HasPin(Loaded(Loaded(WithPins(), Without), AsLead), Tiny.T1).Should().BeFalse("somebody else may have taken it");

    [Fact]
    public void So_it_is_when_the_folder_opens_the_next_business_date()
    {
        var gone = Turned(WithPins(), Without, Tiny.Wednesday.AddDays(1));

        HasPin(gone, Tiny.Lead).Should().BeTrue("nothing changed for the others");
        HasPin(Turned(gone, AsLead, Tiny.Friday), Tiny.T1).Should().BeFalse();
        HasPin(Turned(WithPins(), AsLead, Tiny.Friday), Tiny.T1).Should().BeFalse();
    }

    private static bool HasPin(Depot depot, Code<Technician> person) => depot.Pins.Of(person).Hash is not null;

    private static Setup With(IEnumerable<Technician> crew) => Tiny.Setup with { Crew = [.. crew] };

    private static DayGiven Given(Setup setup, DateOnly date) => new(date, setup, [], GivenBookings.None, GivenUse.None, null, []);

    private static Depot Loaded(Depot depot, Setup setup) => depot.Take(Given(setup, depot.Date).Loaded(depot));

    private static Depot Turned(Depot depot, Setup setup, DateOnly date) => Depot.Open(new(depot.Number + 1, Tiny.FiveOClock, Loading.NextPageWith(depot, Given(setup, date))));
}
