using System.Security.Cryptography;
using System.Text;
using Closeout.Facts;
using Closeout.Store;

namespace Closeout.Tests.Store;

/// <summary>A line with other words in it and the checksum made to fit, as only a program would.</summary>
internal static class ForgedLine
{
    /// <summary>The line's bytes without its line feed.</summary>
    public static byte[] Of(Recorded recorded, string was, string now, string prev)
    {
        var line = Encoding.UTF8.GetString(PageLine.Write(recorded, prev).Bytes);
        var body = line[..line.LastIndexOf(",\"sha\"", StringComparison.Ordinal)];
        if (!body.Contains(was, StringComparison.Ordinal))
        {
            throw new ArgumentException($"{body} has no {was}", nameof(was));
        }

        var forged = body.Replace(was, now, StringComparison.Ordinal);
        var sha = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(forged)));
        return Encoding.UTF8.GetBytes($"{forged},\"sha\":\"{sha}\"}}");
    }
}
