using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>The question itself, in the left part of the close-out.</summary>
public static class QuestionView
{
    private const int Columns = CloseoutView.QuestionColumns;

    public static void Draw(Sheet sheet, Depot depot, Shift shift, CloseoutScreen s)
    {
        switch (s.At)
        {
            case var _ when s.IsReport:
                Report(sheet, s.Form);
                break;
            case Step.Leftovers when s.Find is not null:
                Find(sheet, depot, s.Find);
                break;
            case Step.Leftovers when s.Item is { } item:
                Count(sheet, depot, shift, depot.Setup.Item(item), s.Form);
                break;
            case Step.Leftovers:
                Say(sheet, 3, "Every item is counted. Enter to go on to the cardboard.");
                break;
            case Step.Cardboard when s.Form.Fields.Count == 0:
                Say(sheet, 3, "No carton was emptied: no box to flatten. Enter to go on.");
                break;
            case Step.Cardboard:
                var more = Say(sheet, 3, depot.Setup.Depot.Streams.Count == 0
                    ? "Flatten these boxes and count them. A box that is not there stays missing until it is found."
                    : "Flatten the boxes, count them, and what else came home: Enter below the boxes says nothing did.");
                List(sheet, more + 1, s.Form, 26);
                break;
            case Step.Mileage:
                Mileage(sheet, depot, shift, s.Form);
                break;
            case Step.Damage:
                Damage(sheet, shift, s.Form);
                break;
            case Step.Kit:
                var below = Say(sheet, 3, "Is the safety kit there, and in date? A piece marked must holds the van when it is missing.");
                List(sheet, below + 1, s.Form, 24);
                break;
            case Step.Weekly:
                Weekly(sheet, depot, shift, s.Form);
                break;
            case Step.SignOff or Step.Closed:
                Summary(sheet, depot, shift, s);
                break;
            default:
                throw new InvalidOperationException($"no question at {s.At}");
        }
    }

    private static void Count(Sheet sheet, Depot depot, Shift shift, Item item, Form form)
    {
        var c = item.UnitsPerCarton;
        var before = Leftovers.BeforeOf(depot, shift, item);
        sheet.Write(3, 1, item.Stow.Length > 0 ? item.Stow : "anywhere in the van", Look.Faint, Columns);
        sheet.Write(4, 1, item.Description, Look.Strong, Columns);
        sheet.Write(5, 1, $"{item.Code}, {c} a carton", Look.Plain, Columns);
        if (Questions.IsBlind(shift, item.Code))
        {
            Say(sheet, 7, "A spot count: type what you see.");
            FormView.Draw(sheet, 9, 1, form, 0, 3, 21);
            Say(sheet, 13, "The book's figure is not shown, so that your count is worth something. You see it on the card.");
            return;
        }

        sheet.Write(7, 1, $"This morning {View.Count(before.Sealed, "carton", "cartons")} and {before.Loose} loose: {before.Units(c)} units", Look.Plain, Columns);
        FormView.Draw(sheet, 9, 1, form, 0, 3, 21);

        var count = new LeftoverCount(Number(form["sealed"]), Number(form["bin"]), Number(form["kept"]));
        var used = Counting.Used(before, count, c);
        var reported = depot.Reported(shift.Van, item.Code);
        var gap = Counting.Gap(used, reported);
        var says = reported is { } r ? $", visits say {r}{(gap == 0 ? ": agrees" : "")}" : "";
        sheet.Write(13, 1, (used < 0 ? $"{-used} more than the book has" : $"{used} used") + says, Look.Plain, Columns);
        if (gap != 0)
        {
            sheet.Write(14, 1, $"GAP {gap}: {(gap > 0 ? "more in the book than counted" : "more counted than in the book")}", Look.Strong, Columns);
        }

        var emptied = Counting.Emptied(before, count);
        sheet.Write(15, 1, emptied == 0 ? "no carton emptied" : $"{View.Count(emptied, "carton", "cartons")} emptied: flatten {emptied}", Look.Plain, Columns);
    }

    private static void Find(Sheet sheet, Depot depot, string find)
    {
        sheet.Write(3, 1, "Find an item: a piece of its name, or scan it", Look.Plain, Columns);
        sheet.Write(5, 1, $"[{find.PadRight(24)}]", Look.Field);
        sheet.Caret = (5, 2 + Math.Min(23, find.Length));
        var row = 7;
        foreach (var item in Finding.Matches(depot, find).Take(Finding.MostListed))
        {
            sheet.Write(row, 1, $"{(row == 7 ? ">" : " ")} {item.Code}", Look.Plain, Columns);
            sheet.Write(row, 18, item.Description, Look.Plain, Columns - 17);
            row++;
        }

        if (row == 7)
        {
            sheet.Write(row, 1, "  nothing has that in its name or code", Look.Plain, Columns);
        }
    }

