using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>What is asked of a PIN.</summary>
public enum PinStage
{
    /// <summary>The PIN that the person has.</summary>
    Ask,

    /// <summary>A new one: of one's own, or I for one that is drawn.</summary>
    Choose,

    /// <summary>One's own, once more.</summary>
    Again,

    /// <summary>The one that was drawn and stands on the screen.</summary>
    Drawn,
}

/// <summary>Somebody's PIN, before something is recorded in that name.</summary>
/// <param name="Then">What is done once the PIN fits.</param>
/// <param name="Back">The screen that asked for it.</param>
/// <param name="Typed">Shown as dots.</param>
/// <param name="Chosen">The new PIN as far as it is known.</param>
/// <param name="Kiosk">What the book calls this kiosk.</param>
/// <param name="Old">What the old PIN was held against, where a new one takes its place; null: there is none, or it was not typed yet.</param>
public sealed record PinScreen(
    Code<Technician> Person, Act Then, Screen Back, string Kiosk, PinStage Stage = PinStage.Ask, string Typed = "", string Chosen = "", PinHash? Old = null) : Screen
{
    /// <summary>Without what was typed: a record prints itself in messages.</summary>
    public override string ToString() => $"{nameof(PinScreen)} of {Person}, {Stage}";
}

/// <summary>A PIN that a lead issued, shown once.</summary>
public sealed record IssuedScreen(Code<Technician> Person, string Pin, Screen Back) : Screen
{
    /// <summary>Without the PIN.</summary>
    public override string ToString() => $"{nameof(IssuedScreen)} of {Person}";
}

/// <summary>Everybody, and who has a PIN.</summary>
/// <param name="Back">The wall as it was left.</param>
public sealed record PeopleScreen(WallScreen Back, int Selected = 0) : Screen;

/// <summary>Hold what was typed against the person's PIN.</summary>
public sealed record TryPinAct : Act;

/// <summary>Draw a PIN for the person.</summary>
public sealed record DrawPinAct : Act;

/// <summary>The person takes the PIN that was typed twice, or drawn and typed.</summary>
public sealed record TakePinAct : Act;

/// <summary>Somebody sets a PIN of his own: another in place of the old one, which is asked first, or a first one.</summary>
public sealed record ChangePinAct(Code<Technician> Person) : Act;

/// <summary>A lead issues a PIN to somebody.</summary>
public sealed record IssuePinAct(Code<Technician> Person, Code<Technician> Lead) : Act;

/// <summary>A lead resets somebody's PIN.</summary>
public sealed record ResetPinAct(Code<Technician> Person, Code<Technician> Lead) : Act;
