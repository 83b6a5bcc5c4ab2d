namespace Closeout.Store;

/// <summary>A book that is made beside its place and renamed in when it is whole; else all that was made of it is removed.</summary>
internal sealed class FreshBook : IDisposable
{
    private readonly string place;
    private readonly List<string> above = [];

    /// <param name="target">Its place; where that is a link, the book is made where it leads, and the link stays one.</param>
    public FreshBook(BookFolder target)
    {
        place = RealPath.Of(target.Path);
        Folder = new($"{place}.{Guid.NewGuid():N}");
    }

    /// <summary>Where it is made.</summary>
    public BookFolder Folder { get; }

    /// <summary>Whether nothing lies there that would be written over.</summary>
    public static bool HasRoom(BookFolder folder) => RealPath.Of(folder.Path) is var place
        && !File.Exists(place) && (!Directory.Exists(place) || !Directory.EnumerateFileSystemEntries(place).Any());

    /// <summary>Makes the folder and those above it that are missing.</summary>
    public void Make()
    {
        for (var at = Path.GetDirectoryName(place); at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
            above.Add(at);

        DurableFolder.Make(Folder.Path);
    }

    /// <summary>Gives it its name, in place of an empty folder if there is one.</summary>
    public void Keep()
    {
        foreach (var made in Directory.EnumerateDirectories(Folder.Path, "*", SearchOption.AllDirectories).Append(Folder.Path))
            DurableFolder.Flush(made);

        // An empty folder gives way; one that is empty no more stops this here.
        if (Directory.Exists(place))
            Directory.Delete(place);

        Directory.Move(Folder.Path, place);
        above.Clear();
        DurableFolder.Flush(Path.GetDirectoryName(place)!);
    }

    /// <summary>The disk failed already, and that is what is told; what stays has a name that no book has.</summary>
    public void Dispose() => Disk.Try(() =>
    {
        if (Directory.Exists(Folder.Path))
            Directory.Delete(Folder.Path, recursive: true);

        // The innermost first; one in which another program has put something meanwhile stays.
        foreach (var folder in above.Where(f => Directory.Exists(f) && !Directory.EnumerateFileSystemEntries(f).Any()))
            Directory.Delete(folder);
    });
}
