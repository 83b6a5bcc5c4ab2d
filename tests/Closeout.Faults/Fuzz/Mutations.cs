using System.Text;

namespace Closeout.Faults.Fuzz;

/// <summary>Ways to spoil bytes and text, at random.</summary>
internal static class Mutations
{
    private static readonly string[] Nasty =
    [
        "", " ", "0", "-1", "1e308", "NaN", "Infinity", "-0", "00000000000000000000001", "79228162514264337593543950335", "79228162514264337593543950336", "2147483648", "-2147483648",
        "9223372036854775807", "0.000000000000000000000000000001", "1.", ".5", "1,5", "0x10", "+5", "1_000", "½", "٣", "१२", "TRUE", "yes", "no", "null",
        "2026-02-30", "0000-00-00", "9999-12-31", "2026-11-18T00:00:00", "18/11/2026", "1899-12-31", "24:00", "25:61", "Mon Tue Xyz", "Mon Mon Mon",
        "=1+1", "+cmd", "-2", "@x", "\t", "\r", "\n", "\r\n", "\"", "\"\"", "\"a", "a\"b", "\"a\"b", "'", ",", ";", "\\", "\0", "\u0001", "\u001b[2J", "\u007f", "\u0085", "\u2028", "\u202e", "\ufeff", "\ufffd", "e\u0301", "漢字", "\U0001F69A",
        "B1", "b1", "B999", "shelf", "bin", "SHELF", "LED-A19", "T07", "L1", "leftovers", "sign", "sealed", "A.B_c-1", "AAAAAAAAAAAAAAAAAAAAAAAAA", "32ECT-C", "../../x", "con",
    ];

    public static T Any<T>(Random random, IReadOnlyList<T> of) => of[random.Next(of.Count)];

    /// <summary>A value that somebody might not have thought of.</summary>
    public static string Value(Random random) => random.Next(30) switch
    {
        0 => new string("a0\"' ,9-.\u001b漢"[random.Next(11)], 1 << random.Next(0, random.Next(40) == 0 ? 20 : 12)),
        1 => string.Concat(Enumerable.Range(0, random.Next(1, 40)).Select(_ => (char)random.Next(1, 0x300))),
        2 => random.NextInt64(long.MinValue, long.MaxValue).ToString(System.Globalization.CultureInfo.InvariantCulture),
        3 => (random.NextDouble() * Math.Pow(10, random.Next(-30, 30))).ToString(System.Globalization.CultureInfo.InvariantCulture),
        >= 4 and < 12 => random.Next(-1, 100).ToString(System.Globalization.CultureInfo.InvariantCulture),
        _ => Any(random, Nasty),
    };

    /// <summary>Bytes with a few of them changed, gone, doubled, or others put in.</summary>
    public static byte[] Bytes(byte[] bytes, Random random)
    {
        var list = new List<byte>(bytes);
        for (var times = random.Next(1, 5); times > 0; times--)
        {
            var at = random.Next(list.Count + 1);
            var length = Math.Min(random.Next(1, 1 << random.Next(1, 10)), list.Count - at);
            switch (random.Next(6))
            {
                case 0 when at < list.Count:
                    list[at] ^= (byte)(1 << random.Next(8));
                    break;
                case 1:
                    list.RemoveRange(at, length);
                    break;
                case 2:
                    list.InsertRange(at, list.GetRange(at, length));
                    break;
                case 3:
                    list.InsertRange(random.Next(list.Count + 1), list.GetRange(at, length));
                    break;
                case 4:
                    var put = new byte[random.Next(1, 40)];
                    random.NextBytes(put);
                    list.InsertRange(at, put);
                    break;
                case 5:
                    list.InsertRange(at, Encoding.UTF8.GetBytes(Value(random)));
                    break;
            }
        }

        return [.. list];
    }

    public static byte[] Random(Random random)
    {
        var bytes = new byte[random.Next(1 << random.Next(1, 13))];
        random.NextBytes(bytes);
        return bytes;
    }
}
