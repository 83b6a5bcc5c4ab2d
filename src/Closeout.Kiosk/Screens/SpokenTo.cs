using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>In which language a screen speaks: a close-out in that of its technician, all others in that of the depot.</summary>
/// <param name="chosen">The one that was chosen for the whole program, which outranks both; null: none.</param>
internal sealed class SpokenTo(string? chosen)
{
    public string Code(Depot depot, Screen screen) => chosen
        ?? (screen.SpeaksTo(depot) is { } person ? depot.Setup.Find(person)?.Language : null)
        ?? depot.Setup.Depot.Language;

    public TResult Speaking<TResult>(Depot depot, Screen screen, Func<TResult> act) =>
        Tongue.Speaking(Language.Of(Code(depot, screen)), act);

    public void Speaking(Depot depot, Screen screen, Action act) => Speaking(depot, screen, () =>
    {
        act();
        return true;
    });
}
