using System.Text;
using Closeout.Faults.Machine;
using Closeout.Files;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Screens.Steps;
using Closeout.Store;

namespace Closeout.Faults.Fuzz;

/// <summary>Keys at the kiosk: some that close out vans, so that every question is met, and many that nobody would press.</summary>
internal sealed class KeysFuzz(string temp) : IFuzzed
{
    private const int InputsPerBook = 400;

    private static readonly string[] Pieces =
    [
        "{Enter}", "{Enter}", "{Enter}", "{Escape}", "{Up}", "{Down}", "{Tab}", "{Backspace}", "{PageUp}", "{PageDown}", "{Home}", "{End}",
        "{F1}", "{F2}", "{F3}", "{F4}", "{F5}", "{F6}", "{F7}", "=", "*", "/", "d", "n", "y", "u", "B3", "B5{Enter}", "b1{Enter}{Enter}", "T07{Enter}", "L1{Enter}", "LED-A19{Enter}", "x",
        "0", "1", "9", "99999", ".", "..", "0.0000001", "28153", "999999999", "123456.7", "2147483648", "-1", "2026-11-18", "2026-02-30", "0000-00-00", "-", "--", " ", "é", "漢", "\u00a0", "\u202e", "\"", "'", "\\", ",", "left side", "R", "U",
    ];

    private static readonly Lazy<Turning.DayGiven> Day = new(() =>
    {
        using var folder = new Closeout.Tests.TempFolder();
        ShortDay.Write(folder.Path);
        return DayFolder.Read(folder.Path, StepPages.Evening).Given!;
    });

    private KioskSession? kiosk;
    private BookFolder? book;
    private Typist typist = new(new Random(0));
    private int inputs;
    private string keys = "";

    public string Name => "kiosk keys";

    public byte[] Make(Random random)
    {
        if (kiosk is null || inputs++ % InputsPerBook == 0 || typist.IsDone(kiosk.Desk.Depot))
        {
            Begin(random.Next());
        }

        keys = random.Next(2) == 0 && kiosk!.Model.Screen is not HelpScreen
            ? typist.Next(kiosk)
            : string.Concat(Enumerable.Range(0, random.Next(1, 25)).Select(_ => Piece(random)));
        return Encoding.UTF8.GetBytes(keys);
    }

    public string Give(byte[] input)
    {
        var before = kiosk!.Desk.Depot.Number;
        foreach (var key in Keystroke.Parse(keys))
        {
            kiosk.Press(key);
        }

        var (width, height) = ((input.Length * 7 % 130) + 1, (input.Length * 5 % 50) + 1);
        _ = (input.Length % 3 == 0 ? kiosk.Show(width, height) : kiosk.Show(80, 24)).ToString();
        if (inputs % InputsPerBook == InputsPerBook - 1 && Books.WhyNotGood(book!) is { } bad)
        {
            throw new InvalidOperationException($"the book is not good after these keys: {bad}");
        }

        return kiosk.Desk.Depot.Number > before ? "recorded something" : "recorded nothing";
    }

    private static string Piece(Random random) => random.Next(12) == 0
        ? Character(random).ToString()
        : Mutations.Any(random, Pieces);

    /// <summary>What the window lets through: no control characters, no halves of a pair. A brace would be read as the name of a key.</summary>
    private static char Character(Random random)
    {
        var c = (char)random.Next(32, random.Next(2) == 0 ? 127 : 0xFFFF);
        return char.IsSurrogate(c) || c is '{' or '}' or '\u007f' ? '?' : c;
    }

    private void Begin(int seed)
    {
        if (book is not null)
        {
            Directory.Delete(book.Path, recursive: true);
        }

        book = new BookFolder(Path.Combine(temp, "book"));
        kiosk = new KioskSession(new Desk(Book.New(book, Day.Value.FirstPage(rehearsal: true), TimeProvider.System.GetLocalNow()), TimeProvider.System), new Archive(book), new Attachments(book));
        typist = new Typist(new Random(seed));
    }
}
