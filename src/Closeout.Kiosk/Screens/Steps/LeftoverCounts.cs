using Closeout.Restock;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens.Steps;

/// <summary>The count of one item: which item, what is in its fields, how it is drawn.</summary>
internal static class LeftoverCounts
{
    /// <summary>Whether the item is to be counted without seeing the book's figure, and nobody did yet.</summary>
    public static bool IsBlind(Shift shift, Code<Item> item) => shift.SpotItems.Contains(item) && !shift.Counts.ContainsKey(item);

    /// <summary>
    /// The item to ask next, of those that nobody counted, in stow order: first the blind ones, then what visits used, then the rest. Null:
    /// all are counted.
    /// </summary>
    public static Code<Item>? Next(Depot depot, Shift shift, Code<Item>? after = null)
    {
        var items = Leftovers.ToCount(depot, shift).Select(i => i.Code).ToList();
        var start = after is { } a && !IsFirst(a) ? items.IndexOf(a) + 1 : 0;
        var open = items.Skip(start).Concat(items.Take(start)).Where(i => !shift.Counts.ContainsKey(i)).Cast<Code<Item>?>().ToList();
        return items.Where(i => !shift.Counts.ContainsKey(i)).OrderBy(i => shift.SpotItems.Contains(i) ? 0 : 1).Cast<Code<Item>?>()
            .FirstOrDefault(i => IsFirst(i!.Value)) ?? open.FirstOrDefault();

        bool IsFirst(Code<Item> item) => shift.SpotItems.Contains(item) || depot.Reported(shift.Van, item) > 0;
    }

    /// <summary>The first item that must not be passed by: counted blind tonight, or used as visits report; null: none is left.</summary>
    public static Code<Item>? Unseen(Depot depot, Shift shift) => Leftovers.ToCount(depot, shift)
        .Concat(depot.Setup.Items.Where(i => !shift.Before.ContainsKey(i.Code)))
        .Where(i => !shift.Counts.ContainsKey(i.Code) && (shift.SpotItems.Contains(i.Code) || depot.Reported(shift.Van, i.Code) > 0))
        .Select(i => (Code<Item>?)i.Code)
        .FirstOrDefault();

    /// <summary>
    /// The fields of a count. Of a blind one first those that must be typed: the loose units, and the sealed cartons where the record has
    /// any.
    /// </summary>
    public static Form Fields(Depot depot, Shift shift, Code<Item> item)
    {
        if (!IsBlind(shift, item))
        {
            return Refill(depot, shift, item, Form.Of(
                new Field("sealed", T("Still sealed"), FieldKind.Count, "", T("cartons")),
                new Field("bin", T("Loose into the bin"), FieldKind.Count, "", T("units")),
                new Field("kept", T("Loose kept aboard"), FieldKind.Count, "", T("units"))));
        }

        var kept = new Field("kept", T("Loose, stay aboard"), FieldKind.Count, "", T("units"));
        var bin = new Field("bin", T("Loose into the bin"), FieldKind.Count, "", T("units, if any"));
        return NeedsSealed(depot, shift, item)
            ? Form.Of(new Field("sealed", T("Sealed, on the van"), FieldKind.Count, "", T("cartons")), kept, bin)
            : Form.Of(kept, bin, new Field("sealed", T("Sealed, on the van"), FieldKind.Count, "", T("cartons, if any")));
    }

    /// <summary>Whether a blind count must say the sealed cartons: one number suffices where the record has none.</summary>
    public static bool NeedsSealed(Depot depot, Shift shift, Code<Item> item) =>
        Leftovers.BeforeOf(shift, depot.Setup.Item(item)).Sealed > 0;

    /// <summary>Whether a blind count has all that it must say.</summary>
    public static bool IsTold(Depot depot, Shift shift, Code<Item> item, Form form) =>
        form["kept"].Text.Length > 0 && (form["sealed"].Text.Length > 0 || !NeedsSealed(depot, shift, item));

    /// <summary>
    /// The fields of a count, the ones not typed filled with what follows from the others. Of what is loose, as far as it is known, so much
    /// goes to the bin as tomorrow will hardly need: there every van can have it, and the rest is not carried to and fro.
    /// </summary>
    public static Form Refill(Depot depot, Shift shift, Code<Item> code, Form form)
    {
        var item = depot.Setup.Item(code);
        var before = Leftovers.BeforeOf(shift, item);
        var reported = depot.Reported(shift.Van, code);
        var left = before.Units(item.UnitsPerCarton) - (reported ?? 0);
        var (boxed, bin, kept) = (form["sealed"], form["bin"], form["kept"]);
        var counted = shift.Counts.TryGetValue(code, out var count) && form.IsUntouched ? count.Count : (LeftoverCount?)null;

        var nowSealed = boxed.TypedWhole ?? counted?.Sealed
            ?? (reported is > 0 ? Math.Clamp(left / item.UnitsPerCarton, 0, before.Sealed) : before.Sealed);
        var loose = reported is > 0 ? Math.Max(0, left - nowSealed * item.UnitsPerCarton)
            : nowSealed == before.Sealed ? Math.Max(0, before.Loose)
            : 0;
        var surplus = (kept.TypedWhole, reported) switch
        {
            ({ } stays, > 0) => Math.Max(0, loose - stays),
            ({ }, _) => 0,
            _ => ReturnBand.ToBin(depot, shift.Van, item, nowSealed * item.UnitsPerCarton + loose, loose),
        };
        var nowBin = bin.TypedWhole ?? counted?.Bin ?? surplus;
        var nowKept = kept.TypedWhole ?? counted?.Kept ?? Math.Max(0, loose - nowBin);
        return form.Shown("sealed", nowSealed).Shown("bin", nowBin).Shown("kept", nowKept);
    }

