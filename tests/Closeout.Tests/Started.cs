using System.Diagnostics;

namespace Closeout.Tests;

/// <summary>A program of this repository run to its end as a process of its own.</summary>
internal sealed record Started(int Code, string Out, string Err)
{
    /// <summary><c>closeout</c>, in a working folder; standard input is empty and no terminal is there.</summary>
    public static Started Closeout(string folder, params string[] args) => End(Begin(Built.Closeout, folder, args));

    /// <summary>The same with so many megabytes of memory for its objects, and no more.</summary>
    public static Started CloseoutWithin(int megabytes, string folder, params string[] args) =>
        End(Begin([], Built.Closeout, folder, args, ("DOTNET_GCHeapHardLimit", FormattableString.Invariant($"0x{(long)megabytes << 20:X}"))));

    /// <summary>The same begun by another program: one that takes something away from it.</summary>
    /// <param name="by">The program and its arguments, to which ours are added.</param>
    public static Started CloseoutBy(string[] by, string folder, params string[] args) => End(Begin(by, Built.Closeout, folder, args));

    private static Started End(Process begun)
    {
        using var process = begun;
        using var patience = new Timer(_ => process.Kill(), null, TimeSpan.FromSeconds(60), Timeout.InfiniteTimeSpan);
        process.StandardInput.Close();
        var err = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, said, err.Result);
    }

    public static Process Begin(string program, string folder, params string[] args) => Begin([], program, folder, args);

    private static Process Begin(string[] by, string program, string folder, string[] args, params (string Name, string Value)[] environment)
    {
        string[] words = [.. by, .. Built.Words(program), .. args];
        var start = new ProcessStartInfo(words[0])
        {
            WorkingDirectory = folder, UseShellExecute = false,
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        foreach (var arg in words[1..])
        {
            start.ArgumentList.Add(arg);
        }

        start.Environment["DOTNET_DbgEnableMiniDump"] = "0";
        start.Environment["DOTNET_TieredPGO"] = "0";

        // Code that is compiled goes through a file else: slower to begin, and a limit on the length of files would stop it.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }
}
