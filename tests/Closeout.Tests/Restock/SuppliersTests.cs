using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>Suppliers as they are; the worked example of docs/methods.md.</summary>
public class SuppliersTests
{
    private static readonly Code<Supplier> Skua = new("SKUA");

    [Fact]
    public void Four_of_ten_a_week_late_and_one_halved()
    {
        // Ten deliveries on record and ten that are added: D = 4 x 5 / 20 = 1, F = (9 + 0.5 + 10) / 20 = 0.975, t2 = (4 x 16 + 16 x 1) / 20 = 4.
        var record = SupplierRecord.Of([.. Enumerable.Range(0, 10).Select(n => (n < 4 ? 5 : 0, n == 9 ? 0.5 : 1.0))]);
        (record.Late, record.Fill, record.LateVariance, record.LateOnes).Should().Be((1, 0.975, 4, 4));

        // 2 a day, variance 2: over five days M = 2 x 6 = 12, V = 2 x 6 + 4 x 4 = 28.
        var demand = Reorder.Over(new(2, 2), 5, record);
        (demand.Mean, demand.Variance).Should().Be((12, 28));
        var item = Tiny.Lamp with { LeadDays = 5, ReviewDays = 5, MinOrderCartons = 1 };
        var order = Reorder.Of(item, new(2, 2), 0.95, 3, 10, record);
        order.Position.Should().Be(3 + 9.75);
        order.ReorderPoint.Should().Be(demand.Quantile(0.95));
        order.Cartons.Should().Be((int)Math.Ceiling((order.UpTo - 12.75) / 9.75));
    }

    [Fact]
    public void A_supplier_of_whom_nothing_is_known_delivers_whole_and_in_time()
    {
        foreach (var (lead, review, position) in from lead in Enumerable.Range(0, 9) from position in Enumerable.Range(-2, 40) select (lead, lead + 3, position))
        {
            var item = Tiny.Lamp with { LeadDays = lead, ReviewDays = review, UnitsPerCarton = 7 };
            var whole = SupplierRecord.Of([.. Enumerable.Range(0, 30).Select(_ => (0, 1.0))]);
            Reorder.Of(item, new(1.7, 4.1), 0.9, position, 14, whole).Should().Be(Reorder.Of(item, new(1.7, 4.1), 0.9, position + 14));
        }
    }

    [Fact]
    public void Working_days_are_those_on_which_somebody_is_rostered()
    {
        // Monday to Saturday here: Friday to the next Wednesday are Saturday, Monday, Tuesday, Wednesday.
        new WorkingWeek(Tiny.Setup).Between(Tiny.Friday, Tiny.Friday.AddDays(5)).Should().Be(4);
        new WorkingWeek(Tiny.Setup).Between(Tiny.Friday, Tiny.Monday).Should().Be(0);
        new WorkingWeek(Tiny.Setup with { Crew = [] }).Between(Tiny.Friday, Tiny.Friday.AddDays(7)).Should().Be(5);
    }

    [Fact]
    public void The_first_receipt_of_each_line_is_on_record_and_a_rest_that_does_not_come_is_ordered_no_longer()
    {
        var depot = Tiny.Opened(setup: Tiny.Setup with { Items = [Tiny.Lamp with { Supplier = Skua }, Tiny.Shower, Tiny.Wrap] })
            .Stocked(s => s with { Orders = [new(Tiny.Lamp.Code, 6, Tiny.Monday)] });
        var part = depot.Did(new ReceiveDelivery(Tiny.Lamp.Code, 4, Tiny.T1));
        part.Stock.Receipts.Should().Equal(new Receipt(Tiny.Wednesday, Skua, Tiny.Lamp.Code, 6, 4, Tiny.Monday));
        part.Stock.Orders.Should().Equal(new Order(Tiny.Lamp.Code, 2, Tiny.Monday, Arrived: 4));
        part.Did(new ReceiveDelivery(Tiny.Lamp.Code, 2, Tiny.T1)).Stock.Receipts.Should().HaveCount(1, "the second delivery of a line says nothing more");

        var broken = depot.Did(new ReceiveDelivery(Tiny.Lamp.Code, 4, Tiny.T1, RestComes: false));
        broken.Stock.Orders.Should().BeEmpty();
        var record = Suppliers.Of(broken).Of(Skua);
        record.Delays.Should().Equal(2);
        record.Fill.Should().BeApproximately((10 + 4 / 6.0) / 11, 1e-12);
        Suppliers.Of(broken.Next(TinyDesk.Thursday)).Of(Skua).Should().BeEquivalentTo(record, "the next page knows it");
    }

    [Fact]
    public void A_delivery_taken_back_was_never_on_record()
    {
        var depot = Tiny.Opened().Stocked(s => s with { Orders = [new(Tiny.Lamp.Code, 6, Tiny.Monday)] });
        var came = depot.Did(new ReceiveDelivery(Tiny.Lamp.Code, 4, Tiny.T1, RestComes: false));
        var back = came.Did(new Closeout.Leads.TakeBack(came.Number, null, "another depot's", Tiny.T1));
        back.Stock.Receipts.Should().BeEmpty();
        back.Stock.Orders.Should().Equal(new Order(Tiny.Lamp.Code, 6, Tiny.Monday));
    }

    [Fact]
    public void A_year_ago_is_forgiven()
    {
        Depot(Tiny.Wednesday.AddDays(-400)).Delays.Should().BeEmpty();
        Depot(Tiny.Wednesday.AddDays(-200)).Delays.Should().HaveCount(1);

        static SupplierRecord Depot(DateOnly on) => Suppliers.Of(Tiny.Opened().Stocked(s => s with
        {
            Receipts = [new(on, null, Tiny.Lamp.Code, 5, 5, on.AddDays(-7))],
        })).Of(null);
    }
}
