using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Closeout.DayBook;
using Closeout.Restock;
using Closeout.Shifts;
using Closeout.Stock;
using Closeout.Tests.Restock;
using Closeout.Tests.Shifts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>docs/refusals.md says of every refusal what the program says: its example, handed to the program's own sentence, gives the text below it.</summary>
public sealed partial class RefusalsDocTests
{
    private static readonly IReadOnlyList<MethodInfo> Factories =
        [.. new[] { typeof(Refusal), typeof(StockRefusal) }.SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static)).Where(m => m.ReturnType == typeof(Refusal))];

    /// <summary>How each factory's refusal is called.</summary>
    private static readonly ILookup<string, string> Codes = RefusalCatalogue.All.Select(m => (m.Factory, m.Code))
        .Concat(StockRefusalCatalogue.All.Select(m => (m.Factory, m.Code))).Distinct().ToLookup(m => m.Factory, m => m.Code);

    private static readonly IReadOnlyDictionary<string, (string Example, string Text, bool AskAgain)> Documented =
        Section().Matches(File.ReadAllText(Path.Combine(Repository.Root, "docs", "refusals.md")).ReplaceLineEndings("\n"))
            .ToDictionary(m => m.Groups["code"].Value, m => (m.Groups["example"].Value, m.Groups["text"].Value, m.Groups["met"].Value.EndsWith(" Asked again.", StringComparison.Ordinal)));

    public static TheoryData<string> Names => [.. Factories.Select(m => m.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_refusal_is_documented_as_the_program_says_it(string factory)
    {
        var code = Codes[factory].Single();
        Documented.Should().ContainKey(code, "docs/refusals.md lists every refusal, with its code, an example and its text");

        var (example, text, askAgain) = Documented[code];
        Said(Factories.Single(m => m.Name == factory), example).Should().Be(new Refusal(code, text, askAgain));
    }

    [Fact]
    public void No_refusal_is_documented_that_cannot_be_met() =>
        Documented.Keys.Should().BeSubsetOf(Codes.SelectMany(c => c));

    private static Refusal Said(MethodInfo factory, string example)
    {
        var given = example.Split("; ").Select(a => a.Split(" = ")).ToDictionary(a => a[0], a => a[1]);
        given.Keys.Should().BeEquivalentTo(factory.GetParameters().Select(p => p.Name), $"the example of {factory.Name} names its arguments");
        return (Refusal)factory.Invoke(null, [.. factory.GetParameters().Select(p => Argument(p.ParameterType, given[p.Name!]))])!;
    }

    private static object Argument(Type type, string text) => type switch
    {
        _ when type == typeof(string) => text,
        _ when type == typeof(int) => int.Parse(text, CultureInfo.InvariantCulture),
        _ when type == typeof(decimal) => decimal.Parse(text, CultureInfo.InvariantCulture),
        _ when type == typeof(DateOnly) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ when type == typeof(Step) => Enum.GetValues<Step>().Single(s => StepWords.Name(s) == text),
        _ when type == typeof(Van) && text.Split(' ') is [var code, var name] => Tiny.Van(code, 1, name, 0),
        _ when type == typeof(Technician) && text.Split(' ', 2) is [var code, var name] => new Technician(new(code), name, false, null, []),
        _ when type == typeof(Item) => Tiny.Lamp with { Description = text },
        _ when type == typeof(Shift) => ShiftOf(text),
        _ when type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Code<>) => Activator.CreateInstance(type, text)!,
        _ => throw new InvalidOperationException($"no way to read '{text}' as {type.Name}"),
    };

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

    [GeneratedRegex(@"^### `(?<code>[a-z-]+)`\n(?<met>Met when [^\n]+)\nExample: `(?<example>[^`\n]+)`\n> (?<text>[^\n]+)$", RegexOptions.Multiline)]
    private static partial Regex Section();

    [GeneratedRegex(@"^in at (?<in>\d\d:\d\d) with (?<who>\w+)(, signed at (?<signed>\d\d:\d\d) by (?<signer>\w+))?$")]
    private static partial Regex Evening();
}
