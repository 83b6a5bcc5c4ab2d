using System.Text.RegularExpressions;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>
/// The pictures in README.md and docs/ are copies of golden files, each under a comment that names its file. So no page shows a
/// screen that the program does not have. To copy them anew: UPDATE_GOLDEN=1 dotnet test, twice, for the screens come first.
/// </summary>
public sealed partial class PicturesTests
{
    public static TheoryData<string> Pages =>
    [
        "README.md", "DEVELOPERS.md",
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories)
            .Select(p => Path.GetRelativePath(Repository.Root, p).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_picture_is_the_golden_file_that_it_names(string page)
    {
        var path = Path.Combine(Repository.Root, page);
        var text = File.ReadAllText(path).ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
        {
            var renewed = Picture().Replace(text, m => $"{m.Groups["head"].Value}{Golden(m.Groups["file"].Value)}```");
            if (renewed != text)
                File.WriteAllText(path, text = renewed);
        }

        foreach (Match picture in Picture().Matches(text))
        {
            picture.Groups["text"].Value.Should().Be(Golden(picture.Groups["file"].Value), $"{page} shows {picture.Groups["file"].Value}");
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_text_picture_names_a_golden_file(string page)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, page)).ReplaceLineEndings("\n");
        var pictures = Picture().Count(text);
        Regex.Count(text, "^```text", RegexOptions.Multiline).Should().Be(pictures, "a block of text is a picture of a screen, under a comment that names its file");
        Regex.Count(text, "^<!-- screen:", RegexOptions.Multiline).Should().Be(pictures, "the picture stands right below the comment");
    }

    private static string Golden(string file) => File.ReadAllText(Path.Combine(Repository.Root, file)).ReplaceLineEndings("\n").TrimEnd('\n') + "\n";

    [GeneratedRegex("^(?<head><!-- screen: (?<file>[^ ]+) -->\n```text\n)(?<text>.*?)```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Picture();
}
