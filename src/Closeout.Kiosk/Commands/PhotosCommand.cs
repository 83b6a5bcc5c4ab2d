using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>photos --out DIR</c>: the attached pictures, byte for byte, in a folder for each date and van.</summary>
public static class PhotosCommand
{
    /// <param name="date">Only of that business date; null: all.</param>
    public static int Run(BookFolder folder, DateOnly? date, string outDir, TimeProvider clock)
    {
        Language.OfDepot(Book.Open(folder, date).Depot.Setup.Depot);
        var attachments = new Attachments(folder);
        var photos = ArchiveCommand.Of(folder, clock).Photos().Where(p => date is null || p.Date == date).ToList();
        foreach (var (number, on, photo) in photos)
        {
            var place = Path.Combine(outDir, IsoDate.Text(on), photo.Van.Text);
            Output.MakeFolder(place);
            Output.Write(Path.Combine(place, $"{number}-{FileName(photo.Name)}"), attachments.Read(photo.Sha256));
        }

        return Say.Done(T($"{Say.Count(photos.Count, T("photo"), T("photos"))} written, each as it was attached."));
    }

    /// <summary>A name that is one on every system: what could lead out of the folder or steer a terminal becomes an underscore.</summary>
    private static string FileName(string name) =>
        string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_' ? c : '_')).TrimStart('.');
}
