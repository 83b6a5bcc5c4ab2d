namespace Closeout.Tests;

/// <summary>
/// The programs of this repository, and the words that start them. Where CLOSEOUT_PROGRAM names a packed program (<c>.ci/pack</c>), that
/// is <c>closeout</c>, whoever starts it.
/// </summary>
internal static class Built
{
    public const string Closeout = "closeout.dll";
    public const string Appender = "Closeout.Appender.dll";
    public const string Faults = "Closeout.Faults.dll";

    /// <summary>The mark of a test that starts <c>closeout</c> as a process: it is run against the packed program as well.</summary>
    public const string Starts = "Starts";

    private const string Variable = "CLOSEOUT_PROGRAM";

    /// <summary>Null: none is named, and the built one is started.</summary>
    public static string? Packed { get; } = Environment.GetEnvironmentVariable(Variable) switch
    {
        null or "" => null,
        var path when Path.IsPathFullyQualified(path) && File.Exists(path) => path,
        var path => throw new InvalidOperationException($"{Variable} is no full path of a file: {path}"),
    };

    /// <summary>The words that start a program, before its own arguments.</summary>
    public static string[] Words(string program) =>
        program == Closeout && Packed is { } packed ? [packed] : [Host, Path.Combine(AppContext.BaseDirectory, program)];

    private static string Host => Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path) == "dotnet" ? path : "dotnet";
}
