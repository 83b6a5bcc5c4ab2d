using Closeout.DayBook;
using Closeout.Files;
using Closeout.Screens;
using Closeout.Store;

namespace Closeout.Tests.Screens;

/// <summary>A kiosk on the sample day before anybody came in, driven by keys.</summary>
internal sealed class SampleKiosk : IDisposable
{
    private readonly TempFolder folder = new();

    /// <param name="change">What is different from the sample day; null: nothing.</param>
    public SampleKiosk(Func<DayGiven, DayGiven>? change = null)
    {
        var given = DayFolder.Read(Repository.SampleDay).Given!;
        given = change is null ? given : change(given);
        Folder = new BookFolder(folder["book"]);
        var clock = new FixedClock(16, 52);
        Book = Book.OpenPage(Folder, null, given.FirstPage(rehearsal: false), clock.GetLocalNow());
        Session = new KioskSession(new Desk(Book, clock), new Archive(Folder), new Attachments(Folder));
    }

    public BookFolder Folder { get; }

    public Book Book { get; }

    public KioskSession Session { get; private set; }

    public int Keys { get; private set; }

    public Depot Depot => Session.Desk.Depot;

    public CloseoutScreen Closeout => (CloseoutScreen)Session.Model.Screen;

    /// <summary>Presses keys written as <c>B3{Enter}</c>.</summary>
    public SampleKiosk Press(string keys)
    {
        foreach (var key in Keystroke.Parse(keys))
        {
            Session.Press(key);
            Keys++;
        }

        return this;
    }

    /// <summary>The program stops and is started again on the same book.</summary>
    public SampleKiosk Restart()
    {
        Session = new KioskSession(new Desk(Book.Open(Folder), new FixedClock(16, 52)), new Archive(Folder), new Attachments(Folder));
        return this;
    }

    public string Show(int width = 80, int height = 24) => Session.Show(width, height).ToString();

    public IReadOnlyList<Entry> Entries => [.. PageReader.Read(Folder.Page(Book.Date), default).Entries.Skip(1).Select(e => e.Entry)];

    public void Dispose() => folder.Dispose();
}
