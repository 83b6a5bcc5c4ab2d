using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Tests.Cardboard;
using Closeout.Tests.Leads;
using Closeout.Tests.Restock;
using Closeout.Tests.Rules;
using Closeout.Tests.Vans;
using FluentAssertions;

namespace Closeout.Tests.Shifts;

/// <summary>How a refusal is met.</summary>
/// <param name="Factory">The method that makes it, of <see cref="Refusal"/>, <see cref="StockRefusal"/>, <see cref="YardRefusal"/> or <see cref="LeadRefusal"/>.</param>
/// <param name="Code">The stable code that people and files may quote.</param>
/// <param name="When">The command.</param>
public sealed record Met(string Factory, string Code, Func<Depot> Given, ICommand When)
{
    /// <summary>All catalogues.</summary>
    public static IReadOnlyList<Met> All { get; } =
        [.. RefusalCatalogue.All, .. StockRefusalCatalogue.All, .. YardRefusalCatalogue.All, .. VanRefusalCatalogue.All, .. LeadRefusalCatalogue.All];

    /// <summary>The refusal; nothing is recorded.</summary>
    public Refusal Refused()
    {
        var decision = When.Decide(Given());
        decision.Entry.Should().BeNull($"{When} is not lawful");
        return decision.Refusal!;
    }

    public override string ToString() => $"{Code}: {When}";
}
