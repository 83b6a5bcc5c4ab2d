using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Shifts;
using Closeout.Store;
using Closeout.Vans;

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
/// <param name="Behind">The walk-round as far as it was answered, while a damage found on it is described.</param>
public sealed record CloseoutScreen(
    Code<Van> Van, Step At, Code<Item>? Item, Form Form, string? Find = null, bool IsReport = false, Command? Doubted = null, Form? Behind = null) : Screen;

/// <summary>Pictures to put beside a close-out.</summary>
public sealed record AttachScreen(Code<Van> Van, CloseoutScreen Back, Form Form) : Screen;

/// <summary>All there is to know of one van.</summary>
public sealed record VanScreen(Code<Van> Van, int Top = 0) : Screen;

/// <summary>How the lines of the plan are ordered.</summary>
public enum PlanOrder
{
    ByVan,
    ByItem,
    Short,
}

/// <summary>Tomorrow's gaps.</summary>
/// <param name="Back">The wall as it was left.</param>
/// <param name="Selected">The line that Enter explains.</param>
/// <param name="Filter">Lines that do not contain it are left out.</param>
public sealed record TomorrowScreen(WallScreen Back, int Selected = 0, string Filter = "", PlanOrder Order = PlanOrder.ByVan) : Screen;

/// <summary>Why a line of the plan says what it says.</summary>
public sealed record WhyScreen(TomorrowScreen Back, Code<Van> Van, Code<Item> Item) : Screen;

/// <summary>A van's pick list.</summary>
public sealed record LoadScreen(Code<Van> Van, Form Form) : Screen;

/// <summary>The stock desk.</summary>
/// <param name="Van">Of the line that is changed; null: no line.</param>
/// <param name="Person">Whose PIN it is about; null: nobody's.</param>
public sealed record DeskScreen(DeskTask Task, Form Form, Screen Back, Code<Van>? Van = null, Code<Item>? Item = null, Code<Technician>? Person = null) : Screen;

/// <summary>How well the plan did.</summary>
/// <param name="Back">The wall as it was left.</param>
public sealed record AccuracyScreen(WallScreen Back, int Top = 0) : Screen;

/// <summary>What the screen of the yard shows.</summary>
public enum YardPage
{
    Tonight,
    Weeks,
    Months,
    Days,
    Vans,
    Items,
    OtherWaste,
}

/// <summary>Cardboard and other waste.</summary>
/// <param name="Back">The wall as it was left.</param>
/// <param name="Boxes">Boxes of the last year, from the archive.</param>
/// <param name="Streams">Other waste of the last year.</param>
public sealed record CardboardScreen(WallScreen Back, IReadOnlyList<DatedBoxes> Boxes, IReadOnlyList<StreamDay> Streams, YardPage Page = YardPage.Tonight, int Top = 0) : Screen;

/// <summary>The day book of the open date: who did what when.</summary>
/// <param name="Back">The wall as it was left.</param>
/// <param name="Lines">Its entries in words, the newest first.</param>
/// <param name="Filter">Lines that do not contain it are left out.</param>
/// <param name="Selected">Of the lines left, the one that stands below them whole.</param>
public sealed record DayBookScreen(WallScreen Back, IReadOnlyList<(Recorded Recorded, DayBookLine Line)> Lines, string Filter = "", int Selected = 0) : Screen;

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

/// <summary>Record a command of the yard, and say so.</summary>
public sealed record YardAct(YardCommand Command, string Done) : Act;

/// <summary>Record a lead's command of a van, and say so.</summary>
public sealed record VanAct(VanCommand Command, string Done) : Act;

/// <summary>Record a lead's command, and say so.</summary>
public sealed record LeadAct(LeadCommand Command, string Done) : Act;

/// <summary>Close a van out for somebody: what was not answered as booked, then the lead's name under it.</summary>
public sealed record BehalfAct(Code<Van> Van, Code<Technician> For, string Why, Code<Technician> Lead) : Act;

/// <summary>End the business date.</summary>
public sealed record EndDayAct(DateOnly Next, Code<Technician> Lead) : Act;

/// <summary>Show the day book.</summary>
/// <param name="Back">The wall as it was left.</param>
public sealed record DayBookAct(WallScreen Back) : Act;

/// <summary>Copy pictures into the book and record them.</summary>
/// <param name="Path">A picture, or a folder with pictures; empty: the book's inbox.</param>
public sealed record AttachAct(Code<Van> Van, string Path) : Act;

/// <summary>Show the cardboard totals.</summary>
/// <param name="Back">The wall as it was left.</param>
public sealed record CardboardAct(WallScreen Back) : Act;

/// <summary>Leave the kiosk.</summary>
public sealed record QuitAct : Act;
