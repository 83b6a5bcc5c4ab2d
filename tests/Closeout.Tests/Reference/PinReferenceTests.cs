using System.Text;
using Closeout.Facts;
using Closeout.People;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>The key derivation against published vectors.</summary>
public sealed class PinReferenceTests
{
    [Theory]
    // C. Percival and S. Josefsson, RFC 7914, 2016, section 11, PBKDF2-HMAC-SHA-256, first vector, seen.
    [InlineData("passwd", "salt", 1, "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783")]
    // The same section, second vector, from memory; an independent implementation gives the same bytes.
    [InlineData("Password", "NaCl", 80_000, "4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56a1d425a1225833549adb841b51c9b3176a272bdebba1d078478f62b397f33c8d")]
    public void A_published_vector_comes_out(string pin, string salt, int iterations, string hex) =>
        Convert.ToHexStringLower(PinHash.Derive(pin, Encoding.UTF8.GetBytes(salt), iterations, 64)).Should().Be(hex);

    [Fact]
    public void The_numbers_are_those_of_the_sources()
    {
        // NIST SP 800-63B, revision 3, 2017, seen in github.com/usnistgov/800-63-3 at ce8ada6, sp800-63b/sec5_authenticators.md:
        // 5.1.1.1 own 8, random 6; 5.1.1.2 a salt of at least 32 bits. 64 characters to be taken, 5.1.1.2: from memory.
        (PinRules.LeastOwn, PinRules.IssuedDigits, PinRules.MostOwn).Should().Be((8, 6, 64));
        (PinHash.SaltBytes * 8).Should().BeGreaterThanOrEqualTo(32);

        // The same, 5.2.2: at most 100 failures in a row. Revision 4, draft of December 2023, 5.2.11, seen in
        // github.com/usnistgov/800-63-4 at 9464bb6: 10 for an activation secret.
        PersonPin.MostInARow.Should().Be(10).And.BeLessThanOrEqualTo(100);

        // OWASP, Password Storage Cheat Sheet, PBKDF2-HMAC-SHA256, seen in github.com/OWASP/CheatSheetSeries at 6b8819d.
        PinHash.UsualIterations.Should().Be(600_000);
    }
}
