using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Screens;

/// <summary>The stock desk: a delivery, a corrected count, or a lead's change of the plan.</summary>
public static class DeskView
{
    public static void Draw(Sheet sheet, Depot depot, RestockPlan plan, DeskScreen s)
    {
        View.Head(sheet, depot, Title(s.Task), s.Task == DeskTask.Change ? View.Day(plan.Date) : "");
        var row = 2;
        foreach (var line in About(depot, plan, s).SelectMany(a => Sheet.Wrap(a, sheet.Width - 4)))
        {
            sheet.Write(row++, 2, line);
        }

        FormView.Draw(sheet, row + 1, 2, s.Form, 0, s.Form.Fields.Count, 24, sheet.Width - 2);
        View.Keys(sheet, s.Task is not (DeskTask.Delivery or DeskTask.Correction)
            ? "Enter next, and record at the last   Up back   F1 help   Esc leave it"
            : $"Enter next, record at the last   F5 {(s.Task == DeskTask.Delivery ? "correct a count" : "a delivery")}   F1 help   Esc leave");
    }

    private static string Title(DeskTask task) => task switch
    {
        DeskTask.Change => "CHANGE THE PLAN",
        DeskTask.Delivery => "A DELIVERY",
        DeskTask.Correction => "CORRECT A COUNT",
        DeskTask.Lift => "LIFT A HOLD",
        DeskTask.Hold => "HOLD A VAN",
        DeskTask.Close => "CLOSE AN INCIDENT",
        DeskTask.WriteOff => "WRITE BOXES OFF",
        DeskTask.DepotBoxes => "BOXES OPENED HERE",
        DeskTask.Pickup => "THE HAULER CAME",
        DeskTask.Ship => "SHIP A COLLECTING BOX",
        DeskTask.ResetPin => "RESET A PIN",
        DeskTask.IssuePin => "ISSUE A PIN",
        >= DeskTask.Check => LeadForms.Title(task),
        _ => throw new InvalidOperationException($"no title for {task}"),
    };

    private static IEnumerable<string> About(Depot depot, RestockPlan plan, DeskScreen s)
    {
        if (s.Task == DeskTask.Change)
        {
            var (van, what) = (depot.Setup.Find(new Code<Van>(s.Form["van"].Text)), depot.Setup.Find(new Code<Item>(s.Form["item"].Text)));
            yield return $"{van?.Name ?? "no such van yet"}, {what?.Description ?? "no such item yet"}";
            var line = plan.Lines.FirstOrDefault(l => l.Van == van && l.Item == what);
            yield return line is null ? "no line in the plan now" : $"aboard {line.Aboard}, target {line.Target.Units} ({Target.Words(line.Target.Basis)}), carries {line.Low} to {line.High}, need {line.Need}";
            yield return "T set the target   M so many more, once   X exclude the van   W withdraw what was changed";
            yield return "An empty date is the plan's own. A change stands until you withdraw it, however often the plan is made anew.";
            yield break;
        }

        if (s.Task is not (DeskTask.Delivery or DeskTask.Correction))
        {
            foreach (var line in s.Person is not null ? PeopleKeys.About(depot, s) : s.Task >= DeskTask.Check ? LeadForms.About(depot, s) : YardText.About(depot, s))
            {
                yield return line;
            }

            yield break;
        }

        var field = s.Form["item"].Text;
        if (!Code<Item>.IsValid(field) || depot.Setup.Find(new Code<Item>(field)) is not { } item)
        {
            yield return s.Task == DeskTask.Delivery
                ? "What came from a supplier, item by item: its code as on the carton label."
                : "Where: shelf (sealed cartons), bin (loose units), or a van's code (either). One count at a time, the other stays empty. The book follows your count, and the difference stays visible.";
            yield break;
        }

        var order = depot.Orders.Where(o => o.Item == item.Code).Sum(o => o.Cartons);
        yield return item.Description;
        yield return $"shelf {View.Count(depot.Ledger.Units(Place.Shelf, item.Code) / item.UnitsPerCarton, "carton", "cartons")} of {item.UnitsPerCarton}, bin {depot.Ledger.Units(Place.Bin, item.Code)}, on order {View.Count(order, "carton", "cartons")}";
    }
}
