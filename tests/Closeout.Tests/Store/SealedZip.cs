using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using Closeout.Store;

namespace Closeout.Tests.Store;

/// <summary>A zip file with the checksum of a backup at its end and anything inside, as only a program would make it.</summary>
internal static class SealedZip
{
    /// <param name="parts">Name, content, and what the manifest says of it; null: the truth.</param>
    /// <param name="manifest">Changes the manifest's text; null: as it is.</param>
    public static void Write(string path, IEnumerable<(string Name, byte[] Content, string? Line)> parts, Func<string, string>? manifest = null)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            var text = new StringBuilder($"closeout backup 1\nmade 2026-03-06T12:00:00.000-05:00\nbook {PageLine.Nothing}\nentries 1\n");
            foreach (var (name, content, line) in parts)
            {
                Add(zip, name, content);
                text.Append(line ?? $"file {content.Length} {Convert.ToHexStringLower(SHA256.HashData(content))} {name}\n");
            }

            var told = manifest is null ? text.ToString() : manifest(text.ToString());
            if (told.Length > 0)
            {
                Add(zip, "backup.txt", Encoding.ASCII.GetBytes(told));
            }

            zip.Comment = new string('0', 64);
        }

        var whole = bytes.ToArray();
        Encoding.ASCII.GetBytes(Convert.ToHexStringLower(SHA256.HashData(whole.AsSpan(0, whole.Length - 64)))).CopyTo(whole, whole.Length - 64);
        File.WriteAllBytes(path, whole);
    }

    /// <summary>The parts of a backup that is whole.</summary>
    public static List<(string Name, byte[] Content, string? Line)> Parts(string path)
    {
        using var zip = ZipFile.OpenRead(path);
        return [.. zip.Entries.Where(e => e.FullName != "backup.txt").Select(e => (e.FullName, Bytes(e), (string?)null))];
    }

    /// <summary>The manifest's head of a backup that is whole, to put in the place of the one that is written.</summary>
    public static Func<string, string> HeadOf(string path)
    {
        using var zip = ZipFile.OpenRead(path);
        var head = string.Concat(Encoding.ASCII.GetString(Bytes(zip.GetEntry("backup.txt")!)).Split('\n').Take(4).Select(l => l + "\n"));
        return text => head + string.Concat(text.Split('\n').Skip(4).Where(l => l.Length > 0).Select(l => l + "\n"));
    }

    private static void Add(ZipArchive zip, string name, byte[] content)
    {
        using var to = zip.CreateEntry(name).Open();
        to.Write(content);
    }

    private static byte[] Bytes(ZipArchiveEntry entry)
    {
        using var from = entry.Open();
        using var bytes = new MemoryStream();
        from.CopyTo(bytes);
        return bytes.ToArray();
    }
}
