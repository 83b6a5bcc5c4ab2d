using System.Globalization;
using Closeout.Files;
using Closeout.Store;

namespace Closeout.Html;

/// <summary>Photos inside a page, so that it needs no file beside it.</summary>
internal static class PagePhotos
{
    /// <summary>The most bytes of photos in one page, as the camera wrote them; a page that is larger no mail takes.</summary>
    public const long MostBytes = 16L * 1024 * 1024;

    public const string Style =
        """
        .photos { display: grid; gap: .6em; grid-template-columns: repeat(auto-fill, minmax(min(100%, 20em), 1fr)); }
        .photos figure { margin: 0; break-inside: avoid; }
        .photos img { max-width: 100%; max-height: 24em; display: block; }
        """;

    /// <summary>Adds the photos with their names, or why one is not shown.</summary>
    /// <returns>Sentences about photos that the book has lost; empty: none.</returns>
    public static IReadOnlyList<string> Add(HtmlPage page, IReadOnlyList<PhotoAttached> photos, Func<string, byte[]> read)
    {
        var (faults, bytes) = (new List<string>(), 0L);
        if (photos.Count == 0)
            return faults;

        page.Add("<div class=\"photos\">");
        foreach (var photo in photos)
            page.Add($"<figure>{Shown(photo)}<figcaption>{HtmlPage.Safe(photo.Name)}</figcaption></figure>");

        page.Add("</div>");
        return faults;

        string Shown(PhotoAttached photo)
        {
            if (bytes + photo.Bytes > MostBytes)
                return NotShown(T($"not shown: a page holds {MostBytes / 1024 / 1024} MB of photos. closeout photos writes it out."));

            try
            {
                var content = read(photo.Sha256);
                bytes += content.Length;
                return Kind(content) is { } kind
                    ? $"<img alt=\"{HtmlPage.Safe(photo.Name)}\" src=\"data:image/{kind};base64,{Convert.ToBase64String(content)}\"/>"
                    : NotShown(T("not shown: few browsers show this kind of photo. closeout photos writes it out."));
            }
            catch (BookException e)
            {
                faults.Add(e.Message);
                return Tones.Badge(Tone.Stop, T("MISSING")) + NotShown(T("the book does not have this photo as it was attached."));
            }
        }
    }

    /// <summary>The kind of picture by its first bytes; null: one that browsers do not show.</summary>
    private static string? Kind(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xFF, 0xD8, 0xFF, ..] => "jpeg",
        [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => "png",
        [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..] => "webp",
        _ => null,
    };

    private static string NotShown(string why) => string.Create(CultureInfo.InvariantCulture, $"<p>{HtmlPage.Safe(why)}</p>");
}
