using Closeout.Faults.Full;
using Closeout.Faults.Power;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Faults;

/// <summary>A few rounds of what tests/Closeout.Faults does by the thousand: disks that are full, and power that goes.</summary>
public sealed class DisksInSmall
{
    private const int Seed = 7;

    [Fact]
    public void A_full_disk_is_said_and_loses_nothing_and_work_goes_on_with_room()
    {
        foreach (var figure in FullDisk.Run(rounds: 2, Seed))
        {
            figure.Faults.Should().BeEmpty();
            if (figure.Counts.Count > 0)
            {
                figure["failed"].Should().BePositive("the disk must have been full at a write");
            }
        }
    }

    [Fact]
    public void A_power_loss_loses_nothing_acknowledged_whatever_was_not_flushed()
    {
        var figure = PowerLosses.Run(rounds: 60, Seed, answers: 12);

        figure.Faults.Should().BeEmpty();
        figure["pending"].Should().BePositive();
    }

    [Fact]
    public void Without_its_flushes_the_same_evening_would_lose()
    {
        var figure = PowerLosses.Run(rounds: 40, Seed, answers: 6, withFlushes: false);

        figure.Faults.Should().Contain(f => f.Contains("LOST"));
    }
}
