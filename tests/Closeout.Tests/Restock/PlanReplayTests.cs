using Closeout.DayBook;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Tests.Store;
using Closeout.Turning;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>The plan is nothing but a function of the book.</summary>
public sealed class PlanReplayTests : IDisposable
{
    private readonly TempFolder temp = new();
    private readonly Book book;

    public PlanReplayTests() => book = Book.New(Folder, SmallDay.Given(
        ("bookings.csv", "date,van,visit_kind,visits\n2026-03-05,B1,install,3\n2026-03-05,B2,install,2\n2026-03-05,B2,day,1\n"),
        ("usage.csv", "date,van,visit,visit_kind,item,units\n2026-03-03,B1,v1,install,LAMP,9\n2026-03-03,B1,v2,install,LAMP,4\n2026-03-02,B2,v3,install,HEAD,2\n2026-03-02,B2,v4,install,,0\n"),
        ("orders.csv", "item,cartons,due\nHEAD,2,2026-03-09\n")).FirstPage(false), SmallBook.At(0));

    private BookFolder Folder => new(temp["book"]);

    [Fact]
    public void Closed_and_opened_again_the_book_gives_the_same_plan()
    {
        Same(Book.Open(Folder));
        SmallBook.Tell(book, new ComeIn(SmallBook.B1, new("T1"))).Should().BeNull();
        SmallBook.Count(book, SmallBook.B1, kept: 4).Should().BeNull();
        Same(Book.Open(Folder));
    }

    [Fact]
    public void A_page_carries_forward_all_that_the_plan_needs()
    {
        SmallBook.Tell(book, new ComeIn(SmallBook.B2, new("T1"))).Should().BeNull();
        foreach (var command in new ICommand[] { new ConfirmLeftovers(SmallBook.B2), new ConfirmCardboard(SmallBook.B2), new LogMileage(SmallBook.B2, 2050, Sure: true), new ConfirmDamage(SmallBook.B2, true), new ConfirmKit(SmallBook.B2), new CheckWeekly(SmallBook.B2, null, 4, true), new Sign(SmallBook.B2, new("T1")) })
        {
            SmallBook.Tell(book, command);
        }

        book.Depot.Shift(SmallBook.B2)!.IsClosed.Should().BeTrue();
        var (before, tonight) = (RestockPlan.For(book.Depot), VisitHistory.Of(book.Depot));
        var next = Depot.Open(new(99, SmallBook.At(9), NextPage.After(book.Depot, SmallDay.Date.AddDays(1))));
        foreach (var line in before.Lines)
        {
            foreach (var kind in new[] { "install", "day" })
            {
                VisitHistory.Of(next).UseOf(new(kind), line.Item.Code).Should().Be(tonight.UseOf(new(kind), line.Item.Code));
            }
        }

        WorkingDays.Of(next).Count.Should().Be(2);
        next.Planning.Bookings.Should().BeEquivalentTo(book.Depot.Planning.Bookings);
    }

    private void Same(Book opened)
    {
        RestockPlan.For(opened.Depot).Lines.Should().NotBeEmpty();
        SomeDepot.Text(RestockPlan.For(opened.Depot)).Should().Equal(SomeDepot.Text(RestockPlan.For(book.Depot)));
    }

    public void Dispose() => temp.Dispose();
}