    public static void Draw(Sheet sheet, Depot depot, Shift shift, Item item, Form form, Func<Sheet, int, string, int> say)
    {
        const int columns = StepPage.Columns;
        var (c, before) = (item.UnitsPerCarton, Leftovers.BeforeOf(shift, item));
        sheet.Write(3, 1, item.Stow.Length > 0 ? item.Stow : T("anywhere in the van"), Look.Faint, columns);
        sheet.Write(4, 1, Cells.Middle(item.Description, columns), Look.Strong);
        sheet.Write(5, 1, T($"{item.Code}, {c} a carton"), Look.Plain, columns);
        FormView.Draw(sheet, 9, 1, form, 0, 3, 21);
        if (IsBlind(shift, item.Code))
        {
            say(sheet, 7, T("A spot count: type what you see."));
            say(sheet, 13, T("Enter records it; Down for more. The record is not shown; it stands on the card afterwards."));
            return;
        }

        sheet.Write(7, 1,
            T($"This morning {Spell.Count(before.Sealed, T("carton"), T("cartons"))} and {before.Loose} loose: {before.Units(c)} units"),
            Look.Plain,
            columns);
        var count = new LeftoverCount(form["sealed"].Whole ?? 0, form["bin"].Whole ?? 0, form["kept"].Whole ?? 0);
        var (used, reported) = (Counting.Used(before, count, c), depot.Reported(shift.Van, item.Code));
        var gap = Counting.Gap(used, reported);
        var says = reported is { } r ? T($", visits say {r}{(gap == 0 ? T(": agrees") : "")}") : "";
        sheet.Write(13, 1, (used < 0 ? T($"{-used} more than on record") : T($"{used} used")) + says, Look.Plain, columns);
        if (gap != 0)
        {
            sheet.Write(
                14, 1, T($"GAP {gap}: {(gap > 0 ? T("missing in the count") : T("more than on record"))}"), Look.Strong, columns);
        }

        var emptied = Counting.Emptied(before, count);
        sheet.Write(15, 1,
            emptied == 0 ? T("no carton emptied") : T($"{Spell.Count(emptied, T("carton"), T("cartons"))} emptied: flatten {emptied}"),
            Look.Plain, columns);
    }

    /// <summary>What an entry of the step adds to the tally; null: it is not one of it.</summary>
    public static IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry)
    {
        switch (entry)
        {
            case LeftoverCounted e:
                var kept = e.Count.Kept > 0 && e.Used != 0 ? T($", {e.Count.Kept} kept") : "";
                var used = e.Used < 0 ? T($"{-e.Used} above the record") : T($"{e.Used} used");
                var told = e.Used == 0 && e.Count.Bin == 0 ? T("unchanged") : T($"{used}, {e.Count.Bin} to the bin{kept}");
                var gap = e.Installed is { } said ? T($"GAP {e.Gap}: visits say {said}") : T($"GAP {e.Gap}");
                return [(0, depot.Setup.Item(e.Item).Description), (2, told), .. e.Gap == 0 ? [] : new[] { (2, gap) }];
            case LeftoversConfirmed:
                var rest = Leftovers.ToCount(depot, shift).Count(i => !shift.Counts.ContainsKey(i.Code));
                return rest > 0 ? [(0, T($"{Spell.Count(rest, T("item"), T("items"))} unchanged"))] : [];
            default:
                return null;
        }
    }

    /// <summary>The step before the signature, with what was counted blind.</summary>
    public static IEnumerable<string> Summary(Depot depot, Shift shift)
    {
        var (counts, items) = (shift.Counts.Values.ToList(), Leftovers.ToCount(depot, shift).Count);
        var used = counts.Sum(c => Math.Max(0, c.Used));
        yield return counts.Count == items
            ? T($"Leftovers   all counted; {used} used, {counts.Sum(c => c.Count.Bin)} to the bin")
            : T($"Leftovers   {counts.Count} of {Spell.Count(items, T("item"), T("items"))} counted, the rest unchanged; "
                + $"{used} used, {counts.Sum(c => c.Count.Bin)} to the bin");
        var spots = shift.SpotItems.Where(shift.Counts.ContainsKey)
            .Select(i => $"{i} {Units(shift.Counts[i].Count, depot.Setup.Item(i).UnitsPerCarton)}").ToList();
        if (spots.Count > 0)
            yield return T($"Spot counts {string.Join(", ", spots)}");

        var unseen = depot.Setup.Items.Where(i => !shift.Counts.ContainsKey(i.Code) && depot.Reported(shift.Van, i.Code) > 0)
            .Select(i => $"{i.Code} {depot.Reported(shift.Van, i.Code)}").ToList();
        if (unseen.Count > 0)
            yield return T($"NOT COUNTED though visits used it: {string.Join(", ", unseen)}");

        foreach (var gap in Readiness.Gaps(shift))
            yield return T($"GAP         {gap.Gap} of {depot.Setup.Item(gap.Item).Description}");
    }

    private static int Units(LeftoverCount count, int c) => count.Sealed * c + count.Bin + count.Kept;
}
