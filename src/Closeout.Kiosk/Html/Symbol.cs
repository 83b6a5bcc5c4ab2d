using System.Globalization;
using System.Text;
using ZXing;
using ZXing.Common;

namespace Closeout.Html;

/// <summary>A code as something that a scanner reads: black on white, with the quiet zone that the symbol asks for.</summary>
public static class Symbol
{
    /// <summary>
    /// Quiet zones, in modules: 10 on each side of Code 128 (ISO/IEC 15417), 4 around QR (ISO/IEC 18004); both from memory. The library
    /// takes the sum of both sides of the first.
    /// </summary>
    private const int Code128Quiet = 2 * 10;
    private const int QrQuiet = 4;

    /// <summary>The widest bar of one module, in inches; a long code gets narrower ones, so that it fits its label.</summary>
    private const double WidestModuleIn = 0.015;

    /// <summary>Code 128, as wide as it needs and at most so many inches.</summary>
    public static string Code128(string code, double mostIn)
    {
        var matrix = Encode(BarcodeFormat.CODE_128, code, Code128Quiet);
        var wide = matrix.Width * Math.Min(WidestModuleIn, mostIn / matrix.Width);
        return Svg("c128", matrix, 1, FormattableString.Invariant($"width: {wide:0.####}in"));
    }

    /// <summary>QR, as large as its place.</summary>
    public static string Qr(string code)
    {
        var matrix = Encode(BarcodeFormat.QR_CODE, code, QrQuiet);
        return Svg("qr", matrix, matrix.Height, "");
    }

    private static BitMatrix Encode(BarcodeFormat format, string code, int quiet) =>
        new MultiFormatWriter().encode(code, format, 0, 0, new Dictionary<EncodeHintType, object> { [EncodeHintType.MARGIN] = quiet });

    /// <summary>One path: a rectangle for each run of dark modules.</summary>
    /// <param name="height">Rows drawn; of bars all rows are alike, and one is stretched.</param>
    private static string Svg(string kind, BitMatrix matrix, int height, string style)
    {
        var path = new StringBuilder();
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < matrix.Width;)
            {
                var from = x;
                while (x < matrix.Width && matrix[x, y] == matrix[from, y])
                    x++;

                if (matrix[from, y])
                    path.Append(CultureInfo.InvariantCulture, $"M{from} {y}h{x - from}v1H{from}z");
            }
        }

        return $"<svg class=\"{kind}\" viewBox=\"0 0 {matrix.Width} {height}\" preserveAspectRatio=\"none\" "
            + $"aria-hidden=\"true\"{(style.Length == 0 ? "" : $" style=\"{style}\"")}><path d=\"{path}\"/></svg>";
    }
}
