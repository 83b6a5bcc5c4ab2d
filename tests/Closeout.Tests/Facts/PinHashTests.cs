using Closeout.Facts;
using Closeout.Store;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Facts;

public sealed class PinHashTests
{
    private static readonly byte[] Salt = [.. Enumerable.Range(1, 16).Select(i => (byte)i)];

    [Fact]
    public void A_hash_fits_its_PIN_and_no_other() => Gen.Select(Gen.String[Gen.Char[' ', '~'], 6, 20], Gen.String[Gen.Char[' ', '~'], 6, 20], Gen.Byte.Array[16]).Holds((pin, other, salt) =>
    {
        var hash = PinHash.Of(pin, salt, 2);
        hash.Fits(pin).Should().BeTrue();
        hash.Fits(other).Should().Be(pin == other);
        hash.ToString().Should().NotContain(pin);
    });

    [Fact]
    public void The_same_PIN_with_another_salt_or_more_iterations_is_another_hash()
    {
        var hash = PinHash.Of("493027", Salt, 2);
        PinHash.Of("493027", new byte[16], 2).Hash.Should().NotBe(hash.Hash);
        PinHash.Of("493027", Salt, 3).Hash.Should().NotBe(hash.Hash);
    }

    [Fact]
    public void The_kiosk_salts_every_PIN_anew()
    {
        var pins = new Pins(2);
        pins.Hash("493027").Salt.Should().NotBe(pins.Hash("493027").Salt);
        pins.Hash("493027").Iterations.Should().Be(2);
        new Pins().Hash("493027").Iterations.Should().Be(PinHash.UsualIterations);
    }

    [Theory]
    [InlineData(0, 16, 32)]
    [InlineData(10_000_001, 16, 32)]
    [InlineData(1, 15, 32)]
    [InlineData(1, 16, 31)]
    public void What_is_no_hash_of_ours_is_refused(int iterations, int salt, int hash)
    {
        var making = () => new PinHash(iterations, Convert.ToBase64String(new byte[salt]), Convert.ToBase64String(new byte[hash]));
        making.Should().Throw<ArgumentException>();
        var garbled = () => new PinHash(1, "no base64", Convert.ToBase64String(new byte[32]));
        garbled.Should().Throw<ArgumentException>();
    }

    [Theory]
    [InlineData("", "kiosk")]
    [InlineData("a-machine-with-a-name-longer-than-most", "a-machine-with-a-name-lo")]
    [InlineData(" bay ", "bay")]
    public void A_kiosk_is_called_by_at_most_24_characters(string machine, string name) => new Pins(1, machine).Kiosk.Should().Be(name);
}
