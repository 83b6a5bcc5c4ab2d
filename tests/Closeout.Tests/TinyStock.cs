using System.Globalization;
using Closeout.Facts;

namespace Closeout.Tests;

/// <summary>Reads stock as one writes it on a slip: <c>shelf: 3 LAMP; bin: 7 LAMP; B1: 2+5 LAMP, 0+4 WRAP</c>.</summary>
public static class TinyStock
{
    /// <summary>Cartons on the shelf, loose units in the bin, cartons+loose in a van. The supplier stands against it all.</summary>
    public static IReadOnlyList<Balance> Read(Setup setup, string text)
    {
        var balances = text
            .Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .SelectMany(place => Lines(setup, place))
            .Where(b => b.Units != 0)
            .ToList();
        return [.. balances, .. balances.GroupBy(b => b.Item).Select(g => new Balance(Place.Supplier, g.Key, -g.Sum(b => b.Units)))];
    }

    private static IEnumerable<Balance> Lines(Setup setup, string text)
    {
        var (place, lines) = (text[..text.IndexOf(':')], text[(text.IndexOf(':') + 1)..]);
        foreach (var line in lines.Split(','))
        {
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var item = setup.Item(new Code<Item>(words[1]));
            var numbers = words[0].Split('+').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToList();
            switch (place)
            {
                case "shelf":
                    yield return new(Place.Shelf, item.Code, numbers[0] * item.UnitsPerCarton);
                    break;
                case "bin":
                    yield return new(Place.Bin, item.Code, numbers[0]);
                    break;
                default:
                    yield return new(Place.Sealed(new(place)), item.Code, numbers[0] * item.UnitsPerCarton);
                    yield return new(Place.Loose(new(place)), item.Code, numbers[1]);
                    break;
            }
        }
    }
}
