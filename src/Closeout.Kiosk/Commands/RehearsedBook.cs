using Closeout.Store;

namespace Closeout.Commands;

/// <summary>
/// The book that a rehearsal works on, beside its place and under a name of its own, until it takes that place. A file beside
/// it is held as long as the rehearsal lives: where nobody holds it, the rehearsal was killed, and the next one of the same
/// place removes what it left.
/// </summary>
internal sealed class RehearsedBook : IDisposable
{
    private const string Mark = ".rehearsing";

    private readonly BookFolder target;
    private readonly FileStream living;

    public RehearsedBook(BookFolder target)
    {
        this.target = target;
        Folder = new($"{target.Path}.{Guid.NewGuid():N}");
        living = Disk.Own(Folder.Path + Mark, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);
        var (above, name) = (Path.GetDirectoryName(Path.GetFullPath(target.Path))!, Path.GetFileName(target.Path));
        foreach (var other in Directory.EnumerateFiles(above, $"{name}.*{Mark}").Where(o => o != living.Name && IsMark(o)).ToList())
        {
            // Else it lives, or is somebody else's.
            if (Disk.Try(() => Disk.Own(other, FileMode.Open, FileAccess.ReadWrite, FileShare.None).Dispose()))
                Remove(other);
        }
    }

    public BookFolder Folder { get; }

    /// <summary>
    /// Takes the place. The book there goes out of the way first and is removed afterwards: one half removed has perhaps lost
    /// its mark already, and is no rehearsal's any more.
    /// </summary>
    public void Keep()
    {
        if (Directory.Exists(target.Path))
            Directory.Move(target.Path, Folder.Path + ".old");

        Directory.Move(Folder.Path, target.Path);
    }

    public void Dispose()
    {
        living.Dispose();
        Remove(living.Name);
    }

    private bool IsMark(string path) =>
        Guid.TryParseExact(Path.GetFileName(path)[(Path.GetFileName(target.Path).Length + 1)..^Mark.Length], "N", out _);

    /// <summary>Removes the mark last: as long as anything of what it marks is left, the next rehearsal tries again.</summary>
    private static void Remove(string mark) => Disk.Try(() =>
    {
        var folder = mark[..^Mark.Length];
        foreach (var left in new[] { folder, folder + ".old" }.Where(Directory.Exists))
            Directory.Delete(left, recursive: true);

        File.Delete(mark);
    });
}
