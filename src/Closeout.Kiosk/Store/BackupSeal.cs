using System.Security.Cryptography;
using System.Text;

namespace Closeout.Store;

/// <summary>
/// The last 64 bytes of a backup are the SHA-256, in lower-case hex, of all bytes before them. They stand in the comment that a
/// zip file may end with, so that every zip program still opens it. A zip's own checksums leave names, dates and lengths out.
/// </summary>
internal static class BackupSeal
{
    /// <summary>The comment, before the checksum is known.</summary>
    public static readonly string Room = new('0', PageLine.ShaLength);

    /// <summary>Writes the checksum over the room at the end.</summary>
    public static void Set(Stream file) => file.Write(Encoding.ASCII.GetBytes(Sum(file)));

    /// <summary>Whether the checksum at the end fits.</summary>
    public static bool Fits(Stream file)
    {
        if (file.Length < PageLine.ShaLength)
            return false;

        var (sum, told) = (Sum(file), new byte[PageLine.ShaLength]);
        file.ReadExactly(told);
        return Encoding.ASCII.GetString(told) == sum;
    }

    /// <summary>The checksum; the file then stands where it is written.</summary>
    private static string Sum(Stream file)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var piece = new byte[1 << 16];
        file.Position = 0;
        for (var left = file.Length - PageLine.ShaLength; left > 0;)
        {
            var count = file.Read(piece, 0, (int)Math.Min(piece.Length, left));
            hash.AppendData(piece, 0, count);
            left -= count > 0 ? count : throw new EndOfStreamException("the file became shorter while it was read");
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
