using System.Text.RegularExpressions;
using Closeout.Files;
using Closeout.Screens.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>The quick start in docs/user-guide/setting-up.md, written out as its lines say, is a day folder that loads.</summary>
public sealed partial class QuickStartTests
{
    [Fact]
    public void The_folder_of_the_quick_start_loads_without_a_word()
    {
        using var temp = new TempFolder();
        var guide = File.ReadAllText(Path.Combine(Repository.Root, "docs", "user-guide", "setting-up.md"));
        var files = Line().Matches(guide);
        files.Should().HaveCount(7, "seven files must be there");
        foreach (Match file in files)
        {
            File.WriteAllText(Path.Combine(temp.Path, file.Groups["file"].Value), file.Groups["text"].Value.Replace("\\n", "\n"));
        }

        var day = DayFolder.Read(temp.Path, StepPages.Evening);

        day.Findings.Problems.Should().BeEmpty();
        day.Findings.Notes.Should().BeEmpty();
        day.Given!.Setup.Vans.Should().ContainSingle();
        day.Given.Setup.Crew.Should().ContainSingle(t => t.IsLead, "somebody must be able to issue a PIN");
    }

    [GeneratedRegex("^    printf '(?<text>[^']+)' > my-depot/(?<file>[a-z]+\\.csv)\\r?$", RegexOptions.Multiline)]
    private static partial Regex Line();
}
