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
    // RFC 7914, section 11, PBKDF2-HMAC-SHA-256, first vector. VERIFIED: seen in copies of the vectors.
    [InlineData("passwd", "salt", 1, "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783")]
    // RFC 7914, section 11, second vector. From memory; an independent implementation gives the same bytes.
    [InlineData("Password", "NaCl", 80_000, "4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56a1d425a1225833549adb841b51c9b3176a272bdebba1d078478f62b397f33c8d")]
    public void A_published_vector_comes_out(string pin, string salt, int iterations, string hex) =>
        Convert.ToHexStringLower(PinHash.Derive(pin, Encoding.UTF8.GetBytes(salt), iterations, 64)).Should().Be(hex);

    [Fact]
    public void The_numbers_are_those_of_the_sources()
    {
        // NIST SP 800-63B (revision 3), 5.1.1.1: own 8, random 6; 5.1.1.2: salt of at least 32 bits, 64 characters taken. VERIFIED in facts.
        (PinRules.LeastOwn, PinRules.IssuedDigits, PinRules.MostOwn).Should().Be((8, 6, 64));
        (PinHash.SaltBytes * 8).Should().BeGreaterThanOrEqualTo(32);

        // 5.2.2: at most 100 failures in a row; revision 4 draft, 5.2.11: 10 for an activation secret. VERIFIED in facts.
        PersonPin.MostInARow.Should().Be(10).And.BeLessThanOrEqualTo(100);

        // OWASP Password Storage Cheat Sheet, 2026-08-17: PBKDF2-HMAC-SHA256. VERIFIED in facts.
        PinHash.UsualIterations.Should().Be(600_000);
    }
}
