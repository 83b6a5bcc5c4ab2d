namespace Closeout.Store;

/// <summary>Where a name leads: each link on the way is followed, of folders and the file itself, also one that leads to nothing.</summary>
internal static class RealPath
{
    /// <summary>Nobody lays so many on one way: they lead in a circle.</summary>
    private const int MostLinks = 40;

    private static readonly char[] Separators = [Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar];

    /// <exception cref="IOException">Its links lead in a circle.</exception>
    public static string Of(string path)
    {
        var (at, links) = ("", 0);
        void Follow(string name)
        {
            var root = Path.GetPathRoot(name)!;
            at = root.Length > 0 ? root : at;
            foreach (var part in name[root.Length..].Split(Separators).Where(p => p is not ("" or ".")))
            {
                var next = part == ".." ? Path.GetDirectoryName(at) ?? at : Path.Combine(at, part);
                if (part == ".." || new FileInfo(next).LinkTarget is not { } target)
                    at = next;
                else
                    Follow(++links <= MostLinks ? target : throw new IOException($"{path} leads through links in a circle."));
            }
        }

        Follow(Path.GetFullPath(path));
        return at;
    }
}
