namespace Closeout.Restock;

/// <summary>Why a stock command was not recorded.</summary>
public static class StockRefusal
{
    public static Refusal NotClosedYet(Van van) =>
        new("not-closed-yet", T($"{van.Code} {van.Name} is not closed out, so its stock is not counted. Close it out before loading."));

    public static Refusal LoadedAlready(Van van, Item item) =>
        new("loaded-already",
            T($"{item.Description} was loaded into {van.Code} {van.Name} tonight. If that was wrong, correct its count."));

    public static Refusal NotOnTheShelf(Item item, int asked, int opened, int shelf) =>
        new("not-on-the-shelf",
            T($"{View(asked, T("sealed carton"), T("sealed cartons"))} of "
                    + $"{item.Description}{(opened > 0 ? T($" and {opened} to open") : "")}: only "
                + $"{shelf} on the shelf on record. Type what you really took, or correct the shelf count first."));

    public static Refusal SameVan(Van van) =>
        new("same-van", T($"{van.Code} {van.Name} is both the one that gives and the one that takes. Type another van."));

    public static Refusal NothingMoved(Van van) =>
        new("nothing-moved", T($"Type what leaves {van.Code} {van.Name}: sealed cartons, loose units, or both."));

    public static Refusal NotAboard(Van van, Item item, int boxed, int loose, Holding held) =>
        new("not-aboard",
            T($"{van.Code} {van.Name} has {View(held.Sealed, T("sealed carton"), T("sealed cartons"))} and {held.Loose} loose of "
                + $"{item.Description} on record; {boxed} sealed and {loose} loose would be too many."));

    public static Refusal NotGiven(int number) =>
        new("not-given", T($"Nothing was given under number {number}, or it was answered already. Choose one of the list."));

    public static Refusal NotYourVan(Van van, Technician technician) =>
        new("not-your-van",
            T($"{technician.Code} {technician.Name} did not bring {van.Code} {van.Name} in. Its technician or a lead answers."));

    public static Refusal NothingTaken(Van van) =>
        new("nothing-taken", T($"Type what was taken for {van.Code} {van.Name}, 0 for none."));

    public static Refusal DateIsOver(DateOnly date, DateOnly today) =>
        new("date-is-over",
            T($"The plan for {date:yyyy-MM-dd} is over; today is {today:yyyy-MM-dd}. Choose a later date."));

    public static Refusal AboveHigh(Item item, Van van, int units, int high) =>
        new("above-high",
            T(
                $"{van.Code} {van.Name} carries at most {high} of {item.Description}, not {units}. Type {high} or less, or raise the "
                    + $"limit in van_limits.csv."));

    public static Refusal NoSuchChange(int number) =>
        new("no-such-change", T($"Entry {number} is not a change that stands. Choose one from the list."));

    public static Refusal BeingClosedOut(Van van) =>
        new("being-closed-out",
            T($"{van.Code} {van.Name} is being closed out. Count the item there, or correct it after the sign-off."));

    public static Refusal NoItemNamed(Van van) =>
        new("no-item-named", T($"Choose an item for {van.Code} {van.Name}. Only excluding a van needs none."));

    private static string View(int number, string one, string many) => $"{number} {(number == 1 ? one : many)}";
}
