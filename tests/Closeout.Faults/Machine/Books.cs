using System.Text.Json;
using Closeout.Commands;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Screens.Steps;
using Closeout.Store;
using Closeout.Tests;
using Closeout.Turning;

namespace Closeout.Faults.Machine;

/// <summary>Books of the sample day, and what can be read of them afterwards.</summary>
internal static class Books
{
    private static readonly Lazy<DayGiven> Sample = new(() => DayFolder.Read(Repository.SampleDay, StepPages.Evening).Given!);

    public static DayGiven Day => Sample.Value;

    /// <summary>A new book of the sample day, before anybody came in. A rehearsal, in which nobody is asked for a PIN.</summary>
    public static Book New(BookFolder folder) => Book.New(folder, Day.FirstPage(rehearsal: true), TimeProvider.System.GetLocalNow());

    /// <summary>All entries of all pages in order, as the book writes them, without their times.</summary>
    public static List<string> Entries(BookFolder folder) =>
        [.. folder.Dates.SelectMany(d => PageReader.Read(folder.Page(d), default).Entries).Select(e => Text(e.Entry))];

    /// <summary>An entry as the book writes it.</summary>
    public static string Text(Entry entry)
    {
        var buffer = new System.Buffers.ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            EntryCodec.Write(json, entry);
        }

        return $"{EntryKind.Of(entry).Name} {System.Text.Encoding.UTF8.GetString(buffer.WrittenSpan)}";
    }

    /// <summary>Null: the book opens and <c>check</c> finds it good; else what is said.</summary>
    public static string? WhyNotGood(BookFolder folder)
    {
        try
        {
            Book.Open(folder);
            var check = Spoken.By(() => CheckCommand.Run(folder));
            return check.Code == ExitCode.Done ? null : $"check exits {check.Code}: {check.Err.Trim()}";
        }
        catch (BookException e)
        {
            return e.Message;
        }
    }

    /// <summary>Null: the book has what was acknowledged, and nothing that was never asked for.</summary>
    /// <param name="asked">All that was given to it, in order.</param>
    /// <param name="acknowledged">How many of those were acknowledged.</param>
    public static string? WhyNotKept(IReadOnlyList<string> found, IReadOnlyList<string> asked, int acknowledged)
    {
        if (found.Count < acknowledged)
        {
            return $"LOST: {acknowledged} entries were acknowledged, and the book has {found.Count}";
        }

        for (var i = 0; i < found.Count; i++)
        {
            if (i >= asked.Count || found[i] != asked[i])
            {
                return $"WRONG: entry {i + 1} of the book is {Short(found[i])}, and {(i < asked.Count ? Short(asked[i]) : "nothing")} was asked for";
            }
        }

        return null;
    }

    public static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.EnumerateFiles(from))
        {
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        }

        foreach (var folder in Directory.EnumerateDirectories(from))
        {
            Copy(folder, Path.Combine(to, Path.GetFileName(folder)));
        }
    }

    private static string Short(string entry) => entry.Length <= 160 ? entry : entry[..160] + "...";
}
