namespace Closeout.Facts;

/// <summary>A lead looked over a signed close-out. Four eyes: never the one who signed it or brought the van in.</summary>
public sealed record CloseoutChecked(Code<Van> Van, Code<Technician> Lead) : VanEntry(Van);

/// <summary>A lead opened a signed close-out again: it stands at its sign-off, and every answer may be changed.</summary>
public sealed record CloseoutReopened(Code<Van> Van, string Why, Code<Technician> Lead) : VanEntry(Van);

/// <summary>A lead signed a close-out for somebody who could not.</summary>
/// <param name="For">Whose close-out it is.</param>
public sealed record SignedFor(Code<Van> Van, Code<Technician> For, string Why, Code<Technician> Lead) : VanEntry(Van);

/// <summary>A lead explained why a van is not closed out, so that the day can end without it.</summary>
/// <param name="StayedIn">True: it never went out, so what the book has aboard is aboard. False: out, or left half way; nobody counted it.</param>
public sealed record VanExplained(Code<Van> Van, bool StayedIn, string Why, Code<Technician> Lead) : Entry;

/// <summary>A lead moved booked visits from one van to another.</summary>
/// <param name="Visits">Each above 0.</param>
public sealed record BookingsMoved(DateOnly Date, Code<Van> From, Code<Van> To, IReadOnlyList<KindVisits> Visits, string Why, Code<Technician> Lead) : Entry;
