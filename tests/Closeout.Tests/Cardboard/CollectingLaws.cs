using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Cardboard;

/// <summary>Collecting boxes over random evenings: nothing is in them that nobody counted, and their date is that of the first thing in them.</summary>
public sealed class CollectingLaws
{
    private static readonly Gen<YardDeed[][]> Evenings = AnyYard.Waste.Array[0, 25].Array[1, 5];

    [Fact]
    public void In_a_box_is_what_was_counted_less_what_was_shipped() => Evenings.Holds(evenings =>
    {
        var depot = AnyYard.Afternoon();
        var (counted, shipped) = (new Dictionary<Code<WasteStream>, decimal>(), new Dictionary<Code<WasteStream>, decimal>());
        foreach (var deeds in evenings)
        {
            depot = deeds.Aggregate(depot, AnyYard.After);
            foreach (var stream in AnyYard.Setup.Depot.Streams)
            {
                counted[stream] = counted.GetValueOrDefault(stream) + depot.Shifts.Values.Sum(s => s.StreamOf(stream));
                shipped[stream] = shipped.GetValueOrDefault(stream) + depot.Yard.Shipped.Where(s => s.Stream == stream).Sum(s => s.Amount);
                depot.Yard.AmountOf(stream).Should().Be(counted[stream] - shipped[stream]).And.BeGreaterThanOrEqualTo(0);
            }

            depot = depot.NextDay();
            depot.Yard.Collecting.Values.Should().NotContain(b => b.Amount <= 0);
            depot.Yard.Collecting.Keys.Should().BeEquivalentTo(counted.Keys.Where(s => counted[s] > shipped[s]));
        }
    });

    /// <summary>The date follows entry by entry: the first count above nothing gives it, an empty or shipped box has none.</summary>
    [Fact]
    public void Its_date_is_that_of_the_first_count_since_it_was_last_empty() => Evenings.Holds(evenings =>
    {
        var (depot, started) = (AnyYard.Afternoon(), new Dictionary<Code<WasteStream>, DateOnly>());
        foreach (var deeds in evenings)
        {
            foreach (var deed in deeds)
            {
                depot = AnyYard.After(depot, deed);
                foreach (var stream in AnyYard.Setup.Depot.Streams)
                {
                    if (depot.Yard.AmountOf(stream) == 0)
                    {
                        started.Remove(stream);
                    }
                    else
                    {
                        started.TryAdd(stream, depot.Date);
                    }
                }

                depot.Yard.Collecting.Values.Select(b => (b.Stream, b.StartedOn)).Should().BeEquivalentTo(started.Select(s => (s.Key, s.Value)));
            }

            depot = depot.NextDay();
        }
    });

    [Fact]
    public void What_is_shipped_says_what_was_in_it_and_since_when() => Evenings.Holds(evenings =>
    {
        var depot = AnyYard.Afternoon();
        foreach (var deeds in evenings)
        {
            foreach (var deed in deeds)
            {
                var before = depot;
                depot = AnyYard.After(depot, deed);
                if (depot.Yard.Shipped.Count > before.Yard.Shipped.Count)
                {
                    var shipped = depot.Yard.Shipped[^1];
                    before.Yard.Collecting[shipped.Stream].Should().Be(new CollectingBox(shipped.Stream, shipped.StartedOn, shipped.Amount));
                    depot.Yard.AmountOf(shipped.Stream).Should().Be(0);
                }
            }

            depot = depot.NextDay();
        }
    });

    [Fact]
    public void Parts_of_a_piece_are_refused_and_parts_of_a_pound_are_not() => Gen.Select(Gen.Int[-50, 1_000_200], Gen.OneOf("lamps", "film")).Holds(sample =>
    {
        var (tenths, stream) = sample;
        var amount = tenths / 10m;
        var lawful = amount >= 0 && amount <= (stream == "film" ? 2_000 : Refusal.MostPieces) && (stream == "film" || amount == Math.Truncate(amount));
        var depot = AnyYard.Afternoon().At(Tiny.B1, Step.Cardboard);
        (AnyYard.Entry(depot, new Say(new CountStream(Tiny.B1, new(stream), amount))) is not null).Should().Be(lawful, $"of {amount} {stream}");
    });

    [Fact]
    public void The_random_evenings_ship_boxes_and_count_down()
    {
        var (shipped, less) = (0, 0);
        Evenings.Holds(evenings =>
        {
            var depot = AnyYard.Afternoon();
            foreach (var deed in evenings.SelectMany(e => e))
            {
                var entry = AnyYard.Entry(depot, deed);
                less += entry is StreamCounted c && c.Amount < depot.Shift(c.Van)!.StreamOf(c.Stream) ? 1 : 0;
                shipped += entry is CollectingBoxShipped ? 1 : 0;
                depot = AnyYard.After(depot, deed);
            }
        });
        (shipped, less).Should().Match<(int, int)>(n => n.Item1 > 50 && n.Item2 > 50);
    }
}
