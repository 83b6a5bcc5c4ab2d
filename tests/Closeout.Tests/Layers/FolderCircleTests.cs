using Closeout.DayBook;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Layers;

public sealed class FolderCircleTests
{
    [Theory]
    [InlineData(typeof(Depot))]
    [InlineData(typeof(Desk))]
    public void No_folder_of_a_project_uses_one_that_uses_it(Type anyOf) => Uses.Circle(Uses.Of(anyOf)).Should().BeEmpty();

    [Fact]
    public void What_a_folder_uses_is_read_from_its_code_too()
    {
        Uses.Of(typeof(Depot)).Should().Contain(("Closeout.DayBook", "Closeout.Facts")).And.Contain(("Closeout.Turning", "Closeout.Restock"));
        Uses.Of(typeof(Desk)).Should().Contain(("Closeout.Store", "Closeout.Facts")).And.Contain(("Closeout.Commands", "Closeout.Store"));
    }

    [Fact]
    public void A_circle_is_told_by_its_folders_in_turn()
    {
        Uses.Circle([("a", "b"), ("b", "c"), ("c", "d"), ("d", "b"), ("c", "e")]).Should().Equal("b", "c", "d", "b");
        Uses.Circle([("a", "b"), ("b", "c"), ("a", "c")]).Should().BeEmpty();
    }
}
