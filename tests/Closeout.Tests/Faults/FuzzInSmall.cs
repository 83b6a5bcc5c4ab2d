using Closeout.Faults.Fuzz;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Faults;

public sealed class FuzzInSmall
{
    [Fact]
    public void No_reader_fails_on_generated_inputs()
    {
        var figures = Fuzzing.Run(inputs: 200, seed: 7).ToList();

        figures.SelectMany(f => f.Faults).Should().BeEmpty();
        figures.Should().HaveCount(19, "fifteen files, the whole day folder, entries, pages and keys");
        figures.Should().OnlyContain(f => f.Counts.Count > 3, "each is taken at times and refused at times");
    }
}
