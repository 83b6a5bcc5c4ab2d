using System.Text;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Closeout.Tests.Words;

/// <summary>What the code says to people, and what the Spanish resource file has of it.</summary>
internal static class Sentences
{
    private static readonly string Source = Path.Combine(Repository.Root, "src");

    /// <summary>Keys of the code: the English of each sentence, its holes numbered.</summary>
    public static IReadOnlySet<string> Said { get; } = Files()
        .SelectMany(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f)).GetRoot().DescendantNodes().OfType<InvocationExpressionSyntax>())
        .Where(i => i.Expression.ToString() is "T" or "Later" or "Tongue.T" or "Tongue.Later" && i.ArgumentList.Arguments.Count == 1)
        .SelectMany(i => Literals(i.ArgumentList.Arguments[0].Expression))
        .Select(Key)
        .Where(k => Letters(k).Any())
        .ToHashSet();

    /// <summary>Names of the resource file, and what they say.</summary>
    public static IReadOnlyDictionary<string, string> Spanish { get; } = XDocument
        .Load(Path.Combine(Source, "Closeout.Kiosk", "Words", "Sentences.es.resx")).Root!.Elements("data")
        .ToDictionary(d => d.Attribute("name")!.Value, d => d.Element("value")!.Value);

    /// <summary>Static fields and properties with a value of their own that say something: they would keep the first language for ever.</summary>
    public static IEnumerable<string> Frozen => Files()
        .SelectMany(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f)).GetRoot().DescendantNodes().OfType<InvocationExpressionSyntax>()
            .Where(i => i.Expression.ToString() == "T" && i.Ancestors().Any(a =>
                a is FieldDeclarationSyntax { Modifiers: var own } && IsStatic(own)
                || a is PropertyDeclarationSyntax { Initializer: not null, Modifiers: var property } && IsStatic(property)))
            .Where(i => !i.Ancestors().OfType<LambdaExpressionSyntax>().Any())
            .Select(i => $"{Path.GetFileName(f)}: {i}"));

    /// <summary>Sentences put together of pieces with holes and pieces without: the compiler makes one text of them, which no key fits.</summary>
    public static IEnumerable<string> Mixed => Files()
        .SelectMany(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f)).GetRoot().DescendantNodes().OfType<InvocationExpressionSyntax>()
            .Where(i => i.Expression.ToString() == "T" && i.ArgumentList.Arguments is [{ Expression: BinaryExpressionSyntax sum }] && IsMixed(sum))
            .Select(i => $"{Path.GetFileName(f)}: {i}"));

    /// <summary>The words of a key: what stands outside of its holes.</summary>
    public static IEnumerable<char> Letters(string key) => System.Text.RegularExpressions.Regex.Replace(key, @"\{[^}]*\}", "").Where(char.IsLetter);

    /// <summary>The holes of a sentence with their formats, in the order of their numbers.</summary>
    public static IEnumerable<string> Holes(string sentence) =>
        System.Text.RegularExpressions.Regex.Matches(sentence, @"(?<!\{)\{(\d+[^{}]*)\}").Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal);

    private static bool IsMixed(BinaryExpressionSyntax sum)
    {
        var pieces = sum.DescendantNodesAndSelf(n => n is BinaryExpressionSyntax).OfType<ExpressionSyntax>().Where(e => e is not BinaryExpressionSyntax).ToList();
        return pieces.Any(p => p is InterpolatedStringExpressionSyntax) && pieces.Any(p => p is not InterpolatedStringExpressionSyntax);
    }

    private static bool IsStatic(SyntaxTokenList modifiers) => modifiers.Any(m => m.IsKind(SyntaxKind.StaticKeyword));

    private static IEnumerable<string> Files() => Directory.EnumerateFiles(Source, "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    private static IEnumerable<ExpressionSyntax> Literals(ExpressionSyntax e) => e switch
    {
        ParenthesizedExpressionSyntax p => Literals(p.Expression),
        ConditionalExpressionSyntax c => Literals(c.WhenTrue).Concat(Literals(c.WhenFalse)),
        InterpolatedStringExpressionSyntax or LiteralExpressionSyntax or BinaryExpressionSyntax => [e],
        _ => [],
    };

    private static string Key(ExpressionSyntax e)
    {
        var (key, hole) = (new StringBuilder(), 0);
        Add(e, e.DescendantNodesAndSelf().OfType<InterpolatedStringExpressionSyntax>().Any());
        return key.ToString();

        void Add(ExpressionSyntax part, bool hasHoles)
        {
            switch (part)
            {
                case BinaryExpressionSyntax sum:
                    Add(sum.Left, hasHoles);
                    Add(sum.Right, hasHoles);
                    break;
                case LiteralExpressionSyntax literal:
                    key.Append(hasHoles ? Doubled(literal.Token.ValueText) : literal.Token.ValueText);
                    break;
                case InterpolatedStringExpressionSyntax text:
                    foreach (var content in text.Contents)
                    {
                        if (content is InterpolationSyntax i)
                            key.Append('{').Append(hole++).Append(i.AlignmentClause is { } a ? $",{a.Value}" : "").Append(i.FormatClause is { } f ? $":{f.FormatStringToken.ValueText}" : "").Append('}');
                        else
                            key.Append(Doubled(((InterpolatedStringTextSyntax)content).TextToken.ValueText));
                    }

                    break;
                default:
                    throw new InvalidOperationException($"not made of words: {part}");
            }
        }
    }

    private static string Doubled(string text) => text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal);
}
