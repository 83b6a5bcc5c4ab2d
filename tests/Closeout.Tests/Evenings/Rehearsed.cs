using Closeout.Commands;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Store;

namespace Closeout.Tests.Evenings;

/// <summary>An evening of the small day, rehearsed: what was said, the book, and the files.</summary>
internal sealed class Rehearsed : IDisposable
{
    private readonly TempFolder temp = new();

    private Rehearsed(params (string File, string? Text)[] files)
    {
        var day = SmallDay.Write(temp["day"], files);
        try
        {
            Said = Spoken.By(() => RehearseCommand.Run(day, temp["out"], null, null, final: false));
        }
        catch
        {
            temp.Dispose();
            throw;
        }
    }

    public Spoken Said { get; }

    public IEnumerable<string> Left => !Directory.Exists(temp["out"]) ? [] : Directory.EnumerateFileSystemEntries(temp["out"]).Select(p => Path.GetFileName(p)!).Order(StringComparer.Ordinal);

    /// <summary>The depot after an evening without a refusal.</summary>
    public Depot Depot => Said.Code == 0 ? Book.Open(new BookFolder(temp["out", "book"])).Depot : throw new InvalidOperationException(Said.Err);

    public IEnumerable<Entry> Entries => PageReader.Read(new BookFolder(temp["out", "book"]).Page(Depot.Date), default).Entries.Skip(1).Select(e => e.Entry);

    public static Rehearsed Evening(params string[] rows) => new(SmallDay.Evening(rows));

    public static Rehearsed With(string evening, params (string File, string? Text)[] files) => new([.. files, SmallDay.Evening(evening.Split('\n'))]);

    public int Units(string place, string item = "LAMP") => Depot.Stock.Ledger.Balances.Where(b => b.Place.ToString() == place && b.Item == new Code<Item>(item)).Sum(b => b.Units);

    /// <summary>The rows of a file without its header.</summary>
    public string[] Rows(string csv) => File.ReadAllText(temp["out", csv + ".csv"]).Split("\r\n")[1..^1];

    /// <summary>What <c>photos --out</c> writes: the files below its folder, by their path.</summary>
    public IReadOnlyDictionary<string, byte[]> Photos()
    {
        var said = Spoken.By(() => PhotosCommand.Run(new BookFolder(temp["out", "book"]), null, temp["photos"], TimeProvider.System));
        return said.Code == 0
            ? Directory.EnumerateFiles(temp["photos"], "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(temp["photos"], f).Replace('\\', '/'), File.ReadAllBytes)
            : throw new InvalidOperationException(said.Err);
    }

    public void Dispose() => temp.Dispose();
}