    private static void Mileage(Sheet sheet, Depot depot, Shift shift, Form form)
    {
        var units = depot.Setup.Units;
        sheet.Write(4, 1, $"This morning   {units.Distance(depot.Van(shift.Van).OdometerMi)}", Look.Plain, Columns);
        FormView.Draw(sheet, 6, 1, form, 0, form["fuel"].Text.Length > 0 ? 3 : 2, 17);
        var row = 10;
        if (DrivingHabit.Of(depot, shift.Van) is { } habit)
        {
            row = Say(sheet, row, $"Its usual day: {units.Distance(habit.MedianMi)}");
        }

        if (Service.NoteOf(depot, depot.Setup.Van(shift.Van), units) is { } service)
        {
            row = Say(sheet, row, service);
        }

        if (FuelEconomy.Of(depot, shift.Van) is { } economy)
        {
            Say(sheet, row, economy.Words(units));
        }
    }

    private static void Damage(Sheet sheet, Shift shift, Form form)
    {
        var row = Say(sheet, 3, "Walk once around the van. Any damage, new or not yet reported?");
        foreach (var damage in shift.Damages)
        {
            row = Say(sheet, row + 1, $"- {damage.Zone}, {Readiness.SeverityWords(damage.Severity)}: {damage.What}");
        }

        FormView.Draw(sheet, row + 2, 1, form, 0, 1, 12);
        Say(sheet, row + 4, shift.Damages.Count == 0
            ? "N none   D describe a damage"
            : "T that is all   D one more   N none after all: what you reported tonight is withdrawn");
    }

    /// <summary>A van seen from above, its parts numbered: our own drawing, nobody's van.</summary>
    private static readonly string[] Picture =
    [
        "           1 front",
        "        .----------.       3 left side",
        "       7|    6     |7      4 right side",
        "        |----------|       5 roof, rack",
        "        |          |       6 windscreen",
        "       3|  5   9   |4      7 lights, mirrors",
        "        |          |       8 tyres, wheels",
        "       8'----------'8      9 inside",
        "           2 rear",
    ];

    private static void Report(Sheet sheet, Form form)
    {
        foreach (var (row, line) in Picture.Index())
        {
            sheet.Write(2 + row, 1, line, Look.Plain, Columns);
        }

        FormView.Draw(sheet, 12, 1, form with { Fields = form.Fields.SetItem(1, form["severity"] with { After = "" }) }, 0, Answers.Severity(form) == Severity.Note ? 3 : 6, 15);
        sheet.Write(13, 22, "N note R repair U unsafe", Look.Faint, Columns - 21);
        sheet.Write(19, 1, Answers.Severity(form) switch
        {
            Severity.Note => "A note: it stands on the wall.",
            Severity.Unsafe => "Unsafe holds the van. Tell the lead now.",
            _ => "Not drivable holds the van. Who was told?",
        }, Look.Strong, Columns);
    }

    private static void Weekly(Sheet sheet, Depot depot, Shift shift, Form form)
    {
        var row = Say(sheet, 2, "The weekly walk-round. N describes what is not in order; = says the rest is.");
        var room = sheet.Height - 5 - row;
        FormView.Draw(sheet, row, 1, form, FormView.Top(form, room), room, 20);
    }

    private static void Summary(Sheet sheet, Depot depot, Shift shift, CloseoutScreen s)
    {
        var row = 3;
        foreach (var line in SummaryLines.Of(depot, shift))
        {
            row = Say(sheet, row, line);
        }

        if (depot.Rehearsal)
        {
            row = Say(sheet, row, s.At == Step.SignOff ? "REHEARSAL: no PIN is asked." : "REHEARSAL: signed without a PIN.");
        }

        if (s.At == Step.SignOff)
        {
            FormView.Draw(sheet, Math.Min(row + 1, sheet.Height - 6), 1, s.Form, 0, 1, 22);
        }
    }

    private static void List(Sheet sheet, int row, Form form, int labels)
    {
        var room = sheet.Height - 5 - row;
        FormView.Draw(sheet, row, 1, form, FormView.Top(form, room), room, labels);
    }

    private static int Say(Sheet sheet, int row, string sentence)
    {
        foreach (var line in Sheet.Wrap(sentence, Columns))
        {
            sheet.Write(row++, 1, line, Look.Plain, Columns);
        }

        return row;
    }

    private static int Number(Field field) => int.TryParse(field.Text, out var number) ? number : 0;
}
