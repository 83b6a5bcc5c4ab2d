using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Cardboard;

/// <summary>Boxes over random evenings: none appears from nowhere and none is lost on paper.</summary>
public sealed class BoxLaws
{
    private static readonly Gen<YardDeed[][]> Evenings = AnyYard.Boxes.Array[0, 40].Array[1, 5];

    /// <summary>Of every van and item, and of the depot: expected = flattened + missing + written off - found beyond what was missing.</summary>
    [Fact]
    public void What_was_expected_is_flattened_missing_or_written_off() => Evenings.Holds(evenings =>
    {
        var (depot, sums) = (AnyYard.Afternoon(), new Dictionary<(Code<Van>?, Code<Item>), (int Expected, int Flattened, int WrittenOff, int Found, int Missing)>());
        foreach (var deeds in evenings)
        {
            depot = deeds.Aggregate(depot, AnyYard.After);
            foreach (var key in Keys(depot))
            {
                var (van, item) = key;
                var row = Counts(depot, van) ? Rows(depot, van).Where(r => r.Item == item).Select(r => (r.Expected, r.Flattened)).SingleOrDefault() : default;
                var off = depot.Yard.WrittenOff.Where(w => w.Van == van && w.Item == item).Sum(w => w.Boxes);
                var (expected, flattened, written, found, missing) = sums.GetValueOrDefault(key);
                var net = missing + row.Expected - row.Flattened - off;
                sums[key] = (expected + row.Expected, flattened + row.Flattened, written + off, found + Math.Max(0, -net), Math.Max(0, net));
            }

            depot = depot.NextDay();
            foreach (var (key, s) in sums)
            {
                MissingOf(depot, key).Should().Be(s.Missing, $"of {key} on {depot.Date}");
                (s.Flattened + s.Missing + s.WrittenOff - s.Found).Should().Be(s.Expected, $"of {key} on {depot.Date}");
            }
        }
    });

    [Fact]
    public void Totals_by_day_week_month_van_and_item_all_add_up_to_the_same() => Gen.Select(Evenings, Gen.Int[0, 5_000], Gen.Int[1, 40]).Holds((evenings, from, step) =>
    {
        var (depot, boxes) = (AnyYard.Afternoon(new DateOnly(2020, 1, 1).AddDays(from)), new List<DatedBoxes>());
        foreach (var deeds in evenings)
        {
            depot = deeds.Aggregate(depot, AnyYard.After);
            boxes.AddRange(RecyclingTotals.Tonight(depot));
            depot = depot.NextDay(depot.Date.AddDays(step));
        }

        foreach (var period in Enum.GetValues<Period>())
        {
            var totals = RecyclingTotals.By(period, Tiny.Settings, boxes);
            totals.Select(t => t.Name).Should().OnlyHaveUniqueItems().And.BeInAscendingOrder(StringComparer.Ordinal);
            (totals.Sum(t => t.Sum.Expected), totals.Sum(t => t.Sum.Flattened)).Should().Be((boxes.Sum(b => b.Row.Expected), boxes.Sum(b => b.Row.Flattened)), $"by {period}");
            totals.Sum(t => t.Sum.WeightLb).Should().BeApproximately(boxes.Sum(b => b.Row.WeightLb), 1e-9, $"by {period}");
            totals.Sum(t => t.Sum.VolumeCuYd).Should().BeApproximately(boxes.Sum(b => b.Row.WeightLb) / 106, 1e-9, $"by {period}");
            totals.Should().NotContain(t => t.From > t.To || t.Days < 1 || t.Days > t.To.DayNumber - t.From.DayNumber + 1);
        }
    });

    [Fact]
    public void The_random_evenings_miss_find_write_off_and_open_boxes()
    {
        var (kinds, missed, found) = (new HashSet<Type>(), 0, 0);
        Evenings.Holds(evenings =>
        {
            var depot = AnyYard.Afternoon();
            foreach (var deed in evenings.SelectMany(e => e))
            {
                if (AnyYard.Entry(depot, deed) is { } entry)
                {
                    kinds.Add(entry.GetType());
                    depot = depot.Take(entry);
                }
            }

            missed += depot.Setup.Vans.Sum(v => LostBoxes.Of(depot, v.Code).Sum(m => m.Boxes));
            found += CardboardTotals.Rows(depot).Count(r => r.Missing < 0);
        });

        kinds.Should().Contain([typeof(BoxesCounted), typeof(BoxesWrittenOff), typeof(DepotBoxesCounted), typeof(VanLoaded), typeof(CardboardConfirmed)]);
        (missed, found).Should().Match<(int, int)>(n => n.Item1 > 50 && n.Item2 > 50);
    }

    private static IEnumerable<(Code<Van>?, Code<Item>)> Keys(Depot depot) =>
        from van in depot.Setup.Vans.Select(v => (Code<Van>?)v.Code).Append(null)
        from item in depot.Setup.Items
        select (van, item.Code);

    /// <summary>A van's boxes count once its cardboard is confirmed; the depot's at once.</summary>
    private static bool Counts(Depot depot, Code<Van>? van) => van is not { } code || (depot.Shift(code)?.Answered.Contains(Step.Cardboard) ?? false);

    private static IEnumerable<BoxRow> Rows(Depot depot, Code<Van>? van) => van is { } code ? CardboardTotals.Rows(depot, code) : CardboardTotals.DepotRows(depot);

    private static int MissingOf(Depot depot, (Code<Van>? Van, Code<Item> Item) key) =>
        (key.Van is { } van ? depot.Van(van).MissingBoxes : depot.Yard.Carried.DepotBoxes).Where(m => m.Item == key.Item).Sum(m => m.Boxes);
}
