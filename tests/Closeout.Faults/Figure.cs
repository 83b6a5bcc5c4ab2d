using System.Globalization;

namespace Closeout.Faults;

/// <summary>What a run came to: one line of figures, and everything that must not have happened.</summary>
/// <param name="Faults">Each a sentence with the round, so that it can be run again; empty: nothing acknowledged was lost, every book opened.</param>
/// <param name="Counts">The figures by name, for who wants to hold them to something.</param>
public sealed record Figure(string Name, string Text, IReadOnlyList<string> Faults, IReadOnlyDictionary<string, double> Counts)
{
    public bool IsGood => Faults.Count == 0;

    public override string ToString() => $"{Name}: {Text}";

    public static Figure Of(string name, IReadOnlyList<string> faults, FormattableString text, params (string Name, double Value)[] counts) =>
        new(name, text.ToString(CultureInfo.InvariantCulture), faults, counts.ToDictionary(c => c.Name, c => c.Value));

    /// <summary>One of several, counted over several runs.</summary>
    public double this[string name] => Counts[name];
}

/// <summary>What must not happen, gathered from any thread.</summary>
public sealed class FaultList
{
    private readonly List<string> found = [];

    public void Add(FormattableString text)
    {
        lock (found)
        {
            found.Add(text.ToString(CultureInfo.InvariantCulture));
        }
    }

    public IReadOnlyList<string> All
    {
        get
        {
            lock (found)
            {
                return [.. found];
            }
        }
    }
}
