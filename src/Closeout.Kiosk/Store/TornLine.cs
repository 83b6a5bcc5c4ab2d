namespace Closeout.Store;

/// <summary>A line begun and never ended was never confirmed to anybody.</summary>
internal static class TornLine
{
    /// <summary>Keeps it aside and cuts it off. Under the book's lock, when nobody is writing it.</summary>
    /// <returns>What was done.</returns>
    /// <exception cref="BookException">It could not be written.</exception>
    public static string SetAside(BookFolder folder, OpenedPage page) => BookException.Telling(
        () =>
        {
            DurableFolder.Make(folder.TornLines);
            var name = Path.Combine(folder.TornLines, $"{page.Date:O}-after-{page.Mark.Number}");
            var aside = name + ".txt";
            for (var more = 2; Path.Exists(aside); more++)
                aside = $"{name}-{more}.txt";

            Disk.WriteWhole(aside, page.Torn, own: true);
            using var file = PageFile.Open(folder.Page(page.Date), FileAccess.ReadWrite);
            RandomAccess.SetLength(file, page.Mark.Offset);
            RandomAccess.FlushToDisk(file);
            return T($"A line begun after entry {page.Mark.Number} was never confirmed; it was set aside in {aside}.");
        },
        e => T($"NOT recorded, the book cannot be written: {e.Message}"));
}
