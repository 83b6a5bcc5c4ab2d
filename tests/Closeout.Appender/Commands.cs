using System.Text.Json;
using Closeout.Commands;

namespace Closeout.Appender;

/// <summary>The program's own commands, one after another in this process: most of what a short one costs is to begin.</summary>
internal static class Commands
{
    /// <summary>Stands behind all that a command says, on both streams. No command says it.</summary>
    private const char End = '\u0004';

    /// <summary>
    /// Each line of standard input is a working folder and the words of a command, as JSON. Behind what it says on standard
    /// output stands its exit code.
    /// </summary>
    public static int Play()
    {
        var program = typeof(CommandLine).Assembly.EntryPoint!;
        while (Console.ReadLine() is { } line)
        {
            var words = JsonSerializer.Deserialize<string[]>(line)!;
            Environment.CurrentDirectory = words[0];
            var code = program.Invoke(null, [words[1..]]);
            Console.Error.Write(End);
            Console.Out.Write($"{End}{code}\n");
        }

        return 0;
    }
}
