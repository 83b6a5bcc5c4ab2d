using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.People;
using Closeout.Rules;
using Closeout.Tests.People;
using Closeout.Tests.Rules;
using Closeout.Tests.Shifts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>docs/refusals.md says of every refusal what the program says: its example, handed to the program's own sentence, gives the text below it.</summary>
public sealed partial class RefusalsDocTests
{
    private static readonly IReadOnlyList<MethodInfo> Factories =
        [.. EveryRefusalTests.Factories, .. typeof(PinRefusal).GetMethods(BindingFlags.Public | BindingFlags.Static).Where(m => m.ReturnType == typeof(Refusal))];

    /// <summary>How each factory's refusal is called.</summary>
    private static readonly ILookup<string, string> Codes = Met.All.Select(m => (m.Factory, m.Code)).Concat(PinRefusalCatalogue.All.Select(m => (m.Factory, m.Code))).Distinct().ToLookup(m => m.Factory, m => m.Code);

    /// <summary>By code: its examples, each with its text, and whether it is asked again.</summary>
    private static readonly IReadOnlyDictionary<string, (IReadOnlyList<(string Given, string Text)> Examples, bool AskAgain)> Documented =
        Section().Matches(File.ReadAllText(Path.Combine(Repository.Root, "docs", "refusals.md")).ReplaceLineEndings("\n"))
            .ToDictionary(
                m => m.Groups["code"].Value,
                m => ((IReadOnlyList<(string, string)>)[.. m.Groups["example"].Captures.Zip(m.Groups["text"].Captures, (e, t) => (e.Value, t.Value))], m.Groups["met"].Value.EndsWith(" Asked again.", StringComparison.Ordinal)));

    public static TheoryData<string> Names => [.. Factories.Select(m => m.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_refusal_is_documented_as_the_program_says_it(string factory)
    {
        var code = Codes[factory].Single();
        Documented.Should().ContainKey(code, "docs/refusals.md lists every refusal, with its code, an example and its text");

        var (examples, askAgain) = Documented[code];
        foreach (var (given, text) in examples)
        {
            (Said(Factories.Single(m => m.Name == factory), given) with { InsteadMi = null }).Should().Be(new Refusal(code, text, askAgain));
        }
    }

    [Fact]
    public void No_refusal_is_documented_that_cannot_be_met() =>
        Documented.Keys.Should().BeSubsetOf(Codes.SelectMany(c => c));

    private static Refusal Said(MethodInfo factory, string example)
    {
        var given = example == "always the same" ? [] : example.Split("; ").Select(a => a.Split(" = ")).ToDictionary(a => a[0], a => a[1]);
        given.Keys.Should().BeEquivalentTo(factory.GetParameters().Select(p => p.Name), $"the example of {factory.Name} names its arguments");
        return (Refusal)factory.Invoke(null, [.. factory.GetParameters().Select(p => Argument(p.ParameterType, given[p.Name!]))])!;
    }

    /// <summary>An argument as the examples write it. <c>none</c> is an empty list, or what an argument that may be left out is then.</summary>
    private static object? Argument(Type type, string text) => type switch
    {
        _ when type == typeof(IReadOnlyList<int>) => Words(text).Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToList(),
        _ when type == typeof(IReadOnlyList<string>) => Words(text).ToList(),
        _ when type == typeof(IReadOnlyList<Code<WasteStream>>) => Words(text).Select(s => new Code<WasteStream>(s)).ToList(),
        _ when text == "none" => null,
        _ when type == typeof(string) => text,
        _ when type == typeof(int) => int.Parse(text, CultureInfo.InvariantCulture),
        _ when type == typeof(decimal) => decimal.Parse(text, CultureInfo.InvariantCulture),
        _ when type == typeof(DateOnly) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ when type == typeof(Step) => Enum.GetValues<Step>().Single(s => StepWords.Name(s) == text),
        _ when type == typeof(Van) && text.Split(' ') is [var code, var name] => Tiny.Van(code, 1, name, 0) with { Fuel = "regular" },
        _ when type == typeof(Technician) && text.Split(' ', 2) is [var code, var name] => new Technician(new(code), name, false, null, []),
        _ when type == typeof(Item) => Tiny.Lamp with { Description = text },
        _ when type == typeof(WasteStream) => WasteStream.Of(new(text)),
        _ when type == typeof(Shift) => ShiftOf(text),
        _ when type == typeof((string Shown, decimal Mi)?) => (text, decimal.Parse(text.Split(' ')[0], CultureInfo.InvariantCulture)),
        _ when type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Code<>) => Activator.CreateInstance(type, text)!,
        _ => throw new InvalidOperationException($"no way to read '{text}' as {type.Name}"),
    };

    private static IEnumerable<string> Words(string text) => text == "none" ? [] : text.Split(", ");

    /// <summary>Reads <c>in at 16:41 with T07, signed at 17:02 by T14</c>; the second half may be missing.</summary>
    private static Shift ShiftOf(string text)
    {
        var told = Evening().Match(text);
        var shift = Shift.Begin(new(Tiny.B1, new(told.Groups["who"].Value), false, []), At(told.Groups["in"].Value), ImmutableDictionary<Code<Item>, Holding>.Empty);
        return told.Groups["signer"].Success
            ? shift with { Signed = new(Tiny.B1, new(told.Groups["signer"].Value), Proof.Pin), SignedAt = At(told.Groups["signed"].Value) }
            : shift;
    }

    private static DateTimeOffset At(string clock) => new(Tiny.Wednesday.ToDateTime(TimeOnly.ParseExact(clock, "HH:mm", CultureInfo.InvariantCulture)), TimeSpan.Zero);

    [GeneratedRegex(@"^### `(?<code>[a-z-]+)`\n(?<met>Met when [^\n]+)(?:\nExample: `(?<example>[^`\n]+)`\n> (?<text>[^\n]+))+$", RegexOptions.Multiline)]
    private static partial Regex Section();

    [GeneratedRegex(@"^in at (?<in>\d\d:\d\d) with (?<who>\w+)(, signed at (?<signed>\d\d:\d\d) by (?<signer>\w+))?$")]
    private static partial Regex Evening();
}
