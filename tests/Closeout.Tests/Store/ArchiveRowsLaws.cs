using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Store;
using Closeout.Tests.Cardboard;
using Closeout.Turning;
using Closeout.Vans;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>The archive's rows of boxes, miles, waste, incidents and pictures are what the pages fold to, however they came into it.</summary>
public sealed class ArchiveRowsLaws
{
    private static readonly Gen<YardDeed> Deeds = Gen.Frequency(
        (4, Gen.OneOf(Tiny.B1, Tiny.B2, Tiny.B3).Select(v => (YardDeed)new GoOn(v))), (4, AnyYard.Boxes), (2, AnyYard.Waste), (3, AnyYard.Vehicles), (1, AnyYard.Pickups));

    /// <summary>Pages of deeds, each with whether the archive catches up right after it.</summary>
    private static readonly Gen<(YardDeed Deed, bool CatchUp)[][]> Pages =
        Gen.Select(Deeds, Gen.Frequency((5, Gen.Const(false)), (1, Gen.Const(true))), (d, c) => (d, c)).Array[5, 60].Array[1, 4];

    [Fact]
    public void Rows_are_what_the_pages_fold_to_caught_up_bit_by_bit_again_and_anew() => Pages.Holds(pages =>
    {
        using var temp = new TempFolder();
        var folder = new BookFolder(temp["book"]);
        var yard = YardCarried.Empty with { BoxDays = [new(Tiny.Monday.AddDays(-3), 5, 4, 2.5), new(Tiny.Monday, 3, 3, 1.5)], Collecting = [new(new("lamps"), Tiny.Monday, 2)] };
        var book = Book.New(folder, NextPage.After(AnyYard.Afternoon(Tiny.Monday, yard), Tiny.Wednesday), Tiny.FiveOClock);
        var archive = new Archive(folder);
        foreach (var deeds in pages)
        {
            foreach (var (deed, catchUp) in deeds)
            {
                book.Record(depot => AnyYard.Decide(depot, deed), Tiny.FiveOClock.AddMinutes(book.Depot.Number));
                if (catchUp)
                {
                    archive.CatchUp();
                }
            }

            book = book.Turned(NextPage.After(book.Depot, book.Date.AddDays(2)), Tiny.FiveOClock);
        }

        Agrees(archive, folder);
        archive.CatchUp();
        archive.CatchUp();
        Agrees(archive, folder);
        archive.MakeAnew();
        Agrees(archive, folder);
        Directory.Delete(folder.Archive, recursive: true);
        Agrees(new Archive(folder), folder);
    }, samples: 12);

    [Fact]
    public void A_span_of_dates_has_both_its_ends() => Pages.Holds(pages =>
    {
        using var temp = new TempFolder();
        var folder = new BookFolder(temp["book"]);
        var book = Book.New(folder, NextPage.After(AnyYard.Afternoon(Tiny.Monday), Tiny.Wednesday), Tiny.FiveOClock);
        foreach (var deeds in pages)
        {
            foreach (var (deed, _) in deeds)
            {
                book.Record(depot => AnyYard.Decide(depot, deed), Tiny.FiveOClock);
            }

            book = book.Turned(NextPage.After(book.Depot, book.Date.AddDays(1)), Tiny.FiveOClock);
        }

        var (archive, to) = (new Archive(folder), Tiny.Wednesday.AddDays(1));
        archive.Boxes(Tiny.Wednesday, to).Should().Equal(archive.Boxes(DateOnly.MinValue, DateOnly.MaxValue).Where(b => b.Date <= to));
        archive.Miles(to, to).Should().Equal(archive.Miles(DateOnly.MinValue, DateOnly.MaxValue).Where(m => m.Date == to));
        archive.Streams(to, DateOnly.MaxValue).Should().Equal(archive.Streams(DateOnly.MinValue, DateOnly.MaxValue).Where(s => s.Date >= to));
    }, samples: 4);

    [Fact]
    public void The_random_books_have_rows_of_every_kind_and_incidents_in_every_state()
    {
        var (rows, states) = (new int[5], new HashSet<IncidentState>());
        Pages.Holds(pages =>
        {
            var depots = new List<Depot>();
            var depot = AnyYard.Afternoon(Tiny.Monday);
            foreach (var deeds in pages)
            {
                depot = deeds.Aggregate(depot, (now, d) => AnyYard.After(now, d.Deed));
                depots.Add(depot);
                depot = depot.NextDay();
            }

            var told = Told(depots);
            int[] found = [told.Boxes.Count, told.Miles.Count, told.Streams.Count, told.Incidents.Count, told.Photos.Count];
            rows = [.. rows.Zip(found, (a, b) => a + b)];
            states.UnionWith(told.Incidents.Select(i => i.State));
        }, samples: 60);

        rows.Should().OnlyContain(n => n > 30);
        states.Should().BeEquivalentTo(Enum.GetValues<IncidentState>());
    }

    private static void Agrees(Archive archive, BookFolder folder)
    {
        var pages = folder.Dates.Select(d => PageReader.Read(folder.Page(d), default).Entries).ToList();
        var told = Told([.. pages.Select(Depot.Fold)]);
        var earlier = ((PageOpened)pages[0][0].Entry).Carried.Yard.BoxDays.Select(d => new DatedBoxes(d.Date, new(default, default, d.Expected, d.Flattened, d.WeightLb)));

        archive.Boxes(DateOnly.MinValue, DateOnly.MaxValue).Should().Equal(earlier.Concat(told.Boxes).OrderBy(b => b.Date).ThenBy(b => b.Row.Van).ThenBy(b => b.Row.Item));
        archive.Miles(DateOnly.MinValue, DateOnly.MaxValue).Should().Equal(told.Miles.OrderBy(m => m.Date).ThenBy(m => m.Van));
        archive.Streams(DateOnly.MinValue, DateOnly.MaxValue).Should().Equal(told.Streams.OrderBy(s => s.Date).ThenBy(s => s.Stream).ThenBy(s => s.Van));
        archive.Incidents().Should().Equal(told.Incidents);
        archive.Photos().Select(p => (p.Date, p.Photo)).Should().Equal(told.Photos);
        archive.Seen().Number.Should().Be(pages[^1][^1].Number);
    }

    /// <summary>What the pages say by themselves; of an incident the last page that tells of it.</summary>
    private static (List<DatedBoxes> Boxes, List<LoggedMiles> Miles, List<StreamDay> Streams, List<LoggedIncident> Incidents, List<(DateOnly, PhotoAttached)> Photos) Told(IReadOnlyList<Depot> depots) =>
    (
        [.. depots.SelectMany(RecyclingTotals.Tonight)],
        [.. depots.SelectMany(MileageLog.Of)],
        [.. from d in depots from s in d.Shifts.Values from a in s.Streams where a.Value > 0 select new StreamDay(d.Date, s.Van, a.Key, a.Value)],
        [.. depots.SelectMany(IncidentLog.Of).GroupBy(i => i.Incident.Number).Select(g => g.Last()).OrderBy(i => i.Incident.Number)],
        [.. from d in depots from p in d.Shifts.Values.SelectMany(s => s.Story).Where(e => e.Entry is PhotoAttached).OrderBy(e => e.Number) select (d.Date, (PhotoAttached)p.Entry)]
    );
}
