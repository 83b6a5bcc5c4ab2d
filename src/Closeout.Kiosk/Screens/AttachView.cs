using Closeout.DayBook;
using Closeout.Rules;

namespace Closeout.Screens;

/// <summary>Pictures to put beside a close-out.</summary>
public static class AttachView
{
    public static void Draw(Sheet sheet, Depot depot, AttachScreen s)
    {
        var (van, photos) = (depot.Setup.Van(s.Van), depot.Shift(s.Van)!.Photos);
        View.Head(sheet, depot, $"{van.Code} {van.Name}", "pictures");
        sheet.Write(2, 3, $"{photos.Count} of at most {Refusal.MostPhotos} attached tonight.");
        FormView.Draw(sheet, 4, 3, s.Form, 0, 1, 20, sheet.Width - 2);
        sheet.Write(6, 3, "A picture, or a folder with pictures. Empty: what lies in the book's inbox.", Look.Faint, sheet.Width - 4);
        sheet.Write(7, 3, "JPEG, PNG, WebP or HEIC. They are copied into the book byte for byte.", Look.Faint);
        sheet.Write(8, 3, "No faces, no house numbers, no cards: only the van.", Look.Faint);
        var room = Math.Max(0, sheet.Height - 13);
        foreach (var (row, photo) in photos.TakeLast(room).Index())
        {
            sheet.Write(10 + row, 3, $"{photo.Name}, {photo.Bytes} bytes", Look.Plain, sheet.Width - 4);
        }

        View.Keys(sheet, "Enter attach   F1 help   Esc back to the question");
    }
}
