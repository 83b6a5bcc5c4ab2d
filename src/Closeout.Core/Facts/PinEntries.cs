using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>An entry of somebody's PIN. None holds a PIN.</summary>
[JsonDerivedType(typeof(PinSet), "pin-set/1")]
[JsonDerivedType(typeof(PinReset), "pin-reset/1")]
[JsonDerivedType(typeof(PinFailed), "pin-failed/1")]
[JsonDerivedType(typeof(PinPassed), "pin-passed/1")]
public abstract record PinEntry : Entry;

/// <summary>Somebody has a PIN from now on, in place of an old one. What failed before no longer counts.</summary>
/// <param name="Issued">Whether the kiosk drew it; else the person chose it.</param>
/// <param name="Lead">Who issued it; null: the person took it, or it is the first lead's.</param>
public sealed record PinSet(Code<Technician> Person, PinHash Hash, bool Issued, Code<Technician>? Lead) : PinEntry
{
    public override Names Names => new(By: Lead ?? Person) { About = Person };
}

/// <summary>A lead took somebody's PIN away, and its failures with it.</summary>
public sealed record PinReset(Code<Technician> Person, Code<Technician> Lead) : PinEntry
{
    public override Names Names => new(By: Lead) { About = Person };
}

/// <summary>A wrong PIN was typed for somebody. It is nobody's: it names whose it would have been, not who typed it.</summary>
/// <param name="Kiosk">The machine's name, at most 24 characters.</param>
public sealed record PinFailed(Code<Technician> Person, string Kiosk) : PinEntry
{
    public override Names Names => new() { About = Person };
}

/// <summary>The right PIN was typed after wrong ones: the failures in a row are over, the person's and the kiosk's.</summary>
public sealed record PinPassed(Code<Technician> Person, string Kiosk) : PinEntry
{
    public override Names Names => new(By: Person);
}
