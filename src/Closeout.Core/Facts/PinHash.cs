using System.Security.Cryptography;
using System.Text;

namespace Closeout.Facts;

/// <summary>What the book keeps instead of a PIN: it can be held against a PIN, and no PIN can be read from it.</summary>
/// <param name="Iterations">Of PBKDF2 with HMAC-SHA-256.</param>
/// <param name="Salt">16 bytes drawn at random for this PIN alone, as base64.</param>
/// <param name="Hash">32 bytes, as base64.</param>
/// <remarks>
/// PBKDF2: RFC 8018, 5.2; the 600,000 iterations: OWASP Password Storage Cheat Sheet (2026-08-17). A six-digit PIN has a
/// million values, and whoever has the book's files can try them all: the hash makes it slow, it does not make it impossible.
/// </remarks>
public sealed record PinHash(int Iterations, string Salt, string Hash)
{
    /// <summary>What the program uses. Tests use few.</summary>
    public const int UsualIterations = 600_000;

    public const int SaltBytes = 16;
    public const int HashBytes = 32;

    /// <summary>More would only keep a kiosk busy.</summary>
    private const int MostIterations = 10_000_000;

    public int Iterations { get; } = Iterations is >= 1 and <= MostIterations
        ? Iterations
        : throw new ArgumentException($"{Iterations} iterations; allowed are 1 to {MostIterations}", nameof(Iterations));

    public string Salt { get; } = IsBase64(Salt, SaltBytes)
        ? Salt
        : throw new ArgumentException($"a salt that is not {SaltBytes} bytes in base64", nameof(Salt));

    public string Hash { get; } = IsBase64(Hash, HashBytes)
        ? Hash
        : throw new ArgumentException($"a hash that is not {HashBytes} bytes in base64", nameof(Hash));

    /// <param name="salt">16 random bytes; the core draws none.</param>
    public static PinHash Of(string pin, ReadOnlySpan<byte> salt, int iterations) =>
        new(iterations, Convert.ToBase64String(salt), Convert.ToBase64String(Derive(pin, salt, iterations, HashBytes)));

    /// <summary>Whether it is the hash of the PIN. It takes as long for a wrong PIN as for the right one.</summary>
    public bool Fits(string pin) =>
        CryptographicOperations.FixedTimeEquals(
            Derive(pin, Convert.FromBase64String(Salt), Iterations, HashBytes), Convert.FromBase64String(Hash));

    /// <summary>
    /// The bytes that come of a PIN: of its UTF-8, as it was typed. Letters with marks are not composed anew: without a culture there is no
    /// way to.
    /// </summary>
    public static byte[] Derive(string pin, ReadOnlySpan<byte> salt, int iterations, int bytes) =>
        Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(pin), salt, iterations, HashAlgorithmName.SHA256, bytes);

    private static bool IsBase64(string text, int bytes)
    {
        Span<byte> read = stackalloc byte[bytes + 3];
        return Convert.TryFromBase64String(text, read, out var written) && written == bytes;
    }
}
