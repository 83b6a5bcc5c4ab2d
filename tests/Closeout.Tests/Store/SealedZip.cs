using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Closeout.Store;

namespace Closeout.Tests.Store;

/// <summary>A zip file with the checksum of a backup at its end and anything inside, as only a program would make it.</summary>
internal static class SealedZip
{
    /// <param name="parts">Name, content, and what the manifest says of it, made from the truth; null: the truth. One that says nothing is not listed.</param>
    /// <param name="manifest">The manifest's text, from what it should be; null: that. Empty: none.</param>
    public static void Write(string path, IEnumerable<(string Name, byte[] Content, Func<JsonObject, JsonObject?>? Told)> parts, Func<JsonObject, string>? manifest = null)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            var files = new JsonArray();
            foreach (var (name, content, told) in parts)
            {
                Add(zip, name, content);
                var truth = new JsonObject { ["name"] = name, ["bytes"] = content.Length, ["sha"] = Convert.ToHexStringLower(SHA256.HashData(content)) };
                if ((told is null ? truth : told(truth)) is { } listed)
                {
                    files.Add(listed);
                }
            }

            var all = new JsonObject { ["version"] = 2, ["made"] = "2026-03-06T12:00:00-05:00", ["book"] = PageLine.Nothing, ["entries"] = 1, ["files"] = files };
            var text = manifest is null ? all.ToJsonString() : manifest(all);
            if (text.Length > 0)
            {
                Add(zip, "backup.json", Encoding.UTF8.GetBytes(text));
            }

            zip.Comment = new string('0', 64);
        }

        var whole = bytes.ToArray();
        Encoding.ASCII.GetBytes(Convert.ToHexStringLower(SHA256.HashData(whole.AsSpan(0, whole.Length - 64)))).CopyTo(whole, whole.Length - 64);
        File.WriteAllBytes(path, whole);
    }

    /// <summary>The parts of a backup that is whole.</summary>
    public static List<(string Name, byte[] Content, Func<JsonObject, JsonObject?>? Told)> Parts(string path)
    {
        using var zip = ZipFile.OpenRead(path);
        return [.. zip.Entries.Where(e => e.FullName != "backup.json").Select(e => (e.FullName, Bytes(e), (Func<JsonObject, JsonObject?>?)null))];
    }

    /// <summary>The manifest with all but the files of a backup that is whole.</summary>
    public static Func<JsonObject, string> HeadOf(string path)
    {
        using var zip = ZipFile.OpenRead(path);
        var head = JsonNode.Parse(Bytes(zip.GetEntry("backup.json")!))!.AsObject();
        return manifest =>
        {
            foreach (var name in head.Select(h => h.Key).Where(k => k != "files"))
            {
                manifest[name] = head[name]!.DeepClone();
            }

            return manifest.ToJsonString();
        };
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
