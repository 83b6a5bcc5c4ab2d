using System.Diagnostics;
using System.Text;

namespace Closeout.Store;

/// <summary>The right to append, held by one program at a time. The system frees it when its holder dies.</summary>
public sealed class BookLock : IDisposable
{
    /// <summary>How long to wait for another program that is writing.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private readonly FileStream held;

    private BookLock(FileStream held) => this.held = held;

    /// <exception cref="BookException">Another program holds it all the while, or the folder cannot be written.</exception>
    public static BookLock Take(string path) => Take(path, FileMode.OpenOrCreate, FileAccess.ReadWrite);

    /// <summary>Takes it to look only, where nothing can or may be written. Null: nobody ever took it, so nobody holds it.</summary>
    /// <exception cref="BookException">Another program holds it all the while, or it cannot be opened.</exception>
    public static BookLock? TakeToLook(string path) => Path.Exists(path) ? Take(path, FileMode.Open, FileAccess.Read) : null;

    private static BookLock Take(string path, FileMode mode, FileAccess access)
    {
        var (book, waited) = (Path.GetDirectoryName(path), Stopwatch.StartNew());
        while (true)
        {
            try
            {
                return new(Disk.Own(path, mode, access, FileShare.None));
            }
            catch (IOException e) when (Disk.IsHeld(e))
            {
                // Short waits all along: whoever appends in a row frees it for a moment only, and who looks seldom waits in vain.
                Thread.Sleep(waited.Elapsed <= Patience ? 1 : throw new BookException(
                    T(
                        $"The book at {book} is in use: another program has held it for {Patience.TotalSeconds:0} seconds. Nothing was "
                            + $"recorded; try again when it is done."),
                    e));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // A disk that is full, broken or not to be written does not get better by waiting.
                var what = access == FileAccess.Read ? T("read") : T("written");
                throw new BookException(T($"The book at {book} cannot be {what}: {e.Message} {BookException.MakeRoom(e)}"), e);
            }
        }
    }

    /// <summary>
    /// The newest page, as a holder before this one told it; null: nobody did. It is never older than the newest page there
    /// is, so whoever finds the own date here need not look through years of pages. The one exception: a page that somebody
    /// copies in by hand while kiosks have the day before open. They go on writing to that day, and it is found at their next
    /// look, once a second; <c>check</c> tells the page that does not follow.
    /// </summary>
    public DateOnly? Newest
    {
        get
        {
            var told = new byte[IsoDate.Length];
            var count = RandomAccess.Read(held.SafeFileHandle, told, 0);
            return IsoDate.Parse(Encoding.ASCII.GetString(told, 0, count));
        }
    }

    /// <summary>Tells the holders after this one which page is the newest: before a new one is there, and on disk before it is.</summary>
    /// <exception cref="IOException">There is no room, or the disk fails.</exception>
    public void Tell(DateOnly newest)
    {
        RandomAccess.Write(held.SafeFileHandle, Encoding.ASCII.GetBytes(IsoDate.Text(newest)), 0);
        RandomAccess.FlushToDisk(held.SafeFileHandle);
    }

    public void Dispose() => held.Dispose();
}
