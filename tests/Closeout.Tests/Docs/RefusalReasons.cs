namespace Closeout.Tests.Docs;

/// <summary>Why a limit is where it is, by the code of its refusal: the one hand-written part of the tables in docs/refusals.md.</summary>
internal static class RefusalReasons
{
    public static IReadOnlyDictionary<string, string> Of { get; } = new Dictionary<string, string>
    {
        ["odometer-too-far"] =
            "Twice the van's usual day or its usual day and six spreads; a fixed limit until 8 of its days are known (common practice)",
        ["out-of-range"] = "Beyond what a van, a bin or a tank can hold: a number in the wrong field",
        ["too-many-photos"] = "Enough for every side and every damage; a page stays small",
        ["too-many-words"] = "One line of the wall and of the sheets",
        ["no-words"] = "Somebody must understand it months later",
        ["looks-like-a-card"] = "An entry is never edited, so it must not get in",
        ["looks-like-a-social-security-number"] = "An entry is never edited, so it must not get in",
        ["above-high"] = "The van's own limit in van_limits.csv or items.csv",
        ["too-far-ahead"] = "The plan looks back 60 days; a date beyond that is mistyped",
        ["own-closeout"] = "A second pair of eyes",
        ["pin-too-short"] = "NIST SP 800-63B revision 3, 5.1.1.1",
        ["pin-too-long"] = "NIST SP 800-63B revision 3, 5.1.1.2: at least 64 are taken",
        ["wrong-pin"] = "Our own choice; NIST SP 800-63B revision 3, 5.2.2 allows at most 100",
        ["kiosk-rests"] = "Our own choice: stops somebody who tries everybody in turn",
    };
}
