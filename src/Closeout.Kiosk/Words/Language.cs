using System.Collections;
using System.Collections.Frozen;
using System.Globalization;
using System.Resources;

namespace Closeout.Words;

/// <summary>
/// The languages that are spoken. English stands where it is said; the others are resource files beside this class, by the platform's own
/// means: <c>Sentences.es.resx</c>.
/// </summary>
public static class Language
{
    /// <summary>Their codes, by ISO 639-1.</summary>
    public static readonly IReadOnlyList<string> Codes = ["en", "es"];

    private static readonly Lazy<FrozenDictionary<string, string>> Spanish = new(() => Read("es"));

    [ThreadStatic]
    private static string? chosen;

    /// <summary>The language chosen for the whole program: it outranks those of depot.csv and crew.csv. Null: none.</summary>
    public static string? Chosen => chosen;

    /// <summary>The language that a command line names, as <c>--language es</c> or <c>--language=es</c>; null: none.</summary>
    public static string? NamedIn(IReadOnlyList<string> args)
    {
        const string Option = "--language";
        var after = args.Index().Where(a => a.Item == Option && a.Index + 1 < args.Count).Select(a => args[a.Index + 1]);
        var within = args.Where(a => a.StartsWith(Option + "=", StringComparison.Ordinal)).Select(a => a[(Option.Length + 1)..]);
        return after.Concat(within).FirstOrDefault(Codes.Contains);
    }

    /// <summary>Does something in the language that was chosen; without one it begins in English, until the depot is known.</summary>
    public static TResult Choosing<TResult>(string? code, Func<TResult> act)
    {
        var before = chosen;
        chosen = code;
        try
        {
            return Speaking(Of(code ?? "en"), act);
        }
        finally
        {
            chosen = before;
        }
    }

    /// <summary>The depot is known now: its language is spoken from here on, unless another was chosen.</summary>
    public static void OfDepot(DepotSettings depot) => Speak(Of(chosen ?? depot.Language));

    /// <summary>What is said in a language, by keys; null: English.</summary>
    public static Func<string, string?>? Of(string code) => code switch
    {
        "en" => null,
        "es" => Say,
        _ => throw new InvalidOperationException($"no such language: {code}"),
    };

    /// <summary>
    /// The name of a sentence in a resource file. Names there must differ in more than capitals: what begins small has an ellipsis before
    /// it, what is all capitals a roof.
    /// </summary>
    public static string NameOf(string key) =>
        !key.Any(char.IsLetter) ? key
        : char.IsLower(key.First(char.IsLetter)) ? $"…{key}"
        : key.Count(char.IsLetter) > 1 && !key.Any(char.IsLower) ? $"^{key}"
        : key;

    private static string? Say(string key) => Spanish.Value.GetValueOrDefault(key);

    private static FrozenDictionary<string, string> Read(string code)
    {
        var culture = CultureInfo.GetCultureInfo(code);
        var set = new ResourceManager("Closeout.Words.Sentences", typeof(Language).Assembly).GetResourceSet(culture, true, false)
            ?? throw new InvalidOperationException($"the sentences of {code} are not there");
        return set.Cast<DictionaryEntry>().ToFrozenDictionary(e => ((string)e.Key).TrimStart('…', '^'), e => (string)e.Value!);
    }
}
