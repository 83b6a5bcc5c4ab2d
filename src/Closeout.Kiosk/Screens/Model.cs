using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>What a screen needs beyond the book. The book says the rest.</summary>
public abstract record Screen;

/// <summary>All vans in bay order.</summary>
/// <param name="Typed">A van's code, as far as typed or scanned.</param>
public sealed record WallScreen(int Selected = 0, string Typed = "") : Screen;

/// <summary>Who brings the van in?</summary>
public sealed record WhoScreen(Code<Van> Van, Form Form) : Screen;

/// <summary>One question of a van's close-out.</summary>
/// <param name="At">The step looked at: the open one, or an earlier one.</param>
/// <param name="Item">The item asked for, in leftovers.</param>
/// <param name="Find">What is typed to find an item; null: not finding.</param>
/// <param name="IsReport">Whether a damage is being described.</param>
/// <param name="Doubted">An answer that was asked again: given once more, it is recorded.</param>
public sealed record CloseoutScreen(
    Code<Van> Van, Step At, Code<Item>? Item, Form Form, string? Find = null, bool IsReport = false, Command? Doubted = null) : Screen;

/// <summary>Tomorrow's gaps.</summary>
/// <param name="Filter">Lines that do not contain it are left out.</param>
public sealed record TomorrowScreen(int Top = 0, string Filter = "") : Screen;

/// <summary>The recycling totals.</summary>
/// <param name="Days">Boxes by day of the month and the weeks before, from the archive.</param>
public sealed record CardboardScreen(IReadOnlyList<BoxDay> Days, int Top = 0) : Screen;

/// <summary>The keys and words of a screen.</summary>
public sealed record HelpScreen(Screen Back) : Screen;

/// <summary>What the kiosk shows.</summary>
/// <param name="Said">A sentence to the person; empty: none.</param>
public sealed record Model(Screen Screen, string Said = "")
{
    public static readonly Model Start = new(new WallScreen());
}

/// <summary>What a key asks of the world.</summary>
public abstract record Act;

/// <summary>Record these, one after the other, up to the first refusal.</summary>
public sealed record RecordAct(IReadOnlyList<Command> Commands) : Act;

/// <summary>Show the cardboard totals.</summary>
public sealed record CardboardAct : Act;

/// <summary>Leave the kiosk.</summary>
public sealed record QuitAct : Act;
