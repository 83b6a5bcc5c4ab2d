using System.Reflection;
using Closeout.People;
using Closeout.Rules;
using Closeout.Tests.Restock;
using Closeout.Tests.Rules;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.People.TinyPeople;

namespace Closeout.Tests.People;

public sealed class PinRefusalTests
{
    public static TheoryData<int> Catalogue => [.. Enumerable.Range(0, PinRefusalCatalogue.All.Count)];

    [Theory]
    [MemberData(nameof(Catalogue))]
    public void A_refusal_is_met_and_is_one_short_line(int index)
    {
        var met = PinRefusalCatalogue.All[index];
        var refusal = met.When()!;
        refusal.Code.Should().Be(met.Code);
        refusal.AskAgain.Should().BeFalse();
        refusal.Text.Should().MatchRegex(@"^[^\n]{10,200}\.$");
    }

    [Fact]
    public void Every_refusal_of_a_PIN_is_in_the_catalogue_with_a_code_of_its_own()
    {
        typeof(PinRefusal).GetMethods(BindingFlags.Public | BindingFlags.Static).Where(m => m.ReturnType == typeof(Refusal)).Select(m => m.Name)
            .Should().NotBeEmpty().And.BeSubsetOf(PinRefusalCatalogue.All.Select(m => m.Factory));
        PinRefusalCatalogue.All.Select(m => (m.Factory, m.Code)).Concat(StockRefusalCatalogue.All.Select(m => (m.Factory, m.Code)))
            .Concat(RefusalCatalogue.All.Select(m => (m.Factory, m.Code))).Distinct().Select(m => m.Code).Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void Nobody_takes_a_first_PIN_a_lead_issues_it()
    {
        Tiny.Opened().Did(0, new FirstPin(Tiny.Lead, Known)).Pins.Of(Tiny.Lead).IsGood.Should().BeTrue();
        WithPins().Did(1, new ChangePin(Tiny.T1, Known, Known, false)).Pins.Of(Tiny.T1).Issued.Should().BeFalse();
        WithPins().Did(1, new IssuePin(Tiny.T2, Known, Tiny.Lead)).Pins.Of(Tiny.T2).Issued.Should().BeTrue();
    }

    [Fact]
    public void Once_every_lead_is_locked_a_first_PIN_is_given_again() =>
        WithPins().Wrong(10, "L1").Did(301, new FirstPin(Tiny.Lead, Known)).At(400, "L1").Should().BeNull();
}
