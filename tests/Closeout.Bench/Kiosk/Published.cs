using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Closeout.Bench.Kiosk;

/// <summary>A program of this tree, published in one of three ways for this machine.</summary>
/// <param name="Way">As a table says it.</param>
public sealed record Published(string Name, string Way, string Folder)
{
    private const string AheadOfTime = "ahead of time";
    private const string Bare = "tests/Closeout.Bench/Hello";
    private static readonly string Machine = RuntimeInformation.RuntimeIdentifier;

    /// <summary>Its file to start.</summary>
    public string Program => Path.Combine(Folder, Name);

    public long Bytes => new DirectoryInfo(Folder).EnumerateFiles("*", SearchOption.AllDirectories).Sum(f => f.Length);

    /// <summary>The program, ahead of time first, and in the two ways that it is not published.</summary>
    /// <param name="folder">Where the results go, each in a folder of its own.</param>
    public static IReadOnlyList<Published> Kiosk(string folder) =>
        [Packed(folder), .. WithRuntime("closeout", "src/Closeout.Kiosk", folder)];

    /// <summary>The same of a window of the terminal library with nothing in it.</summary>
    public static IReadOnlyList<Published> Hello(string folder) =>
    [
        Of("hello", Bare, AheadOfTime, "-p:PublishAot=true", Path.Combine(folder, "hello-ahead")),
        .. WithRuntime("hello", Bare, folder),
    ];

    private static IReadOnlyList<Published> WithRuntime(string name, string project, string folder) =>
    [
        Of(name, project, "ready to run", "--self-contained false -p:PublishReadyToRun=true", Path.Combine(folder, name + "-ready")),
        Of(name, project, "just in time", "--self-contained false", Path.Combine(folder, name + "-jit")),
    ];

    /// <summary>The program as it is published.</summary>
    public static Published Packed(string folder) =>
        Of("closeout", "src/Closeout.Kiosk", AheadOfTime, "-p:PublishProfile=Packed", Path.Combine(folder, "closeout-ahead"));

    /// <param name="project">Its folder in the tree.</param>
    private static Published Of(string name, string project, string way, string how, string folder)
    {
        using var process = Process.Start(
            new ProcessStartInfo("dotnet", $"publish {TempFolder.InTree(project)} -c Release -r {Machine} {how} -p:PublishDir={folder}/")
            {
                RedirectStandardOutput = true,
            })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? new(name, way, folder) : throw new InvalidOperationException(said);
    }
}
