namespace Closeout.Faults.Power;

/// <summary>
/// A disk that may keep or lose whatever was not flushed. It knows what is safe (flushed) and what is pending of every
/// file's bytes and every folder's names. A power loss keeps any part of what is pending: each name's change or not, of each
/// write any of its sectors, and the file's length with or without them.
/// </summary>
/// <remarks>Harsher than the usual file systems, which keep changes of names in order and the bytes before the length: what holds here holds there.</remarks>
internal sealed class DiskModel
{
    /// <summary>What a disk mostly writes whole or not at all, in bytes; one in ten is torn even so.</summary>
    private const int Sector = 512;

    private readonly Node root = new Folder();

    /// <summary>Does an act as a program sees it.</summary>
    public void Do(DiskAct act)
    {
        switch (act)
        {
            case Created c:
                Put(c.Path, new Bytes());
                break;
            case FolderMade m:
                Put(m.Path, new Folder());
                break;
            case Wrote or Sized:
                ((Bytes)Find(act is Wrote w ? w.Path : ((Sized)act).Path)).Pending.Add(act);
                break;
            case Renamed r:
                var moved = Find(r.From);
                var (from, to) = (Parent(r.From), Parent(r.To));
                if (from == to)
                {
                    from.Change(new(Name(r.From), Name(r.To), moved));
                }
                else
                {
                    to.Change(new(null, Name(r.To), moved));
                    from.Change(new(Name(r.From), null, null));
                }

                break;
            case Removed r:
                Parent(r.Path).Change(new(Name(r.Path), null, null));
                break;
            case Flushed f:
                Find(f.Path).Flush();
                break;
            default:
                throw new InvalidOperationException($"{act} is nothing that a disk does");
        }
    }

    /// <summary>Whether anything waits to be flushed.</summary>
    public bool IsPending => Waiting(root);

    /// <summary>The power goes. What is left is written to a folder.</summary>
    /// <param name="keep">How likely each pending piece is kept.</param>
    public void Lose(string into, Random random, double keep) => Leave((Folder)root, into, random, keep);

    private static bool Waiting(Node node) => node switch
    {
        Bytes b => b.Pending.Count > 0,
        Folder f => f.Pending.Count > 0 || f.Now.Values.Any(Waiting),
        _ => false,
    };

    private static void Leave(Folder folder, string into, Random random, double keep)
    {
        Directory.CreateDirectory(into);
        foreach (var (name, node) in folder.Left(random, keep))
        {
            var path = Path.Combine(into, name);
            if (node is Folder inner)
            {
                Leave(inner, path, random, keep);
            }
            else
            {
                File.WriteAllBytes(path, ((Bytes)node).Left(random, keep));
            }
        }
    }

    private void Put(string path, Node node) => Parent(path).Change(new(null, Name(path), node));

    private Node Find(string path) => path.Split('/', StringSplitOptions.RemoveEmptyEntries).Aggregate(root, (at, name) => ((Folder)at).Now[name]);

    private Folder Parent(string path) => (Folder)Find(Path.GetDirectoryName(path)!);

    private static string Name(string path) => Path.GetFileName(path);

    private abstract class Node
    {
        public abstract void Flush();
    }

    /// <summary>A change of names: one goes, one comes to mean a node, or both at once.</summary>
    private sealed record Naming(string? Gone, string? Come, Node? Node)
    {
        public void On(Dictionary<string, Node> names)
        {
            if (Gone is not null)
            {
                names.Remove(Gone);
            }

            if (Come is not null)
            {
                names[Come] = Node!;
            }
        }
    }

    private sealed class Folder : Node
    {
        private readonly Dictionary<string, Node> safe = [];

        public Dictionary<string, Node> Now { get; } = [];

        public List<Naming> Pending { get; } = [];

        public void Change(Naming change)
        {
            change.On(Now);
            Pending.Add(change);
        }

        public override void Flush()
        {
            Pending.ForEach(p => p.On(safe));
            Pending.Clear();
        }

        public Dictionary<string, Node> Left(Random random, double keep)
        {
            var left = new Dictionary<string, Node>(safe);
            foreach (var change in Pending.Where(_ => random.NextDouble() < keep))
            {
                change.On(left);
            }

            return left;
        }
    }

    private sealed class Bytes : Node
    {
        private byte[] safe = [];

        public List<DiskAct> Pending { get; } = [];

        public override void Flush()
        {
            safe = Pending.Aggregate(safe, Whole);
            Pending.Clear();
        }

        public byte[] Left(Random random, double keep)
        {
            var left = safe;
            foreach (var act in Pending)
            {
                left = act switch
                {
                    Sized s when random.NextDouble() < keep => Resized(left, s.Length),
                    Wrote w => Written(left, w, random, keep),
                    _ => left,
                };
            }

            return left;
        }

        private static byte[] Whole(byte[] bytes, DiskAct act)
        {
            if (act is Sized sized)
            {
                return Resized(bytes, sized.Length);
            }

            var w = (Wrote)act;
            var to = Resized(bytes, Math.Max(bytes.Length, w.Offset + w.Bytes.Length));
            w.Bytes.CopyTo(to, w.Offset);
            return to;
        }

        private static byte[] Resized(byte[] bytes, long length)
        {
            var sized = new byte[length];
            bytes.AsSpan(0, (int)Math.Min(length, bytes.Length)).CopyTo(sized);
            return sized;
        }

        private static byte[] Written(byte[] bytes, Wrote w, Random random, double keep)
        {
            // The new length without the bytes: what was never written there reads as zeros.
            var end = w.Offset + w.Bytes.Length;
            var to = end > bytes.Length && random.NextDouble() < keep / 2 ? Resized(bytes, end) : (byte[])bytes.Clone();
            for (var at = w.Offset; at < end;)
            {
                var next = Math.Min(end, (at / Sector + 1) * Sector);
                var torn = random.NextDouble() < 0.1 ? at + random.NextInt64(next - at) : next;
                if (random.NextDouble() < keep)
                {
                    to = torn > to.Length ? Resized(to, torn) : to;
                    w.Bytes.AsSpan((int)(at - w.Offset), (int)(torn - at)).CopyTo(to.AsSpan((int)at));
                }

                at = next;
            }

            return to;
        }
    }
}
