// A second program for the tests: appends counts to a book, one after the other, and says each as soon as it is recorded.
// Arguments: the book's folder, a van that has come in, an item, how many counts. Waits for a line on standard input first.
using Closeout;
using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;
using Closeout.Store;

var desk = new Desk(Book.Open(new BookFolder(args[0])), TimeProvider.System);
var (van, item, times) = (Code<Van>.Of(args[1]), Code<Item>.Of(args[2]), int.Parse(args[3], System.Globalization.CultureInfo.InvariantCulture));
Console.WriteLine("ready");
Console.ReadLine();
for (var kept = 1; kept <= times; kept++)
{
    if (desk.Record(new CountLeftover(van, item, Sealed: null, Bin: 0, Kept: kept, Installed: 0, Sure: true)) is { } refusal)
    {
        Console.Error.WriteLine(refusal.Text);
        return 1;
    }

    Console.WriteLine(kept);
}

return 0;
