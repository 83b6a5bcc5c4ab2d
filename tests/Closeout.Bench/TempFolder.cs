namespace Closeout.Bench;

/// <summary>A folder of its own that goes away with its user.</summary>
public sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("closeout-bench-").FullName;

    public string At(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);

    /// <summary>A folder of this source tree, found upwards from the program.</summary>
    public static string InTree(string name)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(at.FullName, "Closeout.sln")))
            {
                return System.IO.Path.Combine(at.FullName, name);
            }
        }

        throw new InvalidOperationException("not inside the source tree");
    }
}
