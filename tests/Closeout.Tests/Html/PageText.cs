using System.Text.RegularExpressions;
using System.Xml.Linq;
using FluentAssertions;

namespace Closeout.Tests.Html;

/// <summary>A page of ours as text and as a tree.</summary>
internal static class PageText
{
    private const string Doctype = "<!DOCTYPE html>\n";

    /// <summary>The page after its doctype: all pages of ours are well-formed XML too.</summary>
    public static XElement Parsed(string html)
    {
        html.Should().StartWith(Doctype);
        return XElement.Parse(html[Doctype.Length..]);
    }

    /// <summary>What of it is of a class.</summary>
    public static IEnumerable<XElement> Of(this XElement page, string element, string @class) =>
        page.Descendants(element).Where(e => ((string?)e.Attribute("class") ?? "").Split(' ').Contains(@class));

    /// <summary>It asks for nothing outside itself: no script, no link, no address but of pictures that it holds.</summary>
    public static void MustStandAlone(string html)
    {
        var page = Parsed(html);
        page.Descendants().Select(e => e.Name.LocalName).Should().NotContain(["script", "link", "iframe", "object", "embed", "base", "form", "a", "use", "image"]);
        var attributes = page.Descendants().Attributes().ToList();
        attributes.Should().NotContain(a => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        attributes.Where(a => a.Name.LocalName is "src" or "href" or "srcset" or "data" or "action").Should().NotContain(a => !a.Value.StartsWith("data:image/", StringComparison.Ordinal));
        Regex.Count(html.ToLowerInvariant(), @"url\(|@import|https?:|xmlns").Should().Be(0);
    }

    /// <summary>As its committed picture; UPDATE_GOLDEN=1 makes that anew.</summary>
    public static void MustBeGolden(string html, string name)
    {
        var golden = Repository.Golden("pages", name);
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
            File.WriteAllText(golden, html);

        html.Should().Be(File.ReadAllText(golden).ReplaceLineEndings("\n"));
    }
}
