using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>Rehearsals and the files that commands write.</summary>
[Trait(Built.Starts, "closeout")]
public sealed class FileTranscriptTests(CommandsInOne program) : IClassFixture<CommandsInOne>
{
    public static TheoryData<string> Names => Transcript.In("Files");

    [Theory]
    [MemberData(nameof(Names))]
    public void A_transcript_comes_out_as_written(string name) => Transcript.ComesOutAsWritten(name, program);
}
