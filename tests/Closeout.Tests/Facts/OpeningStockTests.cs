using Closeout.Facts;
using Closeout.Files;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Facts;

/// <summary>stock.csv as the opening balances of a ledger.</summary>
public class OpeningStockTests
{
    [Fact]
    public void The_supplier_stands_against_all_of_it()
    {
        var ledger = Ledger.Carried(Read(Tiny.Lamp, "shelf,LAMP,3,", "bin,LAMP,,7", "B1,LAMP,2,5").Balances);
        (ledger.Units(Place.Shelf, Tiny.Lamp.Code), ledger.Units(Place.Bin, Tiny.Lamp.Code)).Should().Be((30, 7));
        ledger.Aboard(Tiny.B1, Tiny.Lamp).Should().Be(new Holding(2, 5));
        ledger.Units(Place.Supplier, Tiny.Lamp.Code).Should().Be(-62);
        ledger.Unbalanced.Should().BeEmpty();
    }

    [Fact]
    public void The_most_that_the_file_allows_is_read_or_told_and_never_breaks_loading()
    {
        var huge = Tiny.Lamp with { UnitsPerCarton = 100_000 };
        var read = FluentActions.Invoking(() => Read(huge, "shelf,LAMP,10000,", "B1,LAMP,10000,0", "B2,LAMP,10000,0"));
        read.Should().NotThrow();
    }

    private static (IReadOnlyList<Balance> Balances, Findings Findings) Read(Item item, params string[] rows)
    {
        var folder = Directory.CreateTempSubdirectory("closeout-tests-");
        try
        {
            File.WriteAllLines(Path.Combine(folder.FullName, "stock.csv"), ["place,item,cartons,loose", .. rows]);
            var (vans, items, findings) = (new Known<Van>("vans.csv", null), new Known<Item>("items.csv", null), new Findings());
            vans.Add(Tiny.B1);
            vans.Add(Tiny.B2);
            items.Add(item.Code);
            return (StockFile.Read(folder.FullName, vans, [item], items, findings), findings);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
