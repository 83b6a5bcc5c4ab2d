using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>Setting up, updating and checking a book.</summary>
[Trait(Built.Starts, "closeout")]
public sealed class BookTranscriptTests(CommandsInOne program) : IClassFixture<CommandsInOne>
{
    public static TheoryData<string> Names => Transcript.In("Book");

    [Theory]
    [MemberData(nameof(Names))]
    public void A_transcript_comes_out_as_written(string name) => Transcript.ComesOutAsWritten(name, program);
}
