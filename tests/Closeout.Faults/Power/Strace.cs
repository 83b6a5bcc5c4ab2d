using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Closeout.Faults.Power;

/// <summary>Runs a program under <c>strace</c> and reads what it asked of the disk: the system's own record, so nothing that the program does is missed.</summary>
/// <remarks>An act that this does not know, on a path below the folder, is an error and not passed over.</remarks>
internal static partial class Strace
{
    private const string Calls =
        "openat,open,creat,write,pwrite64,pwritev,pwritev2,writev,ftruncate,truncate,fsync,fdatasync,sync_file_range,rename,renameat,renameat2,"
        + "unlink,unlinkat,rmdir,mkdir,mkdirat,link,linkat,symlink,symlinkat,fallocate,copy_file_range,sendfile";

    /// <param name="folder">What the program writes below it is recorded. It must exist.</param>
    public static List<DiskAct> Record(string folder, string log, IReadOnlyList<string> command)
    {
        var start = new ProcessStartInfo("strace") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in new[] { "-f", "-y", "-xx", "-s", "67108864", "--seccomp-bpf", "-e", "signal=none", "-e", "trace=" + Calls, "-o", log }.Concat(command))
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var err = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? [.. Acts(File.ReadLines(log), folder)]
            : throw new InvalidOperationException($"the recorded program ended with {process.ExitCode}: {err.Result}");
    }

    /// <summary>The acts of a log, in the order in which they were done.</summary>
    public static IEnumerable<DiskAct> Acts(IEnumerable<string> log, string folder)
    {
        var begun = new Dictionary<string, string>();
        var there = new HashSet<string>();
        foreach (var line in log)
        {
            var parts = LinePattern().Match(line);
            if (!parts.Success)
            {
                continue;
            }

            var (thread, text) = (parts.Groups[1].Value, parts.Groups[2].Value);
            if (text.EndsWith(" <unfinished ...>", StringComparison.Ordinal))
            {
                begun[thread] = text[..^" <unfinished ...>".Length];
                continue;
            }

            if (ResumedPattern().Match(text) is { Success: true } resumed)
            {
                text = begun[thread] + text[resumed.Length..];
            }

            if (Act(text, folder, there) is { } act)
            {
                yield return act;
            }
        }
    }

    private static DiskAct? Act(string text, string folder, HashSet<string> there)
    {
        var call = CallPattern().Match(text);
        if (!call.Success || call.Groups["result"].Value.StartsWith('-'))
        {
            return null;
        }

        var (name, arguments) = (call.Groups["name"].Value, call.Groups["arguments"].Value);
        if (name == "write" && Open(arguments, folder) is null)
        {
            return AckPattern().Match(Encoding.UTF8.GetString(Bytes(arguments))) is { Success: true } ack
                ? new Acknowledged(int.Parse(ack.Groups[1].Value, CultureInfo.InvariantCulture))
                : null;
        }

        var (open, names) = (Open(arguments, folder), Names(arguments, folder));
        var made = call.Groups["result"].Value;
        return name switch
        {
            "openat" or "open" or "creat" when names is [var path] && arguments.Contains("O_CREAT", StringComparison.Ordinal) && there.Add(path) => new Created(path),
            "openat" or "open" when names is [var path] && arguments.Contains("O_TRUNC", StringComparison.Ordinal) => new Sized(path, 0),
            "openat" or "open" => null,
            "pwrite64" when open is { } path => new Wrote(path, Last(arguments), Bytes(arguments)[..int.Parse(made, CultureInfo.InvariantCulture)]),
            "ftruncate" when open is { } path => new Sized(path, Last(arguments)),
            "fsync" or "fdatasync" when open is { } path => new Flushed(path),
            "rename" or "renameat" or "renameat2" when names is [var from, var to] => Moved(there, from, to),
            "unlink" or "rmdir" or "unlinkat" when names is [var path] => Gone(there, path),
            "mkdir" or "mkdirat" when names is [var path] => new FolderMade(path),
            _ when open is not null || names.Count > 0 => throw new NotSupportedException($"{name} on {open ?? names[0]} is not known here"),
            _ => null,
        };
    }

    private static Renamed Moved(HashSet<string> there, string from, string to)
    {
        there.Remove(from);
        there.Add(to);
        return new(from, to);
    }

    private static Removed Gone(HashSet<string> there, string path)
    {
        there.Remove(path);
        return new(path);
    }

    /// <summary>The open file that a call works on, below the folder; null: another, or one that has no name any more.</summary>
    private static string? Open(string arguments, string folder) => FilePattern().Match(arguments) is { Success: true } file ? Below(file.Groups[1].Value, folder) : null;

    private static List<string> Names(string arguments, string folder) =>
        arguments.StartsWith("AT_FDCWD", StringComparison.Ordinal) || arguments.StartsWith('"')
            ? [.. TextPattern().Matches(arguments).Select(t => Below(t.Groups[1].Value, folder)).OfType<string>()]
            : [];

    private static string? Below(string hex, string folder)
    {
        var path = Encoding.UTF8.GetString(Unescaped(hex));
        return path == folder ? "" : path.StartsWith(folder + "/", StringComparison.Ordinal) ? path[(folder.Length + 1)..].TrimEnd('/') : null;
    }

    private static byte[] Bytes(string arguments) => Unescaped(TextPattern().Match(arguments).Groups[1].Value);

    private static byte[] Unescaped(string hex) => Convert.FromHexString(hex.Replace("\\x", "", StringComparison.Ordinal));

    private static long Last(string arguments) => long.Parse(arguments[(arguments.LastIndexOf(' ') + 1)..], CultureInfo.InvariantCulture);

    [GeneratedRegex("^([0-9]+) +(.*)$")]
    private static partial Regex LinePattern();

    [GeneratedRegex(@"^<\.\.\. [a-z0-9_]+ resumed>")]
    private static partial Regex ResumedPattern();

    [GeneratedRegex(@"^(?<name>[a-z0-9_]+)\((?<arguments>.*)\) += (?<result>-?[0-9]+)", RegexOptions.RightToLeft)]
    private static partial Regex CallPattern();

    [GeneratedRegex(@"^[0-9]+<((?:\\x[0-9a-f]{2})+)>(?!\(deleted\))")]
    private static partial Regex FilePattern();

    [GeneratedRegex("\"((?:\\\\x[0-9a-f]{2})*)\"")]
    private static partial Regex TextPattern();

    [GeneratedRegex("^ack ([0-9]+)\n$")]
    private static partial Regex AckPattern();
}
