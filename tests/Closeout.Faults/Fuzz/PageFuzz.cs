using Closeout.Faults.Machine;
using Closeout.Store;

namespace Closeout.Faults.Fuzz;

/// <summary>A page, spoiled, read by the page reader. It may name damage or leave out a torn end; what it gives must be what was written.</summary>
internal sealed class PageFuzz : IFuzzed
{
    private readonly string path;
    private readonly List<byte[]> lines = [];
    private readonly List<string> written;
    private readonly PageMark second;

    /// <param name="book">A book of an evening; its first page is used.</param>
    public PageFuzz(BookFolder book, string temp, int most = 12)
    {
        path = Path.Combine(temp, "page.jsonl");
        var bytes = File.ReadAllBytes(book.Page(book.Dates[0]));
        for (var start = 0; start < bytes.Length && lines.Count < most;)
        {
            var end = bytes.AsSpan(start).IndexOf((byte)'\n') + start + 1;
            lines.Add(bytes[start..end]);
            start = end;
        }

        var one = PageReader.Read(book.Page(book.Dates[0]), default);
        second = new(lines[0].Length, 1, one.Entries[0].Number, one.Shas[0]);
        written = [.. one.Entries.Take(lines.Count).Select(e => Books.Text(e.Entry))];
    }

    public string Name => "page reader";

    public byte[] Make(Random random)
    {
        if (random.Next(40) == 0)
        {
            return Mutations.Random(random);
        }

        var some = lines.Take(random.Next(1, lines.Count + 1)).ToList();
        for (var times = random.Next(1, 3); times > 0; times--)
        {
            var (one, other) = (random.Next(some.Count), random.Next(some.Count));
            switch (random.Next(5))
            {
                case 0:
                    (some[one], some[other]) = (some[other], some[one]);
                    break;
                case 1:
                    some.Insert(one, some[other]);
                    break;
                case 2 when some.Count > 1:
                    some.RemoveAt(one);
                    break;
                case 3:
                    some[one] = some[one][..random.Next(some[one].Length)];
                    break;
                default:
                    some[^1] = Mutations.Bytes(some[^1], random);
                    break;
            }
        }

        byte[] page = [.. some.SelectMany(l => l)];
        return random.Next(4) == 0 ? Mutations.Bytes(page, random) : page;
    }

    public string Give(byte[] input)
    {
        File.WriteAllBytes(path, input);
        try
        {
            // Where the long first line is as it was, the page is read from behind it, as a program does that has it open.
            var from = input.AsSpan().StartsWith(lines[0]) ? second : default;
            var read = PageReader.Read(path, from);
            if (!read.Entries.Select(e => Books.Text(e.Entry)).SequenceEqual(written.Skip(from.Lines).Take(read.Entries.Count)))
            {
                throw new InvalidOperationException("the page is read as something that was never written");
            }

            return read.Torn.Length > 0 ? "read up to a torn end" : "read whole";
        }
        catch (BookException)
        {
            return "told as damaged";
        }
    }
}
