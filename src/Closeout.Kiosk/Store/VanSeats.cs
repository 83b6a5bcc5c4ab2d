using System.Text;

namespace Closeout.Store;

/// <summary>
/// Who walks which van at which kiosk: two may not walk the same one. A seat is a file lock, so the system frees it when its holder dies.
/// </summary>
/// <param name="kiosk">The name by which others are told.</param>
public sealed class VanSeats(BookFolder folder, string kiosk) : IDisposable
{
    private FileStream? held;

    /// <summary>The van that is walked here; null: none.</summary>
    public Code<Van>? Van { get; private set; }

    /// <summary>Takes the van's seat, and leaves the one before.</summary>
    /// <returns>Null: it is ours. Else who has it and since when.</returns>
    /// <exception cref="BookException">The book's folder cannot be written.</exception>
    public string? Take(Code<Van> van, DateTimeOffset now)
    {
        if (Van == van)
            return null;

        Leave();
        var place = Path.Combine(folder.Seats, van.Text.ToUpperInvariant());
        try
        {
            DurableFolder.Make(folder.Seats);
            held = Disk.Own(place + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException e) when (Disk.IsHeld(e))
        {
            return Holder(place + ".txt");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException(T($"The book at {folder.Path} cannot be written: {e.Message} {BookException.MakeRoom(e)}"), e);
        }

        Van = van;
        Tell(place + ".txt", FormattableString.Invariant($"{kiosk} since {now:HH:mm}"));
        return null;
    }

    /// <summary>Who walks the van elsewhere; null: nobody.</summary>
    public string? Elsewhere(Code<Van> van)
    {
        var place = Path.Combine(folder.Seats, van.Text.ToUpperInvariant());
        try
        {
            if (Van != van)
                Disk.Own(place + ".lock", FileMode.Open, FileAccess.ReadWrite, FileShare.None).Dispose();
        }
        catch (IOException e) when (Disk.IsHeld(e))
        {
            return Holder(place + ".txt");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // No seat was ever taken, or it cannot be looked at: then it stops nobody.
        }

        return null;
    }

    /// <summary>Leaves the van: another kiosk may walk it.</summary>
    public void Leave()
    {
        held?.Dispose();
        (held, Van) = (null, null);
    }

    public void Dispose() => Leave();

    /// <summary>The lock is what counts: whoever cannot say a name walks the van all the same. An old one must not stand for it.</summary>
    private static void Tell(string path, string holder)
    {
        if (!Disk.Try(() => Disk.WriteWhole(path, Encoding.UTF8.GetBytes(holder), own: true)))
            Disk.Try(() => File.Delete(path));
    }

    private static string Holder(string path) =>
        Disk.Try(() => Encoding.UTF8.GetString(PlainFile.Read(path, BookFolder.MostText)), otherwise: T("another kiosk"));
}
