namespace Closeout.Restock;

/// <summary>A proposal to move stock of an item that is short, from a van that can better do without it. People decide.</summary>
/// <param name="To">Null: back to the depot.</param>
/// <param name="Cartons">Sealed cartons.</param>
/// <param name="Loose">Loose units, those out of opened cartons among them.</param>
/// <param name="Opened">Cartons of the van to be opened for it.</param>
/// <param name="MissedFrom">The chance that the van misses a unit once it gave this up.</param>
/// <param name="MissedTo">The chance that the other van misses a unit without it; of the depot 0.</param>
public sealed record MoveProposal(
    Item Item, RestockLine From, RestockLine? To, int Cartons, int Loose, int Opened, double MissedFrom, double MissedTo)
{
    public int Units => Cartons * Item.UnitsPerCarton + Loose;

    /// <summary>Whether a van that it is about is not closed yet, so that nobody counted.</summary>
    public bool Provisional => From.Provisional || To is { Provisional: true };
}

/// <summary>What to move between vans where an item is short tonight: first what is above a target, then what is missed least.</summary>
public static class MoveProposals
{
    /// <param name="wants">Of every van, in bay order, with what is in it.</param>
    /// <param name="supply">Units at the depot: the bin and all cartons on the shelf.</param>
    /// <param name="isShort">Units short after the plan, above 0.</param>
    public static IEnumerable<MoveProposal> Of(Item item, IReadOnlyList<(RestockLine Want, Holding Aboard)> wants, long supply, int isShort)
    {
        var vans = wants.Select(w => new Stocked(w.Want, w.Aboard, item.UnitsPerCarton)).ToList();
        foreach (var van in vans.OrderByDescending(v => v.SpareCartons).Where(v => v.SpareCartons > 0).ToList())
        {
            var cartons = Math.Min(van.SpareCartons, (isShort + item.UnitsPerCarton - 1) / item.UnitsPerCarton);
            if (cartons <= 0)
                break;

            (isShort, supply) = (isShort - cartons * item.UnitsPerCarton, supply + cartons * item.UnitsPerCarton);
            van.Sealed -= cartons;
            yield return new(item, van.Want, null, cartons, 0, 0, van.Want.ChanceAbove(van.Units), 0);
        }

        if (isShort > 0)
        {
            foreach (var move in Shared(item, vans, supply))
                yield return move;
        }
    }

    /// <summary>
    /// All units, of the depot and of the vans, each to the van that is likeliest to miss it (marginal allocation, as in
    /// <see cref="Sharing"/>); who has more than that gives the rest up to those who have less, as far as the depot cannot.
    /// </summary>
    private static IEnumerable<MoveProposal> Shared(Item item, List<Stocked> vans, long supply)
    {
        var fair = Sharing.ByChance([.. vans.Select(v => v.Claim)], supply + vans.Sum(v => (long)v.Units));
        var lacks = vans.Select((v, i) => Math.Max(0, fair[i] - v.Units)).ToArray();
        var needed = lacks.Sum(l => (long)l) - supply;
        foreach (var (from, giver) in vans.Index())
        {
            var spare = (int)Math.Min(Math.Max(0, giver.Units - fair[from]), needed);
            while (spare > 0)
            {
                var to = Enumerable.Range(0, vans.Count).Where(v => lacks[v] > 0).MaxBy(v => vans[v].Want.ChanceAbove(vans[v].Units));
                var units = Math.Min(spare, lacks[to]);
                var missed = vans[to].Want.ChanceAbove(vans[to].Units);
                var (cartons, loose, opened) = giver.Give(units);
                vans[to].Loose += units;
                (spare, needed, lacks[to]) = (spare - units, needed - units, lacks[to] - units);
                yield return new(
                    item, giver.Want, vans[to].Want, cartons, loose, opened, giver.Want.ChanceAbove(giver.Units), missed);
            }
        }
    }

    /// <summary>A van with what it has of the item, while proposals are made.</summary>
    private sealed class Stocked(RestockLine want, Holding aboard, int unitsPerCarton)
    {
        public RestockLine Want => want;

        public int Sealed { get; set; } = aboard.Sealed;

        public int Loose { get; set; } = aboard.Loose;

        public int Units => Sealed * unitsPerCarton + Loose;

        /// <summary>Sealed cartons that it has above its target.</summary>
        public int SpareCartons => Math.Clamp((Units - Want.Target.Units) / unitsPerCarton, 0, Math.Max(0, Sealed));

        /// <summary>Up to its target. A van that was left out of the plan misses nothing: it keeps what nobody else lacks.</summary>
        public Claim Claim => Want.IsExcluded
            ? new(Math.Min(Want.Target.Units, Units), 0, _ => 0)
            : new(Want.Target.Units, 0, Want.ChanceAbove);

        /// <summary>Takes units out: loose ones first, then cartons, at last out of an opened one.</summary>
        public (int Cartons, int Loose, int Opened) Give(int units)
        {
            var loose = Math.Min(Loose, units);
            var cartons = (units - loose) / unitsPerCarton;
            var rest = units - loose - cartons * unitsPerCarton;
            var opened = rest > 0 ? 1 : 0;
            (Sealed, Loose) = (Sealed - cartons - opened, Loose - loose + opened * unitsPerCarton - rest);
            return (cartons, loose + rest, opened);
        }
    }
}
