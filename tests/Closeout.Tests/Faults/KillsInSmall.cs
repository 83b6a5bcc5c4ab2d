using Closeout.Faults.Kill;
using Closeout.Faults.Processes;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Faults;

/// <summary>A few rounds of what tests/Closeout.Faults does by the hundred: programs that are killed or stopped.</summary>
public sealed class KillsInSmall
{
    private const int Seed = 7;

    [NeedsFact(Needs.Terminal)]
    [Trait(Built.Starts, "closeout")]
    public void A_kiosk_killed_at_any_moment_loses_nothing_that_the_screen_moved_on_from()
    {
        var figure = KilledKiosks.Run(rounds: 3, Seed, withWriter: false);

        figure.Faults.Should().BeEmpty();
        figure["answers"].Should().BePositive("something must have been typed");
    }

    [NeedsFact(Needs.Terminal)]
    [Trait(Built.Starts, "closeout")]
    public void Neither_does_it_while_a_second_program_writes_and_is_killed_with_it()
    {
        var figure = KilledKiosks.Run(rounds: 2, Seed + 1, withWriter: true);

        figure.Faults.Should().BeEmpty();
        figure["others"].Should().BePositive("the second program must have written");
    }

    [NeedsFact(Needs.Strace)]
    [Trait(Built.Starts, "closeout")]
    public void A_rehearsal_killed_as_it_changes_names_leaves_whole_files_and_runs_again()
    {
        var figure = KilledCommands.Rehearsal(rounds: 0, Seed, calls: ["rename"], sparse: true);

        figure.Faults.Should().BeEmpty();
        figure["acts"].Should().BeGreaterThan(10);
    }

    [Fact]
    public void Processes_that_append_at_once_lose_and_double_nothing() => ManyProcesses.Run(rounds: 20, Seed).Faults.Should().BeEmpty();

    [NeedsFact(Needs.Linux)]
    public void A_process_stopped_in_an_append_makes_the_kiosk_refuse_and_killed_it_frees_the_book()
    {
        var figure = HeldLocks.Run(rounds: 1, Seed, first: 1);

        figure.Faults.Should().BeEmpty();
        figure["refused"].Should().BeGreaterThan(4_000);
    }
}
