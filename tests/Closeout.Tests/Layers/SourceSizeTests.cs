using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Layers;

/// <summary>What reads well: short files, short lines. The numbers are the house's own.</summary>
public sealed class SourceSizeTests
{
    private const int MostLines = 200;
    private const int MostColumns = 140;

    private static readonly IReadOnlyList<string> Files =
    [
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !Path.GetRelativePath(Repository.Root, f).Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin")),
    ];

    [Fact]
    public void No_source_file_is_longer_than_200_lines() =>
        Files.Where(f => File.ReadLines(f).Count() > MostLines).Select(Path.GetFileName).Should().BeEmpty();

    [Fact]
    public void No_line_is_wider_than_140_columns() =>
        Files.SelectMany(f => File.ReadLines(f).Index().Where(l => l.Item.Length > MostColumns).Select(l => $"{Path.GetFileName(f)}:{l.Index + 1}")).Should().BeEmpty();

    [Fact]
    public void All_of_the_source_is_looked_at() => Files.Should().HaveCountGreaterThan(250);
}
