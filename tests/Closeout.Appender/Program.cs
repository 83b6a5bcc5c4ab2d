using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Store;

// A second program for the tests: appends counts to a book, one after the other, and says each as soon as it is recorded.
// With the one argument faulty-kiosk: a kiosk that fails at F3, to see what an error of our own leaves behind.
// With the one argument commands: the program's own commands, one for each line of standard input.
// Otherwise, arguments: the book's folder, a van that has come in, an item, how many counts. After the first it waits for a line on standard input.

if (args is ["faulty-kiosk"])
{
    return Closeout.Appender.FaultyKiosk.Run();
}

if (args is ["commands"])
{
    return Closeout.Appender.Commands.Play();
}

var desk = new Desk(Book.Open(new BookFolder(args[0])), TimeProvider.System);
var (van, item, times) = (Code<Van>.Of(args[1]), Code<Item>.Of(args[2]), int.Parse(args[3], System.Globalization.CultureInfo.InvariantCulture));
for (var kept = 1; kept <= times; kept++)
{
    if (desk.Record(new CountLeftover(van, item, Sealed: null, Bin: 0, Kept: kept, Installed: 0, Sure: true)) is { } refusal)
    {
        Console.Error.WriteLine(refusal.Text);
        return 1;
    }

    Console.WriteLine(kept);
    if (kept == 1)
    {
        Console.ReadLine();
    }

    // A breath now and then, so that two of these really take turns.
    if (kept % 10 == 0)
    {
        Thread.Sleep(1);
    }
}

return 0;
