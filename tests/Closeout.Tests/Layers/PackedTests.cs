using System.Text.RegularExpressions;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Layers;

/// <summary>What is run against the packed program is told by a mark, see <see cref="Built"/>.</summary>
public sealed partial class PackedTests
{
    [Fact]
    public void Tests_that_start_the_program_have_the_mark() =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "tests", "Closeout.Tests"), "*Tests.cs", SearchOption.AllDirectories)
            .Where(f => File.ReadAllText(f) is var code && Starting().IsMatch(code) && !code.Contains("[Trait(Built.Starts, \"closeout\")]", StringComparison.Ordinal))
            .Select(Path.GetFileName).Should().BeEmpty();

    [GeneratedRegex(@"Started\.Closeout|\bCommandsInOne\b|Built\.Closeout|\bKioskInTerminal\b")]
    private static partial Regex Starting();
}
