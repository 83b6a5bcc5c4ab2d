using System.Numerics;

namespace Closeout.Tests.Restock;

/// <summary>
/// P(D at most x) by whole numbers of 400 bits: terms from the mean outwards by their exact ratios, and each sum over the
/// sum of all. No logarithm, no gamma function, nothing rounded that could be seen in a double.
/// </summary>
internal sealed class ExactDemand
{
    private const int Bits = 400;

    private readonly List<BigInteger> sums = [];

    /// <param name="mean">Above 0, taken exactly as the double stands.</param>
    /// <param name="variance">At or below the mean: Poisson.</param>
    public ExactDemand(double mean, double variance)
    {
        // mean = m / d and variance - mean = e / d, exactly, with d a power of two.
        const int shift = 120;
        var d = BigInteger.One << shift;
        var (m, e) = (Whole(mean, shift), variance > mean ? Whole(variance, shift) - Whole(mean, shift) : BigInteger.Zero);

        // t(x) = t(x-1) * (size + x - 1) * ratio / x with size * ratio = m*m / ((m+e) * d) and ratio = e / (m+e).
        BigInteger Up(int x) => m * m + (x - 1) * e * d;
        BigInteger Down(int x) => x * (m + e) * d;

        var start = (int)mean;
        var before = new List<BigInteger>();
        var term = BigInteger.One << Bits;
        for (var x = start; x > 0 && term > 0; x--)
        {
            term = term * Down(x) / Up(x);
            before.Add(term);
        }

        First = start - before.Count;
        var sum = BigInteger.Zero;
        foreach (var t in Enumerable.Reverse(before))
        {
            sums.Add(sum += t);
        }

        term = BigInteger.One << Bits;
        for (var x = start + 1; term > 0; x++)
        {
            sums.Add(sum += term);
            term = term * Up(x) / Down(x);
        }
    }

    /// <summary>Below it, everything is less than 2 to the power of -400.</summary>
    public int First { get; }

    /// <summary>At and above it, so is what remains.</summary>
    public int Last => First + sums.Count - 1;

    public double AtMost(int x) => x < First ? 0 : x >= Last ? 1 : Part(sums[x - First]);

    public double Above(int x) => x < First ? 1 : x >= Last ? 0 : Part(sums[^1] - sums[x - First]);

    private double Part(BigInteger sum) => (double)((sum << 200) / sums[^1]) * Math.Pow(2, -200);

    private static BigInteger Whole(double value, int shift)
    {
        var bits = BitConverter.DoubleToInt64Bits(value);
        var exponent = (int)((bits >> 52) & 0x7FF) - 1075;
        var mantissa = new BigInteger((bits & 0xFFFFFFFFFFFFFL) | 0x10000000000000L);
        return exponent + shift >= 0 ? mantissa << (exponent + shift) : throw new ArgumentOutOfRangeException(nameof(value), value, "is too small");
    }
}
