using System.Globalization;
using Closeout.Restock;

namespace Closeout.Words;

/// <summary>What was learned beside the promises, a word and a sentence each: bookings, suppliers, the work of the evenings.</summary>
public static class AccuracyWords
{
    public static IEnumerable<(string Word, string Sentence)> Of(Tonight t)
    {
        var learned = t.Plan.Learned;
        foreach (var kind in learned.Kept.Kinds)
        {
            var kept = learned.Kept.Of(kind);
            yield return (T("Bookings"), T($"{kind}: {kept.Made} of {kept.Booked} booked were made, {kept.Beyond} more came on "
                + $"{Spell.Count(kept.VanDays, T("van-day"), T("van-days"))}"));
        }

        foreach (var (supplier, record) in learned.Suppliers.All)
        {
            yield return (T("Supplier"), $"{supplier?.Text ?? T("the depot's")}: "
                + T($"{record.LateOnes} of {Spell.Count(record.Delays.Count, T("delivery"), T("deliveries"))} late, "
                    + $"{Number(record.Delays.Average())} working days each; the first brings {Why.Percent(record.Fill)}"));
        }

        var evenings = Handling.Of(t.Depot);
        if (evenings.Count > 0)
        {
            yield return (T("Work"), T($"an evening {Number(evenings.Average(h => h.Lines))} lines, "
                + $"{Number(evenings.Average(h => h.Cartons))} cartons, {Number(evenings.Average(h => h.Loose))} loose units, "
                + $"{Number(evenings.Average(h => h.Shuffled))} of them returned and loaded into the same van again"));
        }

        if (Accuracy.Sums(t.Depot).Sum(s => s.Unpromised) is > 0 and var unpromised)
            yield return (T("Missed"), T($"{unpromised} of the missed units were of items without a promise for that van"));
    }

    private static string Number(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
