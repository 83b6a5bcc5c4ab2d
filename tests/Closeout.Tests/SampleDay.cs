using Closeout.Files;
using Closeout.Screens.Steps;
using Closeout.Turning;

namespace Closeout.Tests;

/// <summary>The sample day, read once for all tests: nothing that was read is ever changed.</summary>
internal static class SampleDay
{
    private static readonly Lazy<DayFolder> Folder = new(() => DayFolder.Read(Repository.SampleDay, StepPages.Evening));
    private static readonly Lazy<IReadOnlyList<EveningAnswer>> Evening = new(() => [.. EveningAnswers.Of(Folder.Value.Evening)]);

    public static DayGiven Given => Folder.Value.Given!;

    /// <summary>The same with nothing learned: the examples of docs/methods.md that are older than that.</summary>
    public static DayGiven Unlearned(DayGiven given) => given with
    {
        Setup = given.Setup with { Depot = given.Setup.Depot with { ChangeAt = 0 } },
        Past = [.. given.Past.Where(p => p.Kind is not (Closeout.Facts.PastKind.Booked or Closeout.Facts.PastKind.Received))],
    };

    public static IReadOnlyList<EveningAnswer> Answers => Evening.Value;
}
