namespace Closeout.Rules;

/// <summary>
/// What every rule asks of what it was given: words that say something and keep no secret, and a lead where only a lead may.
/// </summary>
public static class Given
{
    /// <summary>What is wrong with a text: nothing said, too much, or a number that must not be kept. Null: it will do.</summary>
    /// <param name="what">What the text is to say, as part of a sentence.</param>
    /// <param name="about">The name that forms give the text.</param>
    public static Refusal? Words(string what, string text, string about = "reason") => Wordy(what, text) is { } refused
        ? refused with { About = about }
        : null;

    /// <summary>Why somebody may not do what only a lead does. Null: a lead.</summary>
    public static Refusal? Lead(Setup setup, Code<Technician> code, string does) => setup.Find(code) switch
    {
        null => Refusal.NoSuchTechnician(code) with { About = "by" },
        { IsLead: false } technician => Refusal.OnlyALead(technician, does) with { About = "by" },
        _ => null,
    };

    /// <summary>Why a number cannot be. Null: it can.</summary>
    public static Refusal? Range(string what, decimal number, decimal least, decimal most, string? about = null) =>
        number >= least && number <= most ? null : Refusal.OutOfRange(what, number, least, most) with { About = about };

    private static Refusal? Wordy(string what, string text) => text.Trim() switch
    {
        "" => Refusal.NoWords(what),
        { Length: > Refusal.MostWords } said => Refusal.TooManyWords(what, said.Length),
        var said when CardNumber.IsIn(said) => Refusal.LooksLikeACard(what),
        var said when SocialSecurityNumber.IsIn(said) => Refusal.LooksLikeASocialSecurityNumber(what),
        _ => null,
    };
}
