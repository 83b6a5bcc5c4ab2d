using System.Globalization;
using Closeout.Commands;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Screens.People;
using Closeout.Screens.Steps;
using Closeout.Store;
using Closeout.Turning;
using FluentAssertions;

namespace Closeout.Tests.Screens;

/// <summary>A kiosk on the sample day before anybody came in, driven by keys. It is a real book, in which everybody has a PIN.</summary>
internal sealed class SampleKiosk : IDisposable
{
    private readonly TempFolder folder = new();
    private readonly bool typesPins;

    /// <param name="change">What is different from the sample day; null: nothing.</param>
    /// <param name="typesPins">Whether the PIN asked for is typed at once: six keys and Enter, which are counted.</param>
    /// <param name="without">Codes of those who have no PIN.</param>
    public SampleKiosk(Func<DayGiven, DayGiven>? change = null, bool typesPins = true, params string[] without)
    {
        this.typesPins = typesPins;
        var given = SampleDay.Given;
        given = change is null ? given : change(given);
        Folder = new BookFolder(folder["book"]);
        var page = given.FirstPage(rehearsal: false);
        page = page with { Carried = page.Carried with { People = [.. given.Setup.Crew.Where(t => !without.Contains(t.Code.Text)).Select(t => Set(given.Setup, t.Code))] } };
        Book = Book.New(Folder, page, Clock.GetLocalNow());
        Session = new KioskSession(new Desk(Book, Clock), new Archive(Folder), new Attachments(Folder), pins: new Pins(1, "bay"));
    }

    public BookFolder Folder { get; }

    public Book Book { get; }

    public FixedClock Clock { get; } = new(16, 52);

    public KioskSession Session { get; private set; }

    public int Keys { get; private set; }

    public Depot Depot => Session.Desk.Depot;

    /// <summary>The question of the close-out on the screen.</summary>
    public Question Closeout => ((CloseoutScreen)Session.Model.Screen).Question;

    /// <summary>Presses keys written as <c>B3{Enter}</c>.</summary>
    public SampleKiosk Press(string keys)
    {
        foreach (var key in Keystroke.Parse(keys))
        {
            Session.Press(key);
            Keys++;
            if (typesPins && Session.Model.Screen is PinScreen { Stage: PinStage.Ask } asked)
            {
                TypePin(asked.Person.Text);
            }
        }

        return this;
    }

    /// <summary>After the sample evening.</summary>
    public static SampleKiosk Evening()
    {
        var kiosk = new SampleKiosk();
        new Rehearsal(kiosk.Session.Desk, new Attachments(kiosk.Folder)).Play(SampleDay.Answers).Should().BeEmpty();
        return kiosk;
    }

    /// <summary>Somebody's PIN and Enter.</summary>
    public SampleKiosk TypePin(string code)
    {
        foreach (var key in Keystroke.Parse(PinOf(code) + "{Enter}"))
        {
            Session.Press(key);
            Keys++;
        }

        return this;
    }

    /// <summary>The six digits that somebody has here.</summary>
    public string PinOf(string code) => Digits(Depot.Setup, new(code));

    /// <summary>The program stops and is started again on the same book.</summary>
    /// <param name="kiosk">The machine on which it is started.</param>
    public SampleKiosk Restart(string kiosk = "bay")
    {
        Session = new KioskSession(new Desk(Book.Open(Folder), Clock), new Archive(Folder), new Attachments(Folder), pins: new Pins(1, kiosk));
        return this;
    }

    public string Show(int width = 80, int height = 24) => Session.Show(width, height).ToString();

    public IReadOnlyList<Entry> Entries => [.. PageReader.Read(Folder.Page(Book.Date), default).Entries.Skip(1).Select(e => e.Entry)];

    public void Dispose() => folder.Dispose();

    private static string Digits(Setup setup, Code<Technician> code) =>
        (481_516 + 2_342 * setup.Crew.Select(t => t.Code).ToList().IndexOf(code)).ToString("D6", CultureInfo.InvariantCulture);

    private static PersonPin Set(Setup setup, Code<Technician> code) => new(code, PinHash.Of(Digits(setup, code), new byte[PinHash.SaltBytes], 1), true, 0, null);
}
