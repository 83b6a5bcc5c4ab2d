using System.Globalization;
using System.Text;

namespace Closeout.Bench.Plan;

/// <summary>
/// The day folder of a large invented depot, drawn with a fixed seed: 400 items, eight visit kinds of forty items each,
/// eight visits a van and working day over 60 calendar days, bookings for tomorrow, vans about half full, a bin with
/// leftovers, and one item in five short.
/// </summary>
public sealed class BigDay
{
    public const int Items = 400;
    private const int Kinds = 8;
    private const int VisitsADay = 8;

    /// <summary>So much that nothing is cut for weight: four hundred items are heavier than any van's stock.</summary>
    private const int PayloadLb = 9_000;
    private static readonly int[] CartonSizes = [1, 4, 6, 8, 12, 20, 24, 36, 48, 50, 100];
    private static readonly DateOnly Today = new(2026, 11, 18);

    private readonly Random random = new(20261118);
    private readonly int vans;
    private readonly int[] cartons = new int[Items];
    private readonly int[] low = new int[Items];
    private readonly int[] high = new int[Items];
    private readonly double[,] rate = new double[Kinds, Items];

    private BigDay(int vans)
    {
        this.vans = vans;
        for (var i = 0; i < Items; i++)
        {
            cartons[i] = CartonSizes[random.Next(CartonSizes.Length)];
            for (var k = 0; k < Kinds; k++)
            {
                rate[k, i] = random.Next(10) == 0 ? 0.2 + 2 * random.NextDouble() : 0;
            }

            low[i] = random.Next(3, 16);
            high[i] = low[i] * 4;
        }
    }

    /// <summary>Writes the folder. The same number of vans gives the same bytes.</summary>
    public static void Write(string folder, int vans)
    {
        Directory.CreateDirectory(folder);
        var day = new BigDay(vans);
        void File(string name, string header, IEnumerable<string> rows) =>
            System.IO.File.WriteAllText(Path.Combine(folder, name), string.Concat(rows.Prepend(header).Select(r => r + "\n")), new UTF8Encoding(false));
        File("depot.csv", "setting,value", ["depot,Large", "business_date,2026-11-18", "shift_end,16:30", "units,us", "container_cu_yd,40", "container_full_percent,85"]);
        File("items.csv", "item,description,priority,units_per_carton,unit_weight_lb,carton_length_in,carton_width_in,carton_depth_in,board,low,high,lead_days,review_days,min_order_cartons", day.ItemRows());
        File("vans.csv", "van,bay,name,payload_lb,fuel,odometer_mi,service_every_mi,service_every_months,last_service_mi,last_service_on", Enumerable.Range(1, vans).Select(v => Row($"V{v},{v},Van {v},{PayloadLb},regular,{20000 + v},5000,6,18000,2026-08-01")));
        File("kit.csv", "kit_item,description,required,critical,expires", ["CONES,Traffic cones,4,no,no"]);
        File("crew.csv", "technician,name,role,van,workdays", Enumerable.Range(1, vans).Select(v => Row($"T{v},Driver {v},technician,V{v},Mon Tue Wed Thu Fri")));
        File("visits.csv", "visit_kind,item,units_per_visit,weight_visits", day.RateRows());
        File("stock.csv", "place,item,cartons,loose", day.StockRows());
        File("usage.csv", "date,van,visit,visit_kind,item,units", day.UsageRows());
        File("bookings.csv", "date,van,visit_kind,visits", day.BookingRows());
        File("orders.csv", "item,cartons,due", Enumerable.Range(0, Items / 10).Select(i => Row($"{Code(i * 10)},5,2026-11-24")));
    }

    private IEnumerable<string> ItemRows() => Enumerable.Range(0, Items).Select(i =>
        Row($"{Code(i)},\"Item {i}, one of many\",{1 + i % 3},{cartons[i]},0.2,14,10,6,32ECT-C,{low[i]},{high[i]},{3 + i % 10},5,1"));

    private IEnumerable<string> RateRows() =>
        from k in Enumerable.Range(0, Kinds)
        from i in Enumerable.Range(0, Items)
        where rate[k, i] > 0
        select Row($"kind-{k},{Code(i)},{rate[k, i]:0.###},12");

    /// <summary>One item in five has a quarter of what the vans lack; of the others there is plenty.</summary>
    private IEnumerable<string> StockRows()
    {
        for (var i = 0; i < Items; i++)
        {
            var lacks = vans * low[i] * 0.6;
            var units = i % 5 == 0 ? lacks / 4 : lacks * 4;
            yield return Row($"shelf,{Code(i)},{Math.Min(10_000, (int)(units / cartons[i]) + 1)},0");
            yield return Row($"bin,{Code(i)},0,{random.Next(Math.Max(1, Math.Min(10_000, cartons[i] * vans / 20)))}");
            for (var v = 1; v <= vans; v++)
            {
                var aboard = random.Next(2 * low[i]);
                yield return Row($"V{v},{Code(i)},{aboard / cartons[i]},{aboard % cartons[i]}");
            }
        }
    }

    private IEnumerable<string> UsageRows()
    {
        for (var date = Today.AddDays(-59); date <= Today; date = date.AddDays(1))
        {
            for (var v = 1; v <= vans && date.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday); v++)
            {
                for (var visit = 1; visit <= VisitsADay; visit++)
                {
                    var kind = random.Next(Kinds);
                    var used = 0;
                    for (var i = 0; i < Items; i++)
                    {
                        // Lumpy: two visits in three do without the item, the third uses the more.
                        var units = rate[kind, i] > 0 && random.Next(3) == 0 ? (int)(rate[kind, i] * 6 * random.NextDouble() + 0.5) : 0;
                        if (units > 0)
                        {
                            used++;
                            yield return Row($"{date:yyyy-MM-dd},V{v},{visit},kind-{kind},{Code(i)},{units}");
                        }
                    }

                    if (used == 0)
                    {
                        yield return Row($"{date:yyyy-MM-dd},V{v},{visit},kind-{kind},,0");
                    }
                }
            }
        }
    }

    private IEnumerable<string> BookingRows()
    {
        for (var v = 1; v <= vans; v++)
        {
            foreach (var kind in Enumerable.Range(0, VisitsADay).Select(_ => random.Next(Kinds)).CountBy(k => k).OrderBy(k => k.Key))
            {
                yield return Row($"2026-11-19,V{v},kind-{kind.Key},{kind.Value}");
            }
        }
    }

    private static string Code(int item) => Row($"ITEM-{item:000}");

    private static string Row(FormattableString row) => row.ToString(CultureInfo.InvariantCulture);
}
