using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace Closeout.Facts;

/// <summary>
/// What is said to people, in the language that is spoken now. A sentence is written in English where it is said, in <c>T($"...")</c>; that
/// English, its holes numbered, is the key of its translation. Which language is spoken is the thread's and the shell's to say: it changes
/// words, and never a decision, an entry, a code or a file that other programs read.
/// </summary>
public static class Tongue
{
    [ThreadStatic]
    private static Func<string, string?>? spoken;

    /// <summary>The language that is spoken; null: English.</summary>
    public static Func<string, string?>? Spoken => spoken;

    /// <summary>Whether English is spoken: what is written is said as it is.</summary>
    public static bool IsEnglish => spoken is null;

    /// <summary>A sentence without holes, or a word.</summary>
    public static string T(string english) => spoken?.Invoke(english) ?? english;

    /// <summary>A sentence with what stands in its holes; numbers and dates look the same in every language.</summary>
    public static string T(Sentence english) => english.Said();

    /// <summary>A word that is kept in English, in an entry or a list, and said with <see cref="T(string)"/> later.</summary>
    public static string Later(string english) => english;

    /// <summary>Does something while a language is spoken, and speaks the one before again.</summary>
    /// <param name="language">Gives for a key what is said, null for what has no translation; null: English.</param>
    public static TResult Speaking<TResult>(Func<string, string?>? language, Func<TResult> act)
    {
        var before = spoken;
        spoken = language;
        try
        {
            return act();
        }
        finally
        {
            spoken = before;
        }
    }

    /// <summary>From here on another language is spoken, until what <see cref="Speaking"/> does is done.</summary>
    public static void Speak(Func<string, string?>? language) => spoken = language;

    /// <summary>Does something in English: what other programs read, and what is kept, has one language.</summary>
    public static TResult English<TResult>(Func<TResult> act) => Speaking(null, act);

    /// <summary>An interpolated sentence: said at once in English, else taken apart into its key and what stands in its holes.</summary>
    [InterpolatedStringHandler]
    public ref struct Sentence
    {
        private readonly StringBuilder? key;
        private readonly List<object?>? holes;
        private DefaultInterpolatedStringHandler english;

        public Sentence(int literalLength, int formattedCount)
        {
            if (IsEnglish)
                english = new(literalLength, formattedCount, CultureInfo.InvariantCulture);
            else
                (key, holes) = (new(literalLength + (4 * formattedCount)), new(formattedCount));
        }

        public void AppendLiteral(string text)
        {
            if (key is null)
                english.AppendLiteral(text);
            else
                key.Append(text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));
        }

        public void AppendFormatted<TValue>(TValue value, int alignment = 0, string? format = null)
        {
            if (key is null)
            {
                english.AppendFormatted(value, alignment, format);
                return;
            }

            key.Append('{').Append(holes!.Count);
            if (alignment != 0)
                key.Append(CultureInfo.InvariantCulture, $",{alignment}");

            key.Append(format is null ? "" : $":{format}").Append('}');
            holes.Add(value);
        }

        internal string Said() => key is null
            ? english.ToStringAndClear()
            : string.Format(CultureInfo.InvariantCulture, T(key.ToString()), [.. holes!]);
    }
}
