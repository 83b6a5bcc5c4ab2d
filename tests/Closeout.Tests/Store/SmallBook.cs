using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Turning;

namespace Closeout.Tests.Store;

/// <summary>The small day's book in a temporary folder, and short ways to write to it.</summary>
internal sealed class SmallBook : IDisposable
{
    public static readonly Code<Van> B1 = new("B1");
    public static readonly Code<Van> B2 = new("B2");
    public static readonly Code<Item> Lamp = new("LAMP");

    private readonly TempFolder temp = new();

    /// <param name="second">When it was set up: two books differ by it.</param>
    public SmallBook(int second = 0) => Book = Book.New(Folder, SmallDay.Given().FirstPage(rehearsal: false), At(second));

    public BookFolder Folder => new(temp["book"]);

    public string Page => Folder.Page(SmallDay.Date);

    public Book Book { get; }

    public static DateTimeOffset At(int second) => new DateTimeOffset(2026, 3, 4, 16, 30, 0, TimeSpan.FromHours(-5)).AddSeconds(second);

    public static Refusal? Tell(Book book, ICommand command) => book.Record(depot => command.Decide(depot), At(1));

    public static Refusal? Count(Book book, Code<Van> van, int kept) => Tell(book, new CountLeftover(van, Lamp, null, 0, kept, 0, Sure: true));

    /// <summary>Brings both vans in and counts a few lamps: entries 2, 3 and one for each count.</summary>
    public SmallBook With(int counts)
    {
        Told(new ComeIn(B1, new("T1")));
        Told(new ComeIn(B2, new("T2")));
        for (var kept = 1; kept <= counts; kept++)
        {
            Told(new CountLeftover(B1, Lamp, null, 0, kept, 0, Sure: true));
        }

        return this;
    }

    public SmallBook Closed(params Code<Van>[] vans)
    {
        foreach (var van in vans)
        {
            ICommand[] evening = [new ComeIn(van, new("T1")), new ConfirmLeftovers(van), new ConfirmCardboard(van), new LogMileage(van, 2050), new ConfirmDamage(van, true), new ConfirmKit(van), new Sign(van, new("T1"))];
            Array.ForEach(evening, Told);
        }

        return this;
    }

    public void Told(ICommand command)
    {
        if (Book.Record(depot => (command is LogMileage m ? m with { Sure = true } : command).Decide(depot), At(1)) is { } refusal)
        {
            throw new InvalidOperationException(refusal.Text);
        }
    }

    /// <summary>Opens the next business date.</summary>
    public Book NextDay(int days = 1) => Book.Turned(NextPage.After(Book.Depot, SmallDay.Date.AddDays(days)), At(86_400));

    public Spoken Check() => Spoken.By(() => Closeout.Commands.CheckCommand.Run(Folder));

    public byte[] Bytes => File.ReadAllBytes(Page);

    public void Dispose() => temp.Dispose();
}
