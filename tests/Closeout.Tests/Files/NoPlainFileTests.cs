using System.Diagnostics;
using Closeout.Files;
using Closeout.Screens.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>What is no file, in the place of one: an error at once.</summary>
public sealed class NoPlainFileTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Theory]
    [InlineData("usage.csv")]
    [InlineData("kit.csv")]
    public void A_folder_is_a_fault_also_where_the_file_may_be_missing(string file)
    {
        using var temp = new TempFolder();
        var folder = SmallDay.Write(temp["day"], (file, null));
        Directory.CreateDirectory(Path.Combine(folder, file));

        Faults(folder).Should().ContainSingle().Which.Should().StartWith($"{file}:1:1: the file cannot be read: found a folder, allowed is a readable CSV file");
    }

    [NeedsFact(Needs.Pipe)]
    public void A_pipe_is_a_fault_and_nobody_waits_for_its_writer()
    {
        using var temp = new TempFolder();
        var folder = SmallDay.Write(temp["day"]);
        Process.Start("mkfifo", [Path.Combine(folder, "usage.csv")])!.WaitForExit();

        Faults(folder).Should().ContainSingle().Which.Should().StartWith("usage.csv:1:1: the file cannot be read: found a pipe or a device, and no file");
    }

    [NeedsTheory(Needs.Unix)]
    [InlineData("/dev/zero")]
    [InlineData("/dev/urandom")]
    public void A_device_is_a_fault_and_not_read_for_ever(string device)
    {
        using var temp = new TempFolder();
        var folder = SmallDay.Write(temp["day"]);
        File.CreateSymbolicLink(Path.Combine(folder, "usage.csv"), device);

        Faults(folder).Should().ContainSingle().Which.Should().StartWith("usage.csv:1:1: the file cannot be read: found a pipe or a device, and no file");
    }

    [Fact]
    public void A_link_to_a_file_is_read_as_that_file()
    {
        using var temp = new TempFolder();
        var folder = SmallDay.Write(temp["day"], ("kit.csv", null));
        File.WriteAllText(temp["elsewhere.csv"], SmallDay.Text("kit.csv"));
        File.CreateSymbolicLink(Path.Combine(folder, "kit.csv"), temp["elsewhere.csv"]);

        DayFolder.Read(folder, StepPages.Evening).Given!.Setup.Kit.Should().HaveCount(2);
    }

    private static IReadOnlyList<string> Faults(string folder)
    {
        var reading = Task.Run(() => ReadDay.Faults(DayFolder.Read(folder, StepPages.Evening)).ToList());
        reading.Wait(Patience).Should().BeTrue("it is an error, never a wait");
        return reading.Result;
    }
}
