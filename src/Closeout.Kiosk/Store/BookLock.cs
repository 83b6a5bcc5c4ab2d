using System.Diagnostics;

namespace Closeout.Store;

/// <summary>The right to append, held by one program at a time. The system frees it when its holder dies.</summary>
public sealed class BookLock : IDisposable
{
    /// <summary>How long to wait for another program that is writing.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private readonly FileStream held;

    private BookLock(FileStream held) => this.held = held;

    /// <exception cref="BookException">Another program holds it all the while, or the folder cannot be written.</exception>
    public static BookLock Take(string path)
    {
        var waited = Stopwatch.StartNew();
        while (true)
        {
            try
            {
                return new(Disk.Own(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
            }
            catch (Exception e) when (e is UnauthorizedAccessException or DirectoryNotFoundException)
            {
                throw new BookException($"The book at {Path.GetDirectoryName(path)} cannot be written: {e.Message} Nothing was recorded; make the folder writable and try again.", e);
            }
            catch (IOException e) when (waited.Elapsed > Patience)
            {
                throw new BookException($"The book at {Path.GetDirectoryName(path)} is in use: another program has held it for {Patience.TotalSeconds:0} seconds. Nothing was recorded; try again when it is done.", e);
            }
            catch (IOException)
            {
                // Short waits all along: whoever appends in a row frees it for a moment only, and who looks seldom waits in vain.
                Thread.Sleep(1);
            }
        }
    }

    public void Dispose() => held.Dispose();
}
