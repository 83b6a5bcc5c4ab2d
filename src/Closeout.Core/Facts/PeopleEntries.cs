namespace Closeout.Facts;

/// <summary>How a signature is known to be the signer's. It proves who confirmed, not that the van is safe.</summary>
public enum Proof
{
    /// <summary>The signer's PIN was typed.</summary>
    Pin,

    /// <summary>None was asked: a rehearsal.</summary>
    Rehearsal,
}

/// <summary>Somebody has a PIN from now on, in place of an old one. What failed before no longer counts.</summary>
/// <param name="Issued">Whether the kiosk drew it; else the person chose it.</param>
/// <param name="Lead">Who issued it; null: the person took it, or it is the first lead's.</param>
public sealed record PinSet(Code<Technician> Person, PinHash Hash, bool Issued, Code<Technician>? Lead) : Entry;

/// <summary>A lead took somebody's PIN away, and its failures with it.</summary>
public sealed record PinReset(Code<Technician> Person, Code<Technician> Lead) : Entry;

/// <summary>A wrong PIN was typed for somebody.</summary>
/// <param name="Kiosk">The machine's name, at most 24 characters.</param>
public sealed record PinFailed(Code<Technician> Person, string Kiosk) : Entry;

/// <summary>The right PIN was typed after wrong ones: the failures in a row are over, the person's and the kiosk's.</summary>
public sealed record PinPassed(Code<Technician> Person, string Kiosk) : Entry;
