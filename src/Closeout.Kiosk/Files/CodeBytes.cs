using System.Buffers.Binary;

namespace Closeout.Files;

/// <summary>The bytes of a text that may be a code, as numbers: two texts are compared in a moment.</summary>
internal readonly record struct CodeBytes(ulong First, ulong Last, ulong Middle, int Length)
{
    /// <summary>Bytes of the longest code.</summary>
    public const int Most = 24;

    private const int Word = sizeof(ulong);

    /// <summary>Odd, with bits all over: 2 to the 64 through the golden ratio (Knuth, The Art of Computer Programming 3, 6.4).</summary>
    private const ulong Mixing = 0x9E3779B97F4A7C15;

    /// <param name="text">1 to <see cref="Most"/> bytes.</param>
    public static CodeBytes Of(ReadOnlySpan<byte> text)
    {
        if (text.Length >= Word)
            return new(Read(text), Read(text[^Word..]), text.Length > 2 * Word ? Read(text[Word..]) : 0, text.Length);

        var first = 0UL;
        foreach (var letter in text)
            first = (first << 8) | letter;

        return new(first, 0, 0, text.Length);
    }

    /// <summary>A number of so many bits in which all bytes have their part.</summary>
    public int Hash(int bits) => unchecked((int)(((((First * Mixing) ^ Last) * Mixing) ^ Middle) * Mixing >> (64 - bits)));

    private static ulong Read(ReadOnlySpan<byte> text) => BinaryPrimitives.ReadUInt64LittleEndian(text);
}
