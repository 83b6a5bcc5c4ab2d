using Closeout.Commands;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>The order of rows that have no order must not matter to the plan.</summary>
public sealed class ShuffledRowsTests
{
    private static readonly Lazy<string[]> Plain = new(() =>
    {
        using var temp = Day();
        return Plan(temp);
    });

    [Theory]
    [InlineData("items.csv")]
    [InlineData("usage.csv")]
    [InlineData("bookings.csv")]
    [InlineData("stock.csv")]
    [InlineData("visits.csv")]
    [InlineData("vans.csv")]
    [InlineData("van_limits.csv")]
    [InlineData("orders.csv")]
    [InlineData("past.csv")]
    [InlineData("van_kit.csv")]
    public void Shuffling_the_rows_of_a_file_changes_neither_restock_nor_shelf(string file)
    {
        using var temp = Day();
        for (var seed = 1; seed <= 3; seed++)
        {
            var lines = File.ReadAllLines(temp[file]);
            var rows = lines[1..];
            new Random(seed).Shuffle(rows);
            File.WriteAllLines(temp[file], rows.Prepend(lines[0]));

            Plan(temp).Should().Equal(Plain.Value, $"of {file} shuffled with seed {seed}");
        }
    }

    /// <summary>The sample day, to be changed.</summary>
    private static TempFolder Day()
    {
        var temp = new TempFolder();
        foreach (var source in Directory.GetFiles(Repository.SampleDay, "*.csv"))
        {
            File.Copy(source, temp[Path.GetFileName(source)]);
        }

        Directory.CreateDirectory(temp["photos"]);
        foreach (var picture in Directory.GetFiles(Path.Combine(Repository.SampleDay, "photos")))
        {
            File.Copy(picture, temp["photos", Path.GetFileName(picture)]);
        }

        return temp;
    }

    private static string[] Plan(TempFolder temp)
    {
        Spoken.By(() => RehearseCommand.Run(temp.Path, temp["out"], null, null, final: false)).Should().Match<Spoken>(s => s.Code == 0, "it must rehearse");
        return [File.ReadAllText(temp["out", "restock.csv"]), File.ReadAllText(temp["out", "shelf.csv"])];
    }
}
