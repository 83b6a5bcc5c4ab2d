using System.Text;
using Closeout.Facts;
using Closeout.Files;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

public sealed class KnownTests
{
    [Fact]
    public void Codes_are_found_by_their_bytes_whatever_their_case_and_length()
    {
        string[] listed = ["A", "AB", "ABCDEFG", "ABCDEFGH", "ABCDEFGHI", "ABCDEFGHIJKLMNOP", "ABCDEFGHIJKLMNOPQ", "ABCDEFGHIJKLMNOPQRSTUVWX"];
        var known = new Known<Item>("items.csv", null);
        foreach (var code in listed)
        {
            known.Add(new(code)).Should().BeTrue();
        }

        for (var twice = 0; twice < 2; twice++)
        {
            foreach (var code in listed)
            {
                known.Find(Encoding.UTF8.GetBytes(code.ToLowerInvariant()))!.Value.Text.Should().Be(code);
                known.Find(Encoding.UTF8.GetBytes(code + "\0")).Should().BeNull();
            }
        }

        known.Find(""u8).Should().BeNull();
        known.Add(new("abcdefgh")).Should().BeFalse();
        known.NumberOf(new("ABCdefgh")).Should().Be(3);
    }
}
