using System.Globalization;
using Closeout.Cardboard;
using Closeout.DayBook;
using LiteDB;

namespace Closeout.Store;

/// <summary>How entries and boxes stand in the archive. What changes here changes the archive's shape: see <see cref="ArchiveState"/>.</summary>
internal static class ArchiveDocuments
{
    public static BsonDocument Of(DateOnly date, Recorded e) => new()
    {
        ["_id"] = e.Number,
        ["date"] = Day(date),
        ["at"] = e.At.ToString("O", CultureInfo.InvariantCulture),
        ["kind"] = EntryCodec.KindOf(e.Entry).Name,
        ["van"] = e.Entry switch
        {
            VanEntry v => v.Van.Text,
            VanLoaded l => l.Van.Text,
            PlanOverridden p => p.Van.Text,
            HoldsLifted h => h.Van.Text,
            _ => null,
        },
        ["person"] = e.Entry switch
        {
            VanCameIn c => c.Technician.Text,
            MileageLogged m => m.Technician.Text,
            Signed s => s.Technician.Text,
            PlanOverridden p => p.Lead.Text,
            OverrideWithdrawn w => w.Lead.Text,
            VanLoaded { By: { } by } => by.Text,
            DeliveryReceived d => d.By.Text,
            CountCorrected c => c.By.Text,
            HoldsLifted h => h.Lead.Text,
            _ => null,
        },
    };

    public static BsonDocument Of(DateOnly date, BoxRow row) => new()
    {
        ["_id"] = $"{Day(date)} {row.Van} {row.Item}",
        ["date"] = Day(date),
        ["van"] = row.Van.Text,
        ["item"] = row.Item.Text,
        ["expected"] = row.Expected,
        ["flattened"] = row.Flattened,
        ["weight_lb"] = row.WeightLb,
    };

    /// <summary>A date as yyyymmdd: an index over numbers is small and sorts by time.</summary>
    public static int Day(DateOnly date) => date.Year * 10_000 + date.Month * 100 + date.Day;

    public static DateOnly Date(int day) => new(day / 10_000, day / 100 % 100, day % 100);
}
