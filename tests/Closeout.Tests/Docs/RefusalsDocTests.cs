using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>
/// docs/refusals.md says of every refusal what the program says, because its tables are made from the catalogues. To make them anew:
/// UPDATE_GOLDEN=1 dotnet test.
/// </summary>
public sealed class RefusalsDocTests
{
    [Fact]
    public void The_tables_of_refusals_say_what_the_program_says()
    {
        var page = File.ReadAllText(RefusalsDoc.Path).ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1" && page != RefusalsDoc.Renewed(page))
        {
            File.WriteAllText(RefusalsDoc.Path, page = RefusalsDoc.Renewed(page));
        }

        page.Should().Contain("<!-- made from the catalogues -->");
        page.Should().Be(RefusalsDoc.Renewed(page), "UPDATE_GOLDEN=1 dotnet test makes the tables anew");
    }

    [Fact]
    public void Every_refusal_is_in_one_table_only()
    {
        var page = File.ReadAllText(RefusalsDoc.Path).ReplaceLineEndings("\n").Split('\n');
        foreach (var (_, said) in RefusalsDoc.All)
        {
            page.Count(l => l.StartsWith($"`{said.Code}` |", StringComparison.Ordinal)).Should().Be(1, said.Code);
        }
    }

    [Fact]
    public void A_reason_is_given_only_for_a_refusal_that_there_is() =>
        RefusalReasons.Of.Keys.Should().BeSubsetOf(RefusalsDoc.All.Select(r => r.Said.Code));
}
