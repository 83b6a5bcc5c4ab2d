using System.Text;

namespace Closeout.Files;

/// <summary>The codes that a file lists. Those of faulty rows count too: their users are not at fault.</summary>
/// <param name="table">What they are read from; null: a file that need not list them all.</param>
public sealed class Known<TKind>(string file, CsvTable? table)
{
    private const int LatelyBits = 11;

    private readonly Dictionary<Code<TKind>, int> numbers = [];
    private readonly List<Code<TKind>> codes = [];

    /// <summary>What was found a moment ago, by its bytes: a large file names the same few codes again and again.</summary>
    private readonly (CodeBytes Text, int Number)[] lately = new (CodeBytes, int)[1 << LatelyBits];

    private int last;

    public string File => file;

    /// <summary>False where the file could not be read, or not to its end: then nothing is told of codes that it may hold.</summary>
    public bool IsComplete => table is { IsWhole: true };

    /// <summary>The codes, each in the spelling it has there, in the order in which they were added.</summary>
    public IReadOnlyList<Code<TKind>> Codes => codes;

    /// <summary>The code in the spelling it has there; null: it is not listed.</summary>
    public Code<TKind>? Find(Code<TKind> code) => NumberOf(code) is { } number ? codes[number] : null;

    /// <summary>The code that a text in UTF-8 is, in the spelling it has there; null: it is not listed.</summary>
    public Code<TKind>? Find(ReadOnlySpan<byte> text)
    {
        if (text.Length is 0 or > CodeBytes.Most)
            return null;

        var bytes = CodeBytes.Of(text);
        ref var seen = ref lately[bytes.Hash(LatelyBits)];
        if (seen.Text != bytes)
        {
            if (NumberOf(new(Encoding.UTF8.GetString(text))) is not { } number)
                return null;

            seen = (bytes, number);
        }

        last = seen.Number;
        return codes[last];
    }

    /// <summary>Which of <see cref="Codes"/> it is, from 0; null: it is not listed.</summary>
    public int? NumberOf(Code<TKind> code)
    {
        if (code.Text is not null && last < codes.Count && ReferenceEquals(codes[last].Text, code.Text))
            return last;

        return numbers.TryGetValue(code, out var number) ? number : null;
    }

    /// <summary>Adds a code; false when it stands already.</summary>
    public bool Add(Code<TKind> code)
    {
        if (NumberOf(code) is not null)
            return false;

        numbers.Add(code, codes.Count);
        codes.Add(code);
        return true;
    }

    /// <summary>The same codes and others, each of which stands for one of them, or for itself.</summary>
    public Known<TKind> With(IEnumerable<(Code<TKind> Code, Code<TKind> For)> others)
    {
        var both = new Known<TKind>(file, table);
        foreach (var code in codes)
            both.Add(code);

        foreach (var (code, stands) in others)
        {
            both.Add(stands);
            both.numbers[code] = both.numbers[stands];
        }

        return both;
    }
}
