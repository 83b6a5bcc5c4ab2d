using System.Text;
using System.Text.RegularExpressions;
using Closeout.Cardboard;
using Closeout.Leads;
using Closeout.People;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Tests.People;
using Closeout.Tests.Shifts;

namespace Closeout.Tests.Docs;

/// <summary>The tables of docs/refusals.md, made from the catalogues: of each code the first sentence that a catalogue meets.</summary>
internal static partial class RefusalsDoc
{
    private static readonly (string Title, Type Factories)[] Sections =
    [
        ("Close-outs, vans and words", typeof(Refusal)),
        ("Odometer and fuel", typeof(MileageRefusal)),
        ("Stock desk and plan", typeof(StockRefusal)),
        ("Cardboard and other waste", typeof(YardRefusal)),
        ("A lead's desk", typeof(LeadRefusal)),
        ("PINs", typeof(PinRefusal)),
    ];

    public static string Path { get; } = System.IO.Path.Combine(Repository.Root, "docs", "refusals.md");

    /// <summary>By code, in the order of the catalogues.</summary>
    public static IReadOnlyList<(string Factory, Refusal Said)> All { get; } =
    [
        .. Met.All.Select(m => (m.Factory, m.Code, Said: (Func<Refusal>)m.Refused))
            .Concat(PinRefusalCatalogue.All.Select(m => (m.Factory, m.Code, Said: (Func<Refusal>)(() => m.When()!))))
            .DistinctBy(m => m.Code)
            .Select(m => (m.Factory, m.Said())),
    ];

    /// <summary>The page with its tables made anew; what stands around them stays.</summary>
    public static string Renewed(string page) => Generated().Replace(page, m => m.Groups["head"].Value + Tables() + m.Groups["foot"].Value);

    private static string Tables()
    {
        var text = new StringBuilder();
        Table(text, "Asked again", All.Where(r => r.Said.AskAgain));
        foreach (var (title, factories) in Sections)
        {
            Table(text, title, All.Where(r => !r.Said.AskAgain && factories.GetMethod(r.Factory) is not null));
        }

        return text.ToString();
    }

    private static void Table(StringBuilder text, string title, IEnumerable<(string Factory, Refusal Said)> refusals)
    {
        text.Append($"\n### {title}\n\ncode | for example | why there is a limit\n---|---|---\n");
        foreach (var (_, said) in refusals)
        {
            var reason = RefusalReasons.Of.TryGetValue(said.Code, out var why) ? $" | {why}" : "";
            text.Append($"`{said.Code}` | {said.Text.Replace("|", "\\|")}{reason}\n");
        }
    }

    [GeneratedRegex("(?<head><!-- made from the catalogues -->\n).*?(?<foot>\n<!-- end of what is made -->)", RegexOptions.Singleline)]
    private static partial Regex Generated();
}
