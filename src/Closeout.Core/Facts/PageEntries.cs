using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>An entry of a page as a whole: how it began, and what was done to all of it.</summary>
[JsonDerivedType(typeof(PageOpened), "page-opened/3")]
[JsonDerivedType(typeof(DayFolderLoaded), "day-folder-loaded/2")]
[JsonDerivedType(typeof(BookSalvaged), "book-salvaged/1")]
public abstract record PageEntry : Entry;

/// <summary>The first entry of a page: the business date, and all that is carried forward into it.</summary>
/// <param name="Rehearsal">Whether the book is a rehearsal's: nobody stood at a van.</param>
/// <param name="EndedBy">
/// The lead who ended the business date before; null: a day folder of a later date was loaded, or it is the first page.
/// </param>
public sealed record PageOpened(DateOnly Date, bool Rehearsal, Carried Carried, Code<Technician>? EndedBy = null) : PageEntry
{
    public override Names Names => new(By: EndedBy);
}

/// <summary>A day folder was loaded into the open page: the set-up is replaced, and so are the dates that the folder names.</summary>
/// <param name="BookingDates">Dates whose bookings were replaced.</param>
/// <param name="UseDates">Dates whose visit reports were replaced.</param>
/// <param name="Reported">Vans and dates that have reports: what was only counted of them no longer counts.</param>
/// <param name="Orders">All open orders; null: the folder says nothing of orders.</param>
/// <param name="Made">Visits made on earlier dates whose bookings the book knows; null: none.</param>
public sealed record DayFolderLoaded(
    Setup Setup,
    IReadOnlyList<DateOnly> BookingDates,
    IReadOnlyList<Booking> Bookings,
    IReadOnlyList<DateOnly> UseDates,
    IReadOnlyList<DailyUse> Use,
    IReadOnlyList<VanUse> ByVan,
    IReadOnlyList<VanDay> Reported,
    IReadOnlyList<Order>? Orders,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<VanVisits>? Made = null) : PageEntry;

/// <summary>Entries of this page were lost by damage, and the rest was saved into this book.</summary>
/// <param name="Lost">Entries lost here, or between this page and the next.</param>
/// <param name="Change">
/// To and from unexplained: what brings the balances to those that the next page carried forward, or, where nothing tells
/// them, to what was last counted and not below nothing.
/// </param>
public sealed record BookSalvaged(int Lost, IReadOnlyList<Move> Change) : PageEntry
{
    public override IReadOnlyList<Move> Moves => Change;
}
