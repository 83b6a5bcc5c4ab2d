namespace Closeout.Cardboard;

/// <summary>Why a command of the yard was not recorded.</summary>
public static class YardRefusal
{
    public static Refusal NotSoManyMissing(Van? van, Item item, int asked, int missing) =>
        new("not-so-many-missing",
        missing == 0 ? T($"{(van is null ? T("The depot") : $"{van.Code} {van.Name}")} has no box of {item.Description} missing.")
            : T($"{(van is null ? T("The depot") : $"{van.Code} {van.Name}")} has {missing} {(missing == 1 ? T("box") : T("boxes"))} of "
                + $"{item.Description} "
                + $"missing, not {asked}. Type {(missing == 1 ? "1" : T($"1 to {missing}"))}."));

    public static Refusal NoSuchStream(Code<WasteStream> stream) =>
        new("no-such-stream",
            T($"No waste stream is called {stream}. Choose one of {string.Join(", ", WasteStream.All.Select(s => s.Code))}; depot.csv "
                + $"switches them on."));

    public static Refusal NothingCollected(WasteStream stream) =>
        new("nothing-collected",
            T($"The accumulation box of {stream.Description.ToLowerInvariant()} is empty. Count what came home first."));
}
