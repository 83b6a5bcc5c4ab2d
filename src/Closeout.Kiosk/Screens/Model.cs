using Closeout.DayBook;
using Closeout.Restock;
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

/// <summary>How the lines of the plan are ordered.</summary>
public enum PlanOrder
{
    ByVan,
    ByItem,
    Short,
}

/// <summary>Tomorrow's gaps.</summary>
/// <param name="Selected">The line that Enter explains.</param>
/// <param name="Filter">Lines that do not contain it are left out.</param>
public sealed record TomorrowScreen(int Selected = 0, string Filter = "", PlanOrder Order = PlanOrder.ByVan) : Screen;

/// <summary>Why a line of the plan says what it says.</summary>
public sealed record WhyScreen(TomorrowScreen Back, Code<Van> Van, Code<Item> Item) : Screen;

/// <summary>A van's pick list.</summary>
public sealed record LoadScreen(Code<Van> Van, Form Form) : Screen;

/// <summary>The stock desk.</summary>
/// <param name="Van">Of the line that is changed; null: no line.</param>
public sealed record DeskScreen(DeskTask Task, Form Form, Screen Back, Code<Van>? Van = null, Code<Item>? Item = null) : Screen;

/// <summary>How well the plan did.</summary>
public sealed record AccuracyScreen(int Top = 0) : Screen;

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

/// <summary>Record a stock command, and say so.</summary>
public sealed record StockAct(StockCommand Command, string Done) : Act;

/// <summary>Show the cardboard totals.</summary>
public sealed record CardboardAct : Act;

/// <summary>Leave the kiosk.</summary>
public sealed record QuitAct : Act;
