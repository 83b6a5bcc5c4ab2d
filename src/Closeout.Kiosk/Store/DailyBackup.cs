namespace Closeout.Store;

/// <summary>A backup for each calendar day on which the book is used, written by a thread of its own; the newest are kept.</summary>
/// <param name="where">The folder of the backups.</param>
/// <param name="keep">How many to keep; 0: none are written.</param>
public sealed class DailyBackup(BookFolder folder, string where, int keep, TimeProvider clock)
{
    /// <summary>How many are kept unless somebody says otherwise.</summary>
    public const int Usual = 14;

    /// <summary>After a failure it is tried again, for the disk may be back.</summary>
    private static readonly TimeSpan Again = TimeSpan.FromHours(1);

    private DateOnly? seen;
    private DateTimeOffset next = DateTimeOffset.MinValue;
    private Thread? writing;
    private volatile string failed = "";

    /// <summary>Begins the day's backup, if there is none. Returns at once, and costs nothing when the day was seen already.</summary>
    public void Begin()
    {
        var now = clock.GetLocalNow();
        var today = DateOnly.FromDateTime(now.DateTime);
        if (keep == 0 || today == seen || now < next || writing is { IsAlive: true })
            return;

        (seen, next) = (today, now);
        writing = new Thread(() => Try(now)) { IsBackground = true, Name = "daily backup", Priority = ThreadPriority.BelowNormal };
        writing.Start();
    }

    /// <summary>What went wrong since this was last asked; empty: nothing. What failed is tried again an hour later.</summary>
    public string Failure()
    {
        var said = failed;
        if (said.Length > 0)
            (failed, seen, next) = ("", null, clock.GetLocalNow() + Again);

        return said;
    }

    /// <summary>Waits for what was begun, so that a program that ends does not cut it off; but not for ever.</summary>
    public void Finish(TimeSpan patience) => writing?.Join(patience);

    private void Try(DateTimeOffset now)
    {
        try
        {
            Write(now);
        }
        catch (Exception e) when (e is BookException or IOException or UnauthorizedAccessException)
        {
            failed = T($"Today's backup was not made. {e.Message}");
        }
        catch (Exception e)
        {
            // A fault of ours. On this thread it would end the program with the terminal as it is, and no backup is worth an evening.
            failed = T(
                $"Today's backup was not made, by a fault of this program ({e.GetType().Name}: {e.Message}). Make one by hand with: "
                    + $"closeout backup --out FILE");
        }
    }

    private void Write(DateTimeOffset now)
    {
        var file = Path.Combine(where, FileName(DateOnly.FromDateTime(now.DateTime)));
        if (!File.Exists(file))
        {
            DurableFolder.Make(where);
            try
            {
                Backup.Write(folder, file, now);
                Thin(file, now);
                return;
            }
            catch (BookException) when (File.Exists(file))
            {
                // Another kiosk was quicker.
            }
        }

        RefuseAnothers(file);
    }

    /// <summary>Two books that share a folder would take each other's backup for their own.</summary>
    private void RefuseAnothers(string file)
    {
        using var backup = BackupFile.Open(file);
        if (PageEnds.BookSha(folder) is { } mine && backup.Manifest.BookSha != mine)
            throw new BookException(T($"{file} is a backup of another book. Give each book a folder of its own with --backups."));
    }

    /// <summary>
    /// Removes this book's backups beyond those to keep, and what a program that died left half-written. The newest are those
    /// that hold the most entries: the names and times of a clock that once ran ahead say nothing. The one just made stays in any case.
    /// </summary>
    private void Thin(string made, DateTimeOffset now)
    {
        try
        {
            var mine = PageEnds.BookSha(folder);
            var old = Directory.EnumerateFiles(where, "closeout-*.zip")
                .Where(f => f != made && IsoDate.Parse(Path.GetFileName(f.AsSpan())["closeout-".Length..^".zip".Length]) is not null)
                .Select(f => (File: f, Told: BackupFile.Told(f)))
                .Where(f => f.Told is { } told && told.BookSha == mine)
                .OrderByDescending(f => f.Told!.Entries).ThenByDescending(f => f.Told!.Made)
                .Skip(keep - 1);
            var yesterday = now.UtcDateTime.AddDays(-1);
            var half = Directory.EnumerateFiles(where, "closeout-*.zip.*.new").Where(f => File.GetLastWriteTimeUtc(f) < yesterday);
            foreach (var file in old.Select(f => f.File).Concat(half).ToList())
                File.Delete(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            failed = T($"Today's backup was made, and an old one cannot be removed: {e.Message} See to the folder {where}.");
        }
    }

    private static string FileName(DateOnly date) => $"closeout-{date:O}.zip";
}
