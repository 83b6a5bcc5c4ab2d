namespace Closeout.Cardboard;

/// <summary>Why a command of the yard was not recorded.</summary>
public static class YardRefusal
{
    public static Refusal NotSoManyMissing(Van? van, Item item, int asked, int missing) => new(
        "not-so-many-missing",
        $"{missing} {(missing == 1 ? "box" : "boxes")} of {item.Description} {(missing == 1 ? "is" : "are")} missing "
            + $"{(van is null ? "at the depot" : $"of {van.Code} {van.Name}")}, and {asked} {(asked == 1 ? "was" : "were")} to be "
            + "written off. "
            + (missing == 0
                ? "Choose boxes that are missing."
                : $"Type {(missing == 1 ? "1" : $"1 to {missing}")}, or choose other boxes."));

    public static Refusal NoSuchStream(Code<WasteStream> stream) =>
        new("no-such-stream",
            $"There is no waste stream {stream} at this depot. Choose one of {string.Join(", ", WasteStream.All.Select(s => s.Code))} "
                + "that depot.csv switches on.");

    public static Refusal NothingCollected(WasteStream stream) =>
        new("nothing-collected",
            $"The collecting box of {stream.Description.ToLowerInvariant()} holds 0, so there is nothing to ship. Count what came home "
                + "first.");
}
