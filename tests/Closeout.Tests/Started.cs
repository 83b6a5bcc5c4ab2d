using System.Diagnostics;

namespace Closeout.Tests;

/// <summary>A program of this repository run to its end as a process of its own.</summary>
internal sealed record Started(int Code, string Out, string Err)
{
    /// <summary>The built program, in a working folder; standard input is empty and no terminal is there.</summary>
    public static Started Closeout(string folder, params string[] args)
    {
        using var process = Begin("closeout.dll", folder, args);
        using var patience = new Timer(_ => process.Kill(), null, TimeSpan.FromSeconds(60), Timeout.InfiniteTimeSpan);
        process.StandardInput.Close();
        var err = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, said, err.Result);
    }

    public static Process Begin(string program, string folder, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder, UseShellExecute = false,
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        foreach (var arg in args.Prepend(Path.Combine(AppContext.BaseDirectory, program)))
        {
            start.ArgumentList.Add(arg);
        }

        start.Environment["DOTNET_DbgEnableMiniDump"] = "0";
        start.Environment["DOTNET_TieredPGO"] = "0";
        return Process.Start(start)!;
    }
}
