using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Closeout.Tests.Commands;

/// <summary>The program's commands in a process apart, one process for many of them. No terminal is there.</summary>
/// <remarks>
/// What <see cref="Started.Closeout"/> does with a process for each; that costs ten times as much. The packed program has no other way.
/// </remarks>
public sealed class CommandsInOne : IDisposable
{
    private const char End = '\u0004';

    private readonly Process? process = Built.Packed is not null ? null : Started.Begin(Built.Appender, Path.GetTempPath(), "commands");

    /// <param name="folder">The working folder.</param>
    internal Started Run(string folder, params string[] args)
    {
        if (process is null)
            return Started.Closeout(folder, args);

        using var patience = new Timer(_ => process.Kill(), null, TimeSpan.FromSeconds(60), Timeout.InfiniteTimeSpan);
        process.StandardInput.WriteLine(JsonSerializer.Serialize<string[]>([folder, .. args]));
        process.StandardInput.Flush();
        var err = Task.Run(() => UpTo(End, process.StandardError));
        var said = UpTo(End, process.StandardOutput);
        var code = int.Parse(UpTo('\n', process.StandardOutput), CultureInfo.InvariantCulture);
        return new(code, said, err.Result);
    }

    public void Dispose()
    {
        process?.Kill();
        process?.WaitForExit();
        process?.Dispose();
    }

    private static string UpTo(char end, StreamReader stream)
    {
        var text = new StringBuilder();
        for (int read; (read = stream.Read()) != end; text.Append((char)read))
        {
            if (read < 0)
            {
                throw new EndOfStreamException($"the program ended in the middle of a command, after: {text}");
            }
        }

        return text.ToString();
    }
}
