using Closeout.Facts;

namespace Closeout.Vans;

/// <summary>What a lead asks to have recorded of a van, whatever its close-out.</summary>
public abstract record VanCommand(Code<Van> Van, Code<Technician> Lead);

/// <summary>Lift all holds of the van; open incidents stay open.</summary>
public sealed record LiftHolds(Code<Van> Van, string Why, Code<Technician> Lead) : VanCommand(Van, Lead);

/// <summary>Put the van on hold.</summary>
public sealed record PlaceHold(Code<Van> Van, string Reason, Code<Technician> Lead) : VanCommand(Van, Lead);

/// <summary>Close an incident of the van.</summary>
public sealed record CloseIncident(Code<Van> Van, int Number, string Why, Code<Technician> Lead) : VanCommand(Van, Lead);
