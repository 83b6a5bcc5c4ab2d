namespace Closeout.Shifts.Steps;

/// <summary>Sign the close-out.</summary>
public sealed record Sign(Code<Van> Van, Code<Technician> Technician) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.SignOff;

    protected override Decision Decide(Depot depot, Shift shift) => depot.Setup.Find(Technician) is { } signer
        ? new Signed(shift.Van, signer.Code, depot.Rehearsal ? Proof.Rehearsal : Proof.Pin)
        : Refusal.NoSuchTechnician(Technician) with { About = "technician" };
}

/// <summary>Put a picture beside the close-out, at any step. Its file is in the book already.</summary>
public sealed record AttachPhoto(Code<Van> Van, string Sha256, string Name, long Bytes) : CloseoutCommand(Van)
{
    public override Step? Step => null;

    protected override Decision Decide(Depot depot, Shift shift) =>
        shift.Photos.Count >= Refusal.MostPhotos ? Refusal.TooManyPhotos(depot.Setup.Van(shift.Van), shift.Photos.Count)
        : shift.Photos.Any(p => p.Sha256 == Sha256) ? Refusal.PhotoIsThere(Name)
        : new PhotoAttached(shift.Van, Sha256, Name, Bytes);
}
