namespace Closeout.DayBook;

/// <summary>
/// Whom an entry concerns: the van it is of, and who says it. The day book's lines, audit.csv and the archive all ask here.
/// </summary>
/// <param name="Van">Null: of no van.</param>
/// <param name="Person">Null: nobody named himself.</param>
public readonly record struct Concerned(Code<Van>? Van, Code<Technician>? Person)
{
    /// <summary>All entries of a page, from its first on, and whom each concerns.</summary>
    public static IEnumerable<(Recorded Recorded, Concerned Concerned)> Of(IEnumerable<Recorded> page)
    {
        var inCharge = new Dictionary<Code<Van>, Code<Technician>>();
        foreach (var recorded in page)
        {
            if (recorded.Entry is VanCameIn came)
                inCharge[came.Van] = came.Technician;

            // A close-out's answers are those of whoever brought the van in.
            var names = recorded.Entry.Names;
            Code<Technician>? answers = recorded.Entry is VanEntry answer && inCharge.TryGetValue(answer.Van, out var who) ? who : null;
            yield return (recorded, new(names.Van, names.By ?? answers));
        }
    }
}
