using System.Diagnostics;
using Closeout.Tests;

namespace Closeout.Faults.Machine;

/// <summary>This program once more, as a process of its own: it can be killed, stopped and recorded.</summary>
internal static class Child
{
    /// <summary>The words that start a part of this program.</summary>
    public static IEnumerable<string> Command(params string[] arguments) => [.. Built.Words(Built.Faults), .. arguments];

    public static Process Part(params string[] arguments) => Begin([.. Command(arguments)]);

    /// <summary>Starts a program with its streams at hand.</summary>
    public static Process Begin(IReadOnlyList<string> words)
    {
        var start = new ProcessStartInfo(words[0])
        {
            UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        foreach (var word in words.Skip(1))
        {
            start.ArgumentList.Add(word);
        }

        return Process.Start(start)!;
    }
}
