using Closeout.Facts;
using Closeout.Files;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

public sealed class UsedUnitsTests
{
    /// <summary>A file may name visits and items in any order, and a visit may have very many.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(9_000)]
    public void Units_of_a_visit_and_item_add_up_however_many_lines_stand_between(int count)
    {
        var items = Items(count);
        var used = new UsedUnits(items);
        for (var round = 1; round <= 2; round++)
        {
            for (var item = 0; item < count; item++)
            {
                used.By(0, item) += round;
                used.By(1, count - 1 - item) += 10 * round;
            }
        }

        used.Sums([0]).Should().HaveCount(count).And.OnlyContain(u => u.Sum == 3 && u.SumOfSquares == 9).And.BeInAscendingOrder(u => u.Item);
        used.Sums([0, 1]).Should().HaveCount(count).And.OnlyContain(u => u.Sum == 33 && u.SumOfSquares == 909);
        used.Sums([2]).Should().BeEmpty("that visit used nothing");
    }

    [Fact]
    public void A_visit_of_very_many_items_is_added_up_in_a_moment()
    {
        const int Many = 200_000;
        var used = new UsedUnits(Items(Many));

        Worked.Over(() =>
        {
            for (var line = 0; line < 2 * Many; line++)
            {
                used.By(0, line % Many)++;
            }
        }).Should().BeLessThan(TimeSpan.FromSeconds(10));

        used.Sums([0]).Should().OnlyContain(u => u.Sum == 2);
    }

    private static Known<Item> Items(int count)
    {
        var items = new Known<Item>("items.csv", null);
        for (var i = 0; i < count; i++)
        {
            items.Add(new($"I{i}"));
        }

        return items;
    }
}
