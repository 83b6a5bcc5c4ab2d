namespace Closeout.Faults.Machine;

/// <summary>A folder that goes away, in memory where the system has such a place: what is fuzzed is a reader, not the disk.</summary>
internal sealed class FastFolder : IDisposable
{
    private readonly string path = Directory.CreateDirectory(Path.Combine(
        Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath(), $"closeout-fuzz-{Guid.NewGuid():N}")).FullName;

    public string At(string name) => Path.GetFullPath(Path.Combine(path, name));

    public void Dispose() => Directory.Delete(path, recursive: true);
}
