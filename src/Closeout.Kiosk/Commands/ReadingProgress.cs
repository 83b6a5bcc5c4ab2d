using Closeout.Files;
using Closeout.Screens.Steps;

namespace Closeout.Commands;

/// <summary>Says how far a day folder is read: the file, its rows, and the time left by the bytes of all files.</summary>
internal sealed class ReadingProgress
{
    private readonly Progress progress;
    private readonly Dictionary<string, long> lengths;
    private ReadSoFar last = new("", 0, 0);
    private int files;
    private long before;

    private ReadingProgress(Progress progress, string folder) =>
        (this.progress, lengths) = (progress, Lengths(folder));

    /// <summary>Reads the folder, and says so while it takes long.</summary>
    public static DayFolder Read(Progress progress, string folder)
    {
        var day = DayFolder.Read(folder, StepPages.Evening, new ReadingProgress(progress, folder).Told);
        progress.Erase();
        return day;
    }

    private static Dictionary<string, long> Lengths(string folder)
    {
        try
        {
            return new DirectoryInfo(folder).EnumerateFiles("*.csv").ToDictionary(f => f.Name, f => f.Length);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Reading tells it as faults.
            return [];
        }
    }

    private void Told(ReadSoFar now)
    {
        if (now.File != last.File)
        {
            before += lengths.GetValueOrDefault(last.File);
            files++;
        }

        last = now;
        progress.Tell((before + now.Bytes) / Math.Max(1.0, lengths.Values.Sum()), left =>
            T($"Reading {now.File}, file {files} of {Math.Max(files, lengths.Count)}: {now.Rows} rows, about {left} s left."));
    }
}
