using System.Globalization;
using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;

namespace Closeout.Cardboard;

/// <summary>Why a command of the yard was not recorded.</summary>
public static class YardRefusal
{
    public static Refusal NotSoManyMissing(Van? van, Item item, int asked, int missing) =>
        new("not-so-many-missing", $"{missing} boxes of {item.Description} are missing {(van is null ? "at the depot" : $"of {van.Code} {van.Name}")}, and {asked} were to be written off. Type 1 to {missing}, or choose boxes that are missing.");

    public static Refusal NoSuchStream(Code<WasteStream> stream) =>
        new("no-such-stream", $"There is no waste stream {stream} at this depot. Choose one of {string.Join(", ", WasteStream.All.Select(s => s.Code))} that depot.csv switches on.");

    public static Refusal NothingCollected(WasteStream stream) =>
        new("nothing-collected", $"The collecting box of {stream.Description.ToLowerInvariant()} holds 0, so there is nothing to ship. Count what came home first.");

    public static Refusal ShippedAlready(WasteStream stream, decimal inBox, decimal less) =>
        new("shipped-already", string.Create(CultureInfo.InvariantCulture, $"The collecting box of {stream.Description.ToLowerInvariant()} holds {inBox} and this change takes {less} out of it: the rest was shipped. Leave the first count, or tell the lead."));
}
