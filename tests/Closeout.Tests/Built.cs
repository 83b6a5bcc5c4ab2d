namespace Closeout.Tests;

/// <summary>The programs of this repository as they were built, and the words that start them.</summary>
internal static class Built
{
    public const string Closeout = "closeout.dll";
    public const string Appender = "Closeout.Appender.dll";
    public const string Faults = "Closeout.Faults.dll";

    /// <summary>The words that start a program, before its own arguments.</summary>
    public static string[] Words(string program) => [Host, Path.Combine(AppContext.BaseDirectory, program)];

    private static string Host => Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path) == "dotnet" ? path : "dotnet";
}
