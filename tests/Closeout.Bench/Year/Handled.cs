namespace Closeout.Bench.Year;

/// <summary>What is carried in the evenings of the counted days.</summary>
public sealed class Handled
{
    /// <summary>Evenings within which it counts as having been carried for nothing.</summary>
    private const int Soon = 3;

    private readonly Queue<(int Day, int Units)>[,] returned;
    private readonly bool[,] touched;
    private int day;
    private (long Lines, long Cartons, long Loose, long Returned, long Again) sums;

    public Handled(int items)
    {
        (returned, touched) = (new Queue<(int, int)>[World.Vans, items], new bool[World.Vans, items]);
        for (var v = 0; v < World.Vans; v++)
        {
            for (var i = 0; i < items; i++)
                returned[v, i] = [];
        }
    }

    /// <summary>Items of a van that somebody had to go for, returns among them.</summary>
    public double Lines => PerVanEvening(sums.Lines);

    /// <summary>Sealed cartons carried, and those opened at the depot.</summary>
    public double Cartons => PerVanEvening(sums.Cartons);

    /// <summary>Loose units carried, either way.</summary>
    public double Loose => PerVanEvening(sums.Loose);

    /// <summary>Of them, those to the bin.</summary>
    public double Returned => PerVanEvening(sums.Returned);

    /// <summary>Units returned that go into the same van again within three evenings.</summary>
    public double Again => PerVanEvening(sums.Again);

    public void Begin(int evening)
    {
        day = evening;
        Array.Clear(touched);
    }

    public void Return(int v, int i, int units)
    {
        if (units == 0)
            return;

        Touch(v, i);
        returned[v, i].Enqueue((day, units));
        sums = sums with { Loose = sums.Loose + Counted(units), Returned = sums.Returned + Counted(units) };
    }

    /// <summary>From a van to another, or to the depot.</summary>
    public void Move(int from, int? to, int i, int cartons, int loose)
    {
        Touch(from, i);
        if (to is { } v)
            Touch(v, i);

        sums = sums with { Cartons = sums.Cartons + Counted(cartons), Loose = sums.Loose + Counted(loose) };
    }

    public void Load(int v, int i, int cartons, int loose, int unitsPerCarton)
    {
        if (cartons + loose == 0)
            return;

        Touch(v, i);
        sums = sums with { Cartons = sums.Cartons + Counted(cartons), Loose = sums.Loose + Counted(loose) };
        var (left, queue) = (cartons * unitsPerCarton + loose, returned[v, i]);
        while (left > 0 && queue.TryDequeue(out var back))
        {
            if (day - back.Day > Soon)
                continue;

            var again = Math.Min(left, back.Units);
            (left, sums) = (left - again, sums with { Again = sums.Again + Counted(again) });
            if (again < back.Units)
                returned[v, i] = new([(back.Day, back.Units - again), .. queue]);
        }
    }

    public void Open(int cartons) => sums = sums with { Cartons = sums.Cartons + Counted(cartons) };

    private void Touch(int v, int i)
    {
        sums = sums with { Lines = sums.Lines + Counted(touched[v, i] ? 0 : 1) };
        touched[v, i] = true;
    }

    private int Counted(int units) => day >= World.WarmUp ? units : 0;

    private static double PerVanEvening(long sum) => (double)sum / (World.Days - World.WarmUp) / World.Vans;
}
