using System.Text.RegularExpressions;
using FluentAssertions;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>What a page points at is there: files, headings, and paths of the repository that stand in the text.</summary>
public sealed partial class LinksTests
{
    private static readonly MarkdownPipeline Markup =
        new MarkdownPipelineBuilder().UsePipeTables().UseAutoIdentifiers(AutoIdentifierOptions.GitHub).Build();

    public static TheoryData<string> Pages =>
        [.. ((IEnumerable<object[]>)PicturesTests.Pages).Select(p => (string)p[0]), "src/Closeout.Core/README.md", "sample-day/README.md"];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_relative_link_leads_to_a_file_and_a_heading_that_are_there(string page) =>
        Parsed(page).Descendants<LinkInline>().Select(l => l.Url!)
            .Where(u => !u.Contains("://", StringComparison.Ordinal) && !Leads(page, u))
            .Should().BeEmpty();

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_path_of_the_repository_in_the_text_is_there(string page) =>
        RepositoryPath().Matches(Read(page)).Select(m => m.Value.TrimEnd('.', '/')).Distinct()
            .Where(p => !Path.Exists(Path.Combine(Repository.Root, p)))
            .Should().BeEmpty();

    [Theory]
    [MemberData(nameof(Pages))]
    public void No_path_of_somebodys_machine_is_in_the_text(string page) =>
        MachinePath().Matches(Read(page)).Select(m => m.Value).Should().BeEmpty();

    private static bool Leads(string page, string url)
    {
        var parts = url.Split('#');
        var target = parts[0].Length == 0
            ? page
            : Path.GetRelativePath(Repository.Root, Path.Combine(Repository.Root, Path.GetDirectoryName(page)!, parts[0]));
        return Path.Exists(Path.Combine(Repository.Root, target))
            && (parts.Length == 1 || Parsed(target).Descendants<HeadingBlock>().Any(h => h.GetAttributes().Id == parts[1]));
    }

    private static MarkdownDocument Parsed(string page) => Markdown.Parse(Read(page), Markup);

    private static string Read(string page) => File.ReadAllText(Path.Combine(Repository.Root, page));

    [GeneratedRegex(@"(?<![\w/.-])(?:docs|src|tests|sample-day|\.ci)/[\w./-]+")]
    private static partial Regex RepositoryPath();

    [GeneratedRegex(@"(?<![\w./-])/(?:work|tmp|home|root|Users)/[\w./-]*")]
    private static partial Regex MachinePath();
}
