using Closeout.Facts;

namespace Closeout.Leads;

/// <summary>What a lead asks to have recorded of close-outs and bookings.</summary>
public abstract record LeadCommand(Code<Technician> Lead);

/// <summary>Look over a signed close-out.</summary>
public sealed record CheckCloseout(Code<Van> Van, Code<Technician> Lead) : LeadCommand(Lead);

/// <summary>Open a signed close-out again.</summary>
public sealed record Reopen(Code<Van> Van, string Why, Code<Technician> Lead) : LeadCommand(Lead);

/// <summary>Sign a close-out for whoever brought the van in. What was not answered was confirmed as booked before.</summary>
/// <param name="For">Who brought it in.</param>
public sealed record SignFor(Code<Van> Van, Code<Technician> For, string Why, Code<Technician> Lead) : LeadCommand(Lead);

/// <summary>Explain why a van is not closed out.</summary>
/// <param name="StayedIn">It never went out.</param>
public sealed record ExplainVan(Code<Van> Van, bool StayedIn, string Why, Code<Technician> Lead) : LeadCommand(Lead);

/// <summary>Move visits booked for one van to another.</summary>
/// <param name="Kind">Null: all kinds.</param>
public sealed record MoveBookings(DateOnly Date, Code<Van> From, Code<Van> To, Code<VisitKind>? Kind, string Why, Code<Technician> Lead) : LeadCommand(Lead);
