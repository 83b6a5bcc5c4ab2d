using Closeout.Faults.Full;
using Closeout.Faults.Power;
using FluentAssertions;

namespace Closeout.Tests.Faults;

/// <summary>A few rounds of what tests/Closeout.Faults does by the thousand: disks that are full, and power that goes.</summary>
public sealed class DisksInSmall
{
    private const int Seed = 7;

    [NeedsFact(Needs.Mounts)]
    public void A_full_disk_is_said_and_loses_nothing_and_work_goes_on_with_room()
    {
        var figure = FullDisk.SmallDisk(rounds: 2, Seed);

        figure.Faults.Should().BeEmpty();
        figure["failed"].Should().BePositive("the disk must have been full at a write");
    }

    [NeedsFact(Needs.Linux)]
    public void Neither_does_a_file_that_may_not_become_longer()
    {
        var figure = FullDisk.FileLimit(rounds: 2, Seed);

        figure.Faults.Should().BeEmpty();
        figure["failed"].Should().BePositive("the file must have been at its limit at a write");
    }

    [NeedsFact(Needs.Strace)]
    public void A_power_loss_loses_nothing_acknowledged_whatever_was_not_flushed()
    {
        var figure = PowerLosses.Run(rounds: 60, Seed, answers: 12);

        figure.Faults.Should().BeEmpty();
        figure["pending"].Should().BePositive();
    }

    [NeedsFact(Needs.Strace)]
    public void Without_its_flushes_the_same_evening_would_lose()
    {
        var figure = PowerLosses.Run(rounds: 40, Seed, answers: 6, withFlushes: false);

        figure.Faults.Should().Contain(f => f.Contains("LOST"));
    }
}
