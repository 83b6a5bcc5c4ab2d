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

    public static IReadOnlyList<EveningAnswer> Answers => Evening.Value;
}
