using System.Runtime.Versioning;
using Closeout.Commands;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>What rehearsals that were killed left beside their place.</summary>
public sealed class RehearsalLeftoversTests
{
    private static readonly string Dead = "book." + new string('d', 32);
    private static readonly string Living = "book." + new string('a', 32);
    private static readonly string Unmarked = "book." + new string('b', 32);

    [Fact]
    public void The_next_rehearsal_of_the_same_place_removes_those_of_the_dead_and_of_nobody_else()
    {
        using var temp = new TempFolder();
        SmallDay.Write(temp["day"]);
        foreach (var folder in new[] { Dead, Dead + ".old", Living, Unmarked, "book.mine" })
        {
            Directory.CreateDirectory(temp["out", folder, "pages"]);
        }

        File.WriteAllText(temp["out", Dead + ".rehearsing"], "");
        File.WriteAllText(temp["out", "book.mine.rehearsing"], "");
        using (new FileStream(temp["out", Living + ".rehearsing"], FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None))
        {
            Rehearse(temp).Should().Be(0);

            Beside(temp).Should().BeEquivalentTo(Living, Living + ".rehearsing", Unmarked, "book.mine", "book.mine.rehearsing");
        }

        Rehearse(temp).Should().Be(0);
        Beside(temp).Should().BeEquivalentTo([Unmarked, "book.mine", "book.mine.rehearsing"], "that one died meanwhile");
    }

    [Fact]
    public void A_rehearsal_that_ends_leaves_nothing_also_where_the_evening_is_at_fault()
    {
        using var temp = new TempFolder();
        SmallDay.Write(temp["day"], SmallDay.Evening("B1,T1,damage,zone,,roof"));

        Rehearse(temp).Should().Be(2);

        Beside(temp).Should().BeEmpty();
    }

    [UnsupportedOSPlatform("windows")]
    [NeedsFact(Needs.OrdinaryUser)]
    [Trait(Built.Starts, "closeout")]
    public void A_place_that_may_not_be_written_is_a_sentence()
    {
        using var temp = new TempFolder();
        SmallDay.Write(temp["day"]);
        Directory.CreateDirectory(temp["out"]);
        File.SetUnixFileMode(temp["out"], UnixFileMode.UserRead | UnixFileMode.UserExecute);

        var said = Started.CloseoutBy(Needs.AsOrdinaryUser, temp.Path, "rehearse", "day", "--out", "out");

        said.Code.Should().Be(3, said.Err);
        said.Err.Should().StartWith("out cannot be written: ").And.EndWith("Name a folder that is writable.\n");
    }

    private static int Rehearse(TempFolder temp) => Spoken.By(() => RehearseCommand.Run(temp["day"], temp["out"], null, null, final: false)).Code;

    private static IEnumerable<string> Beside(TempFolder temp) => Directory.EnumerateFileSystemEntries(temp["out"], "book.*").Select(f => Path.GetFileName(f)!).Where(f => f != "book");
}
