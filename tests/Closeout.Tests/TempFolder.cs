namespace Closeout.Tests;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class TempFolder : IDisposable
{
    /// <param name="inMemory">Where the system has such a place: for tests of what is read, not of the disk.</param>
    public TempFolder(bool inMemory = false)
    {
        var place = inMemory && Directory.Exists("/dev/shm") ? "/dev/shm" : System.IO.Path.GetTempPath();
        Path = System.IO.Path.Combine(place, $"closeout-test-{Guid.NewGuid():N}");
        Directory.CreateDirectory(Path);
    }

    public string Path { get; }

    public string this[params string[] parts] => System.IO.Path.Combine([Path, .. parts]);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
