using Closeout.Facts;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Turning;
using Closeout.Vans;

namespace Closeout.Tests.Store;

/// <summary>A book of three business dates with deliveries, loads, changes of the plan, corrected counts, attachments and a line set aside; the third is open. The archive is up to date.</summary>
internal sealed class LongBook : IDisposable
{
    public static readonly DateOnly First = SmallDay.Date;
    public static readonly DateOnly Second = SmallDay.Date.AddDays(1);
    public static readonly DateOnly Third = SmallDay.Date.AddDays(2);
    public static readonly IReadOnlyList<DateOnly> Dates = [First, Second, Third];

    private static readonly Code<Technician> Lead = new("L1");

    private readonly TempFolder temp;
    private int second;

    /// <param name="second">When it was set up: two books differ by it.</param>
    public LongBook(int second = 0, bool inMemory = false)
    {
        (this.second, temp) = (second, new(inMemory));
        var book = Book.New(Folder, SmallDay.Given(("depot.csv", SmallDay.Text("depot.csv") + "streams,lamps\n")).FirstPage(rehearsal: false), Now());
        Told(book, new ComeIn(SmallBook.B1, new("T1")));
        Told(book, new CountLeftover(SmallBook.B1, SmallBook.Lamp, 1, 2, 5, Sure: true));
        Told(book, new CountLeftover(SmallBook.B1, SmallBook.Lamp, 1, 3, 2, Sure: true));
        Told(book, new ComeIn(SmallBook.B2, new("T2")));
        Close(book, SmallBook.B1, 1050);
        Told(book, new ReceiveDelivery(SmallBook.Lamp, 6, Lead));
        Told(book, new ChangePlan(OverrideKind.Extra, SmallBook.B1, SmallBook.Lamp, Second.AddDays(3), 4, "open house", Lead));
        Told(book, new ChangePlan(OverrideKind.Exclude, SmallBook.B2, null, Second.AddDays(4), 0, "in the workshop", Lead));
        Close(book, SmallBook.B2, 2040);
        Told(book, new LoadVan(SmallBook.B1, [new(SmallBook.Lamp, 1, 6)], Lead));
        book = Next(book, Second);
        Told(book, new ComeIn(SmallBook.B2, new("T2")));
        Told(book, new CountLeftover(SmallBook.B2, SmallBook.Lamp, 0, 4, 3, Sure: true));
        Told(book, new WithdrawChange(book.Depot.Planning.Overrides[0].Number, "called off", Lead));
        Told(book, new CorrectCount(Place.Bin, SmallBook.Lamp, 9, "counted at noon", Lead));
        Close(book, SmallBook.B2, 2100);
        Told(book, new ReceiveDelivery(SmallBook.Lamp, 2, Lead));
        Told(book, new LoadVan(SmallBook.B2, [new(SmallBook.Lamp, 2, 0)], null));
        book = Next(book, Third);
        Told(book, new ComeIn(SmallBook.B1, new("T1")));
        Told(book, new CountLeftover(SmallBook.B1, SmallBook.Lamp, 1, 1, 4, Sure: true));
        Told(book, new ConfirmLeftovers(SmallBook.B1));
        Told(book, new CountBoxes(SmallBook.B1, SmallBook.Lamp, 1));
        Told(book, new ConfirmCardboard(SmallBook.B1));
        Told(book, new LogMileage(SmallBook.B1, 1100));
        Told(book, new ReportDamage(SmallBook.B1, "roof", Severity.Repair, "rack loose"));
        Told(book, new ReportDamage(SmallBook.B1, "rear door", Severity.Note, "scratch"));
        Done(book.Record(depot => new CloseIncident(SmallBook.B1, 5, "wiped off", Lead).Decide(depot), Now()));
        Attach(book, 40);
        Attach(book, 3000);
        Directory.CreateDirectory(Folder.TornLines);
        File.WriteAllText(Path.Combine(Folder.TornLines, $"{First:yyyy-MM-dd}-after-7.txt"), "{\"n\":8,\"pre");
        new Archive(Folder).CatchUp();
        Entries = book.Depot.Number;
    }

    public BookFolder Folder => new(temp["book"]);

    public TempFolder Temp => temp;

    /// <summary>How many entries it has.</summary>
    public int Entries { get; }

    public static IReadOnlyList<Recorded> All(BookFolder folder) => [.. folder.Dates.SelectMany(d => PageReader.Read(folder.Page(d), default).Entries)];

    /// <summary>The bytes of every page, by its file's name.</summary>
    public static IReadOnlyDictionary<string, string> Pages(BookFolder folder) =>
        Directory.EnumerateFiles(folder.Pages).ToDictionary(f => Path.GetFileName(f), f => Convert.ToHexString(File.ReadAllBytes(f)));

    /// <summary>A line's bytes in a page, its line feed included.</summary>
    public static List<byte[]> Lines(string page)
    {
        var (bytes, lines) = (File.ReadAllBytes(page), new List<byte[]>());
        for (var start = 0; start < bytes.Length;)
        {
            var length = bytes.AsSpan(start).IndexOf((byte)'\n') is var end and >= 0 ? end + 1 : bytes.Length - start;
            lines.Add(bytes[start..(start + length)]);
            start += length;
        }

        return lines;
    }

    public static void Write(string page, IEnumerable<byte[]> lines) => File.WriteAllBytes(page, [.. lines.SelectMany(l => l)]);

    /// <summary>Another folder with the same book in it.</summary>
    public BookFolder Copy(string name)
    {
        var copy = new BookFolder(temp[name]);
        foreach (var file in Directory.EnumerateFiles(Folder.Path, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(copy.Path, Path.GetRelativePath(Folder.Path, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }

        return copy;
    }

    public void Dispose() => temp.Dispose();

    private DateTimeOffset Now() => SmallBook.At(second += 7);

    private Book Next(Book book, DateOnly date) => book.Turned(NextPage.After(book.Depot, date), Now());

    private void Close(Book book, Code<Van> van, int odometer)
    {
        ICommand[] rest =
        [
            new ConfirmLeftovers(van), new CountStream(van, new("lamps"), 4), new ConfirmCardboard(van), new LogMileage(van, odometer, Sure: true),
            new ReportDamage(van, "left side", Severity.Note, "dent"), new ConfirmDamage(van, false), new ConfirmKit(van),
        ];
        Array.ForEach(rest, c => Told(book, c));
        if (book.Depot.Shift(van)!.WeeklyDue)
        {
            Told(book, new CheckWeekly(van, null, 0, true));
        }

        Told(book, new Sign(van, new("T1")));
    }

    private void Told(Book book, ICommand command) => Done(book.Record(command.Decide, Now()));

    private static void Done(Refusal? refusal)
    {
        if (refusal is not null)
        {
            throw new InvalidOperationException(refusal.Text);
        }
    }

    /// <summary>Attaches a picture of so many bytes.</summary>
    private void Attach(Book book, int bytes)
    {
        var path = temp[$"{bytes}.jpg"];
        File.WriteAllBytes(path, [0xFF, 0xD8, 0xFF, .. Enumerable.Range(3, bytes - 3).Select(i => (byte)(i * 7 % 256))]);
        var taken = new Attachments(Folder).Take(path);
        Told(book, new AttachPhoto(SmallBook.B1, taken.Sha256, taken.Name, taken.Bytes));
        File.Delete(path);
    }
}
