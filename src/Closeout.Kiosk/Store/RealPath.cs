namespace Closeout.Store;

/// <summary>Where a name leads: each link on the way is followed, of folders and of the file itself, also one that leads to nothing.</summary>
internal static class RealPath
{
    /// <summary>Nobody lays so many on one way: they lead in a circle.</summary>
    private const int MostLinks = 40;

    private static readonly char[] Separators = [Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar];

    /// <exception cref="IOException">Its links lead in a circle.</exception>
    public static string Of(string path)
    {
        var (at, left, links) = ("", new Stack<string>(), 0);
        void Follow(string name)
        {
            var root = Path.GetPathRoot(name)!;
            at = root.Length > 0 ? root : at;
            foreach (var part in name[root.Length..].Split(Separators).Reverse())
            {
                left.Push(part);
            }
        }

        Follow(Path.GetFullPath(path));
        while (left.TryPop(out var part))
        {
            var next = Path.Combine(at, part);
            if (part == "..")
            {
                at = Path.GetDirectoryName(at) ?? at;
            }
            else if (part is "" or "." || new FileInfo(next).LinkTarget is not { } target)
            {
                at = part == "." ? at : next;
            }
            else
            {
                Follow(++links <= MostLinks ? target : throw new IOException($"{path} leads through links in a circle."));
            }
        }

        return at;
    }
}
