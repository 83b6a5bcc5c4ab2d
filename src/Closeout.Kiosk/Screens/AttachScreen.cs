using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>Pictures to put beside a close-out.</summary>
/// <param name="Back">The question from which they are attached.</param>
public sealed record AttachScreen(Code<Van> Van, CloseoutScreen Back, Form Form) : Screen
{
    public static AttachScreen Of(CloseoutScreen back) =>
        new(back.Question.Van, back, Form.Of(new Field("path", T("Photo or folder"), FieldKind.Words, "")));

    public override IReadOnlyList<Binding> Bindings(Scene scene) =>
    [
        new(Keys.Enter, T("attach"), _ => new(this, Act: new AttachAct(Van, Form["path"].Text.Trim()))),
        HelpKey(),
        new(Keys.Escape, T("back to the question"), _ => Back),
        EditKeys(Form, form => this with { Form = form }),
    ];

    public override IEnumerable<string> Help(Scene scene) =>
        [T(
            "Type the name of a photo or of a folder; with an empty field the kiosk takes what lies in the folder inbox of the book. "
                + "Each photo is copied into the record under its checksum; closeout photos --out DIR writes them out again, byte for "
                + "byte.")];

    public override bool Stands(Depot depot) => Back.Stands(depot) && depot.Shift(Van) is { IsClosed: false };

    public override Code<Van>? Walks(Depot depot) => Back.Walks(depot);

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var (van, photos) = (scene.Depot.Setup.Van(Van), scene.Depot.Shift(Van)!.Photos);
        Frame.Head(sheet, scene.Depot, $"{van.Code} {van.Name}", T("photos"));
        sheet.Write(2, 3, T($"{photos.Count} of at most {Refusal.MostPhotos} attached tonight."));
        FormView.Draw(sheet, 4, 3, Form, 0, 1, 20, sheet.Width - 2);
        sheet.Write(6, 3, T("A photo, or a folder with photos. Empty: what is in the inbox folder."), Look.Faint, sheet.Width - 4);
        sheet.Write(7, 3, T("JPEG, PNG, WebP or HEIC. They are copied byte for byte."), Look.Faint);
        sheet.Write(8, 3, T("No faces, no house numbers, no cards: only the van."), Look.Faint);
        var room = Math.Max(0, sheet.Height - 13);
        foreach (var (row, photo) in photos.TakeLast(room).Index())
            sheet.Write(10 + row, 3, T($"{photo.Name}, {photo.Bytes} bytes"), Look.Plain, sheet.Width - 4);
    }
}

/// <summary>Copy pictures into the book and record them, one after the other: each is in the book before the next is looked at.</summary>
/// <param name="Path">A picture, or a folder with pictures; empty: the book's inbox.</param>
public sealed record AttachAct(Code<Van> Van, string Path) : Act
{
    public override Reply Do(World world, Screen from)
    {
        var (desk, attachments) = (world.Desk, world.Attachments);
        var found = Attachments.At(Path.Length > 0 ? Path : attachments.Inbox);
        var (there, stayed, known) = (0, "", desk.Depot.Shift(Van)!.Photos.Select(p => p.Sha256).ToHashSet());
        foreach (var path in found)
        {
            var taken = attachments.Take(path);
            if (found.Count == 1 || known.Add(taken.Sha256))
            {
                if (desk.Record(new AttachPhoto(Van, taken.Sha256, taken.Name, taken.Bytes)) is { } refusal)
                    return new(from, refusal.Text);

                there++;
            }

            stayed = attachments.Done(path) is { Length: > 0 } why ? why : stayed;
        }

        var back = ((AttachScreen)from).Back.WithPhotos(desk.Depot);
        return new(back, T($"{Spell.Count(there, T("photo is"), T("photos are"))} attached. {stayed}").TrimEnd());
    }
}
