using System.Globalization;
using Closeout.DayBook;
using LiteDB;

namespace Closeout.Store;

/// <summary>How entries stand in the archive. What changes here changes the archive's shape: see <see cref="ArchiveState"/>.</summary>
internal static class ArchiveDocuments
{
    public static BsonDocument Of(DateOnly date, Recorded e) => new()
    {
        ["_id"] = e.Number,
        ["date"] = ArchiveRows.Day(date),
        ["at"] = e.At.ToString("O", CultureInfo.InvariantCulture),
        ["kind"] = EntryCodec.KindOf(e.Entry).Name,
        ["van"] = e.Entry switch
        {
            VanEntry v => v.Van.Text,
            VanLoaded l => l.Van.Text,
            PlanOverridden p => p.Van.Text,
            HoldsLifted h => h.Van.Text,
            HoldPlaced h => h.Van.Text,
            IncidentClosed c => c.Van.Text,
            VanExplained x => x.Van.Text,
            BookingsMoved m => m.From.Text,
            BoxesWrittenOff { Van: { } van } => van.Text,
            CountCorrected { Place.Van.Text: { } van } => van,
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
            HoldPlaced h => h.Lead.Text,
            IncidentClosed c => c.Lead.Text,
            DamageFound d => d.By.Text,
            DepotBoxesCounted d => d.By.Text,
            BoxesWrittenOff w => w.Lead.Text,
            ContainerEmptied c => c.By.Text,
            CollectingBoxShipped c => c.By.Text,
            CloseoutChecked c => c.Lead.Text,
            CloseoutReopened c => c.Lead.Text,
            SignedFor s => s.Lead.Text,
            VanExplained x => x.Lead.Text,
            BookingsMoved m => m.Lead.Text,
            PageOpened { EndedBy: { } by } => by.Text,
            PinSet p => p.Person.Text,
            PinReset p => p.Person.Text,
            PinFailed p => p.Person.Text,
            PinPassed p => p.Person.Text,
            _ => null,
        },
    };
}
