using System.Globalization;
using System.Text;

namespace Closeout.Faults.Kill;

/// <summary>What a person sees on a terminal: as much of one as the kiosk's output needs. One column for each character.</summary>
internal sealed class SeenScreen(int width, int height)
{
    private readonly char[,] cells = Blank(width, height);
    private readonly StringBuilder sequence = new();
    private (int Row, int Column) at;
    private bool isEscape;

    /// <summary>Takes in what the program sent.</summary>
    public void Take(ReadOnlySpan<char> text)
    {
        foreach (var c in text)
        {
            Take(c);
        }
    }

    public override string ToString()
    {
        var text = new StringBuilder();
        for (var row = 0; row < height; row++)
        {
            text.Append(string.Concat(Enumerable.Range(0, width).Select(c => cells[row, c])).TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    private void Take(char c)
    {
        if (isEscape)
        {
            sequence.Append(c);
            isEscape = !IsWhole();
            if (!isEscape)
            {
                Obey(sequence.ToString());
            }
        }
        else if (c == '\u001b')
        {
            isEscape = true;
            sequence.Clear();
        }
        else
        {
            Write(c);
        }
    }

    private void Write(char c)
    {
        switch (c)
        {
            case '\r':
                at.Column = 0;
                break;
            case '\n':
                at.Row = Math.Min(at.Row + 1, height - 1);
                break;
            case '\b':
                at.Column = Math.Max(0, at.Column - 1);
                break;
            case >= ' ' when at.Column < width:
                cells[at.Row, at.Column++] = c;
                break;
        }
    }

    /// <summary>Whether the sequence so far, without its escape, is complete.</summary>
    private bool IsWhole() => (sequence[0], sequence[^1]) switch
    {
        ('[', >= '@' and <= '~') => sequence.Length > 1,
        (']' or 'P', '\a' or '\\') => true,
        ('[' or ']' or 'P', _) => false,
        ('(' or ')' or '#', _) => sequence.Length == 2,
        _ => true,
    };

    private void Obey(string whole)
    {
        if (whole is not ['[', .. var parameters, var command])
        {
            return;
        }

        var numbers = parameters.Split(';').Select(n => int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0).ToList();
        switch (command)
        {
            case 'H' or 'f':
                at = (Math.Clamp(numbers[0] - 1, 0, height - 1), Math.Clamp(numbers.ElementAtOrDefault(1) - 1, 0, width - 1));
                break;
            case 'A':
                at.Row = Math.Max(0, at.Row - Math.Max(1, numbers[0]));
                break;
            case 'B':
                at.Row = Math.Min(height - 1, at.Row + Math.Max(1, numbers[0]));
                break;
            case 'C':
                at.Column = Math.Min(width - 1, at.Column + Math.Max(1, numbers[0]));
                break;
            case 'D':
                at.Column = Math.Max(0, at.Column - Math.Max(1, numbers[0]));
                break;
            case 'G':
                at.Column = Math.Clamp(numbers[0] - 1, 0, width - 1);
                break;
            case 'J':
                Erase(0, height);
                break;
            case 'K':
                for (var column = at.Column; column < width; column++)
                {
                    cells[at.Row, column] = ' ';
                }

                break;
        }
    }

    private void Erase(int from, int to)
    {
        for (var row = from; row < to; row++)
        {
            for (var column = 0; column < width; column++)
            {
                cells[row, column] = ' ';
            }
        }
    }

    private static char[,] Blank(int width, int height)
    {
        var cells = new char[height, width];
        for (var row = 0; row < height; row++)
        {
            for (var column = 0; column < width; column++)
            {
                cells[row, column] = ' ';
            }
        }

        return cells;
    }
}
