using System.Runtime.CompilerServices;

namespace Closeout.Tests;

/// <summary>Where committed files lie, found from this source file.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", ".."));

    public static string SampleDay => Path.Combine(Root, "sample-day");

    public static string Golden(params string[] parts) => Path.Combine([Here(), "Golden", .. parts]);

    public static string Transcripts => Path.Combine(Here(), "Transcripts");

    private static string Here([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
