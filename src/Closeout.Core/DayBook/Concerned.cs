using Closeout.Facts;

namespace Closeout.DayBook;

/// <summary>Whom an entry concerns: the van it is of, and who says it. The day book's lines, audit.csv and the archive all ask here.</summary>
/// <param name="Van">Null: of no van.</param>
/// <param name="Person">Null: nobody named himself. A wrong PIN is nobody's: it names whose it would have been, not who typed it.</param>
public readonly record struct Concerned(Code<Van>? Van, Code<Technician>? Person)
{
    /// <param name="inCharge">Who brought the van of an entry in; a close-out's answers are that person's.</param>
    public static Concerned By(Entry entry, Func<Code<Van>, Code<Technician>?> inCharge) => entry switch
    {
        PageOpened e => new(null, e.EndedBy),
        DayFolderLoaded or BookSalvaged or PinFailed => new(null, null),
        VanCameIn e => new(e.Van, e.Technician),
        MileageLogged e => new(e.Van, e.Technician),
        DamageFound e => new(e.Van, e.By),
        Signed e => new(e.Van, e.Technician),
        SignedFor e => new(e.Van, e.Lead),
        CloseoutChecked e => new(e.Van, e.Lead),
        CloseoutReopened e => new(e.Van, e.Lead),
        VanEntry e => new(e.Van, inCharge(e.Van)),
        VanExplained e => new(e.Van, e.Lead),
        BookingsMoved e => new(e.From, e.Lead),
        HoldsLifted e => new(e.Van, e.Lead),
        HoldPlaced e => new(e.Van, e.Lead),
        IncidentClosed e => new(e.Van, e.Lead),
        PlanOverridden e => new(e.Van, e.Lead),
        OverrideWithdrawn e => new(null, e.Lead),
        VanLoaded e => new(e.Van, e.By),
        DeliveryReceived e => new(null, e.By),
        CountCorrected e => new(e.Place.Van == default ? null : e.Place.Van, e.By),
        DepotBoxesCounted e => new(null, e.By),
        BoxesWrittenOff e => new(e.Van, e.Lead),
        ContainerEmptied e => new(null, e.By),
        CollectingBoxShipped e => new(null, e.By),
        PinSet e => new(null, e.Lead ?? e.Person),
        PinReset e => new(null, e.Lead),
        PinPassed e => new(null, e.Person),
        _ => throw new InvalidOperationException($"nobody says whom {entry.GetType().Name} concerns"),
    };

    /// <summary>All entries of a page, from its first on, and whom each concerns.</summary>
    public static IEnumerable<(Recorded Recorded, Concerned Concerned)> Of(IEnumerable<Recorded> page)
    {
        var inCharge = new Dictionary<Code<Van>, Code<Technician>>();
        foreach (var recorded in page)
        {
            if (recorded.Entry is VanCameIn came)
            {
                inCharge[came.Van] = came.Technician;
            }

            yield return (recorded, By(recorded.Entry, van => inCharge.TryGetValue(van, out var who) ? who : null));
        }
    }
}
