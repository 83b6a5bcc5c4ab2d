using System.Globalization;

namespace Closeout.Restock;

/// <summary>Why a stock command was not recorded.</summary>
public static class StockRefusal
{
    public static Refusal NotClosedYet(Van van) =>
        new("not-closed-yet", $"{van.Code} {van.Name} is not closed, so nobody counted what is aboard. Close it out first, then load it.");

    public static Refusal LoadedAlready(Van van, Item item) =>
        new("loaded-already", $"{item.Description} was loaded into {van.Code} {van.Name} tonight. Correct its count if that was wrong.");

    public static Refusal NotOnTheShelf(Item item, int asked, int opened, int shelf) =>
        new("not-on-the-shelf",
            $"{View(asked, "sealed carton", "sealed cartons")} of {item.Description}{(opened > 0 ? $" and {opened} to open" : "")} were "
                + $"taken, and the book has {shelf} on the shelf. Type what you really took, or correct the shelf's count first.");

    public static Refusal NothingTaken(Van van) =>
        new("nothing-taken", $"Nothing was typed for {van.Code} {van.Name}. Type what was taken, 0 where it was none.");

    public static Refusal DateIsOver(DateOnly date, DateOnly today) =>
        new("date-is-over",
            string.Create(CultureInfo.InvariantCulture,
                $"The plan of {date:yyyy-MM-dd} cannot be changed: today is {today:yyyy-MM-dd}. Choose a later date."));

    public static Refusal AboveHigh(Item item, Van van, int units, int high) =>
        new("above-high",
            $"{van.Code} {van.Name} carries at most {high} of {item.Description}, and {units} were asked for. Type {high} or less, or "
                + "change the limit in van_limits.csv.");

    public static Refusal NoSuchChange(int number) =>
        new("no-such-change", $"Entry {number} is no change of the plan that stands. Choose one of those shown.");

    public static Refusal BeingClosedOut(Van van) =>
        new("being-closed-out",
            $"{van.Code} {van.Name} is being closed out, and reckons from what was aboard when it came in. Count the item in its "
                + "close-out, or correct it once that is signed.");

    public static Refusal NoItemNamed(Van van) =>
        new("no-item-named", $"No item was named for {van.Code} {van.Name}: only excluding a van needs none. Choose a line first.");

    private static string View(int number, string one, string many) => $"{number} {(number == 1 ? one : many)}";
}
