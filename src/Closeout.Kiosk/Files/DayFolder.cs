using Closeout.Turning;

namespace Closeout.Files;

/// <summary>A day folder as read: what it gives the book, the evening's answers, and what was found on the way.</summary>
/// <param name="Given">Null when there was any fault.</param>
/// <param name="Evening">The answers of evening.csv, in order; empty when there is none.</param>
public sealed record DayFolder(DayGiven? Given, IReadOnlyList<EveningRow> Evening, Findings Findings)
{
    /// <summary>Reads all files of the folder, and tells all faults of all of them.</summary>
    /// <param name="steps">The steps of a close-out, for evening.csv.</param>
    /// <param name="told">Is told now and then how far reading is.</param>
    public static DayFolder Read(string folder, IReadOnlyList<EveningStep> steps, Action<ReadSoFar>? told = null)
    {
        var findings = new Findings(told);
        var depot = DepotFile.Read(folder, findings);
        var boards = BoardsFile.Read(folder, findings);
        var (items, itemCodes) = ItemsFile.Read(folder, boards, findings);
        var (vans, vanCodes) = VansFile.Read(folder, findings);
        var limits = VanLimitsFile.Read(folder, vanCodes, itemCodes, findings);
        var (kit, kitCodes) = KitFile.Read(folder, findings);
        var vanKit = VanKitFile.Read(folder, vanCodes, kitCodes, findings);
        var (questions, answers) = HandoverFile.Read(folder, findings);
        var (crew, crewCodes) = CrewFile.Read(folder, vanCodes, findings);
        var replaced = ReplacedItems.Of(items);
        var (rates, kinds) = VisitsFile.Read(folder, itemCodes, replaced, findings);
        var stock = StockFile.Read(folder, vanCodes, items, itemCodes, findings);
        var usage = UsageFile.Read(folder, vanCodes, itemCodes.With(replaced), kinds, depot?.BusinessDate, findings);
        var bookings = BookingsFile.Read(folder, vanCodes, kinds, findings);
        var orders = OrdersFile.Read(folder, itemCodes, findings);
        var pastCodes = itemCodes.With(replaced.Where(r => itemCodes.Find(r.Old) is null));
        var past = PastFile.Read(folder, depot?.BusinessDate, vanCodes, pastCodes, kitCodes, findings);
        var evening = EveningFile.Read(folder, steps, new(vanCodes, crewCodes, itemCodes, kitCodes) { Handover = answers }, findings);
        if (findings.AreFaults || depot is null)
            return new(null, [], findings);

        var setup = new Setup(depot.Settings, items, [.. vans.OrderBy(v => v.Bay)], limits, kit, vanKit, crew, rates, boards,
            questions.Count > 0 ? questions : null);
        return new(
            new(
                depot.BusinessDate, setup, stock, new([.. bookings.Select(b => b.Date).Distinct().Order()], bookings),
                new(usage.Dates, usage.Use, usage.ByVan, usage.Reported, usage.Made), orders, past),
            evening,
            findings);
    }
}
