namespace Closeout.Screens.Parts;

/// <summary>Somebody whose PIN was right a moment ago.</summary>
/// <param name="Minutes">For so long yet, rounded up.</param>
public sealed record Known(Code<Technician> Person, int Minutes);
