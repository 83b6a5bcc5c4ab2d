using System.Text.RegularExpressions;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>
/// The book that a rehearsal works on, beside its place and under a name of its own, until it takes that place. A file beside
/// it is held as long as the rehearsal lives: where nobody holds it, the rehearsal was killed, and the next one of the same
/// place removes what it left.
/// </summary>
internal sealed partial class RehearsedBook : IDisposable
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
            RemoveDead(other);
        }
    }

    public BookFolder Folder { get; }

    private string Old => Folder.Path + ".old";

    /// <summary>
    /// Takes the place. The book there goes out of the way first and is removed afterwards: one half removed has perhaps lost
    /// its mark already, and is no rehearsal's any more.
    /// </summary>
    public void Keep()
    {
        if (Directory.Exists(target.Path))
        {
            Directory.Move(target.Path, Old);
        }

        Directory.Move(Folder.Path, target.Path);
    }

    public void Dispose()
    {
        living.Dispose();
        Remove(living.Name);
    }

    private bool IsMark(string path) => Name().IsMatch(Path.GetFileName(path)[(Path.GetFileName(target.Path).Length + 1)..^Mark.Length]);

    private static void RemoveDead(string mark)
    {
        try
        {
            using var dead = Disk.Own(mark, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It lives, or is somebody else's.
            return;
        }

        Remove(mark);
    }

    /// <summary>Removes the mark last: what it marks can be found as long as anything of it is left.</summary>
    private static void Remove(string mark)
    {
        var folder = mark[..^Mark.Length];
        try
        {
            foreach (var left in new[] { folder, folder + ".old" }.Where(Directory.Exists))
            {
                Directory.Delete(left, recursive: true);
            }

            File.Delete(mark);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next rehearsal tries again.
        }
    }

    [GeneratedRegex("\\A[0-9a-f]{32}\\z")]
    private static partial Regex Name();
}
