using System.Diagnostics;
using System.Globalization;
using Closeout.Faults.Machine;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Tests;

namespace Closeout.Faults.Kill;

/// <summary>The test program that appends counts of one van, one after the other, and says each as soon as it is recorded. It is killed as well.</summary>
internal sealed class SecondWriter : IDisposable
{
    private readonly Process process;
    private readonly Task<int> said;
    private readonly ManualResetEventSlim first = new();
    private readonly string van;
    private readonly int before;

    /// <summary>Brings the van in, if it is not, and starts.</summary>
    public SecondWriter(BookFolder book, string van)
    {
        this.van = van;
        var opened = Book.Open(book);
        if (opened.Depot.Shift(new(van)) is null)
        {
            new Desk(opened, TimeProvider.System).Record(new ComeIn(new(van), opened.Depot.Setup.Crew[0].Code));
        }

        before = Apart(Books.Entries(book), van).Others.Count;
        process = Child.Begin([.. Built.Words(Built.Appender), book.Path, van, opened.Depot.Setup.Items[0].Code.Text, "9000"]);
        said = Task.Run(Listen);
        process.StandardInput.WriteLine();
    }

    /// <summary>How many counts it said were recorded; after it is dead.</summary>
    public int Said => said.Result;

    /// <summary>Waits until it has recorded its first count.</summary>
    public void AwaitFirst() => first.Wait();

    public void Kill()
    {
        Signals.Kill(process.Id);
        process.WaitForExit();
    }

    /// <summary>Null: what it said is there, in order, and at most one more.</summary>
    /// <param name="others">All entries of its van.</param>
    public string? WhyNotKept(IReadOnlyList<string> others)
    {
        var counts = others.Skip(before).ToList();
        var inOrder = counts.Select((c, i) => c.Contains(string.Create(CultureInfo.InvariantCulture, $"\"kept\":{i + 1}}}"), StringComparison.Ordinal)).All(fits => fits);
        return counts.Count < Said ? $"LOST: the other program said {Said} counts, and the book has {counts.Count}"
            : counts.Count > Said + 1 || !inOrder ? $"WRONG: the other program said {Said} counts, and the book has {counts.Count}{(inOrder ? "" : ", out of order")}"
            : null;
    }

    /// <summary>The entries of all vans but one, and that one's.</summary>
    public static (List<string> Mine, List<string> Others) Apart(List<string> entries, string? other)
    {
        var theirs = entries.ToLookup(e => other is not null && e.Contains($"\"van\":\"{other}\"", StringComparison.Ordinal) && !e.StartsWith("page-opened", StringComparison.Ordinal));
        return ([.. theirs[false]], [.. theirs[true]]);
    }

    public void Dispose()
    {
        process.Kill();
        process.WaitForExit();
        process.Dispose();
    }

    private int Listen()
    {
        var last = 0;
        while (process.StandardOutput.ReadLine() is { } line)
        {
            first.Set();
            last = int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : last;
        }

        first.Set();
        return last;
    }
}
