using System.Globalization;

namespace Closeout.Restock;

/// <summary>Why a stock command was not recorded.</summary>
public static class StockRefusal
{
    public static Refusal NotClosedYet(Van van) =>
        new("not-closed-yet", $"{van.Code} {van.Name} is not closed out, so its stock is not counted. Close it out before loading.");

    public static Refusal LoadedAlready(Van van, Item item) =>
        new("loaded-already", $"{item.Description} was loaded into {van.Code} {van.Name} tonight. If that was wrong, correct its count.");

    public static Refusal NotOnTheShelf(Item item, int asked, int opened, int shelf) =>
        new("not-on-the-shelf",
            $"{View(asked, "sealed carton", "sealed cartons")} of {item.Description}{(opened > 0 ? $" and {opened} to open" : "")}: only "
                + $"{shelf} on "
                + "the shelf on record. Type what you really took, or correct the shelf count first.");

    public static Refusal NothingTaken(Van van) =>
        new("nothing-taken", $"Type what was taken for {van.Code} {van.Name}, 0 for none.");

    public static Refusal DateIsOver(DateOnly date, DateOnly today) =>
        new("date-is-over",
            string.Create(CultureInfo.InvariantCulture,
                $"The plan for {date:yyyy-MM-dd} is over; today is {today:yyyy-MM-dd}. Choose a later date."));

    public static Refusal AboveHigh(Item item, Van van, int units, int high) =>
        new("above-high",
            $"{van.Code} {van.Name} carries at most {high} of {item.Description}, not {units}. Type {high} or less, or raise the limit in "
                + "van_limits.csv.");

    public static Refusal NoSuchChange(int number) =>
        new("no-such-change", $"Entry {number} is not a change that stands. Choose one from the list.");

    public static Refusal BeingClosedOut(Van van) =>
        new("being-closed-out",
            $"{van.Code} {van.Name} is being closed out. Count the item there, or correct it after the sign-off.");

    public static Refusal NoItemNamed(Van van) =>
        new("no-item-named", $"Choose an item for {van.Code} {van.Name}. Only excluding a van needs none.");

    private static string View(int number, string one, string many) => $"{number} {(number == 1 ? one : many)}";
}
