using System.Diagnostics;

namespace Closeout.Faults.Machine;

/// <summary>A disk of its own in memory, small enough to be filled. Needs the right to mount.</summary>
internal sealed class TinyDisk : IDisposable
{
    private readonly bool mounted;

    /// <param name="path">An empty folder.</param>
    public TinyDisk(string path, int kilobytes)
    {
        Path = path;
        Directory.CreateDirectory(path);
        mounted = Run("mount", "-t", "tmpfs", "-o", $"size={kilobytes}k", "tmpfs", path) == 0;
    }

    public string Path { get; }

    /// <summary>Whether this machine let us mount it.</summary>
    public bool IsThere => mounted;

    private string Ballast => System.IO.Path.Combine(Path, "ballast");

    /// <summary>Fills it to the last byte that a new file can have, but for so many bytes.</summary>
    public void Fill(int but = 0)
    {
        using var file = new FileStream(Ballast, FileMode.Append, FileAccess.Write, FileShare.None, bufferSize: 0);
        for (var piece = 65_536; piece > 0;)
        {
            try
            {
                file.Write(new byte[piece]);
            }
            catch (IOException)
            {
                piece /= 2;
            }
        }

        file.SetLength(Math.Max(0, file.Length - but));
    }

    /// <summary>Somebody made room.</summary>
    public void Empty() => File.Delete(Ballast);

    public void Dispose()
    {
        if (mounted)
        {
            Run("umount", "-l", Path);
        }
    }

    private static int Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardError = true, RedirectStandardOutput = true };
        Array.ForEach(arguments, start.ArgumentList.Add);
        try
        {
            using var process = Process.Start(start)!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return -1;
        }
    }
}
