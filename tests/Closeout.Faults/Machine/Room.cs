using System.Runtime.InteropServices;

namespace Closeout.Faults.Machine;

/// <summary>Room on the disk that can be taken away and given back.</summary>
internal interface IRoom
{
    /// <summary>No file grows any more.</summary>
    /// <param name="page">The page that is written next.</param>
    /// <param name="spare">So many bytes still go to it, where this can be said to the byte.</param>
    void Take(string page, int spare);

    void Give();
}

/// <summary>The disk is really full, and its last block holds what it holds.</summary>
internal sealed class RoomOnDisk(TinyDisk disk) : IRoom
{
    public void Take(string page, int spare) => disk.Fill();

    public void Give() => disk.Empty();
}

/// <summary>This process may not write beyond a place in any file (RLIMIT_FSIZE): to the byte, and without any right to mount.</summary>
internal sealed partial class RoomByLimit : IRoom
{
    private const int FileSize = 1;
    private const int TooLarge = 25;

    private readonly Limit before;

    public RoomByLimit()
    {
        // The signal's default is to end the process; ignored, the write fails with an error as on a full disk.
        Signal(TooLarge, 1);
        GetLimit(FileSize, out before);
    }

    public void Take(string page, int spare)
    {
        var limit = new Limit((ulong)(new FileInfo(page).Length + spare), before.Most);
        SetLimit(FileSize, in limit);
    }

    public void Give() => SetLimit(FileSize, in before);

    [LibraryImport("libc", EntryPoint = "setrlimit")]
    private static partial int SetLimit(int what, in Limit limit);

    [LibraryImport("libc", EntryPoint = "getrlimit")]
    private static partial int GetLimit(int what, out Limit limit);

    [LibraryImport("libc", EntryPoint = "signal")]
    private static partial nint Signal(int signal, nint what);

    [StructLayout(LayoutKind.Sequential)]
    private readonly record struct Limit(ulong Now, ulong Most);
}
