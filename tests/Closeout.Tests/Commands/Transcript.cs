using System.Text;
using System.Text.RegularExpressions;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>
/// Plays the files in Transcripts/: each in a folder of its own with the small day in <c>day</c>. A line that begins with
/// <c>$</c> is done; below it stands what must come of it.
/// </summary>
/// <remarks>
/// <c>$ closeout ...</c> runs the program, all files of a folder in one process unless it is the packed one: its output, its errors behind <c>! </c>, and <c>= code</c> unless it is 0.
/// <c>...</c> alone stands for any output, and <c>######</c> for the digits of a PIN that was drawn. <c>$ edit FILE: was => now</c> (<c>\n</c> is a line end, <c>(nothing)</c> nothing), <c>$ write FILE: text</c>,
/// <c>$ copy A B</c>, <c>$ remove FILE</c> work on files; <c>$ list FOLDER</c> and <c>$ show FILE</c> (its empty lines left out) say what is there,
/// <c>$ same A B</c> says whether two files are equal to the byte.
/// </remarks>
internal static partial class Transcript
{
    /// <summary>The transcripts of a folder, by name.</summary>
    public static TheoryData<string> In(string folder) =>
        [.. Directory.GetFiles(Path.Combine(Repository.Transcripts, folder), "*.txt").Select(f => folder + "/" + Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    public static void ComesOutAsWritten(string name, CommandsInOne program)
    {
        var written = File.ReadAllText(Path.Combine(Repository.Transcripts, name)).ReplaceLineEndings("\n");
        using var temp = new TempFolder();
        SmallDay.Write(temp["day"]);
        var played = new StringBuilder();
        foreach (var block in Blocks(written))
        {
            played.Append(block[0].StartsWith('$') ? Play(temp, program, block) : string.Concat(block.Select(l => l + "\n")));
        }

        played.ToString().Should().Be(written);
    }

    /// <summary>A block begins at each <c>$</c>, comment or empty line.</summary>
    private static IEnumerable<List<string>> Blocks(string text)
    {
        var block = new List<string>();
        foreach (var line in text.TrimEnd('\n').Split('\n'))
        {
            if (block.Count > 0 && (line.Length == 0 || line[0] is '$' or '#'))
            {
                yield return block;
                block = [];
            }

            block.Add(line);
        }

        yield return block;
    }

    private static string Play(TempFolder temp, CommandsInOne program, List<string> block)
    {
        var line = block[0][2..];
        var words = line.Split(' ');
        var told = words[0] == "closeout" ? Run(temp, program, words[1..], anything: block.Contains("...")) : Do(temp, words[0], line[(words[0].Length + 1)..]);
        return block[0] + "\n" + told.Replace(temp.Path, ".", StringComparison.Ordinal);
    }

    private static string Run(TempFolder temp, CommandsInOne program, string[] args, bool anything)
    {
        var run = program.Run(temp.Path, [.. args.Select(a => a == "\"\"" ? "" : a)]);
        var text = new StringBuilder();
        text.Append(anything && run.Out.Length > 0 ? "...\n" : Drawn().Replace(run.Out.Replace("\r\n", "\n", StringComparison.Ordinal), "######"));
        // How far the archive is, is said only where the machine is busy.
        foreach (var error in run.Err.Split('\n')[..^1].Where(e => !e.StartsWith("Bringing the archive up to the pages: ", StringComparison.Ordinal)))
        {
            text.Append("! ").Append(error).Append('\n');
        }

        return run.Code == 0 ? text.ToString() : text.Append("= ").Append(run.Code).Append('\n').ToString();
    }

    [GeneratedRegex(@"(?<=^First PIN of lead .*: )\d{6}(?=\. It is shown once)", RegexOptions.Multiline)]
    private static partial Regex Drawn();

    private static string Do(TempFolder temp, string verb, string rest)
    {
        var paths = rest.Split(' ').Select(p => temp[p.Split('/')]).ToArray();
        var (file, text) = rest.IndexOf(": ", StringComparison.Ordinal) is var at and > 0 ? (temp[rest[..at].Split('/')], rest[(at + 2)..].Replace("\\n", "\n", StringComparison.Ordinal)) : ("", "");
        switch (verb)
        {
            case "edit":
                var (before, was, now) = (File.ReadAllText(file), text.Split(" => ")[0], text.Split(" => ")[1].Replace("(nothing)", "", StringComparison.Ordinal));
                before.Should().Contain(was);
                File.WriteAllText(file, before.Replace(was, now, StringComparison.Ordinal));
                return "";
            case "write":
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                File.WriteAllText(file, text);
                return "";
            case "copy":
                File.Copy(paths[0], paths[1], overwrite: true);
                return "";
            case "remove":
                File.Delete(paths[0]);
                return "";
            case "list":
                return Directory.Exists(paths[0]) ? string.Concat(Directory.EnumerateFileSystemEntries(paths[0]).Select(p => Path.GetFileName(p) + "\n").Order(StringComparer.Ordinal)) : "no such folder\n";
            case "show":
                return File.Exists(paths[0]) ? string.Concat(File.ReadAllLines(paths[0]).Where(l => l.Length > 0).Select(l => l + "\n")) : "no such file\n";
            case "same":
                return File.ReadAllBytes(paths[0]).AsSpan().SequenceEqual(File.ReadAllBytes(paths[1])) ? "yes\n" : "no\n";
            default:
                throw new ArgumentException($"no verb {verb}", nameof(verb));
        }
    }
}
