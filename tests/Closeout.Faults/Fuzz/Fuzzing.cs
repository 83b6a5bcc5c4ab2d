using Closeout.Faults.Machine;
using Closeout.Screens.Steps;
using Closeout.Store;

namespace Closeout.Faults.Fuzz;

/// <summary>Generated inputs for every reader.</summary>
public static class Fuzzing
{
    /// <summary>A whole day folder takes as long as this many single files.</summary>
    private const int DayTakes = 20;

    /// <param name="inputs">For each reader.</param>
    /// <param name="only">The name of one reader; null: all.</param>
    public static IEnumerable<Figure> Run(int inputs, int seed, string? only = null)
    {
        using var temp = new FastFolder();
        var book = Evening(temp.At("evening"));
        List<(IFuzzed Reader, int Inputs)> all =
        [
            .. CsvFuzz.All(temp.At("csv")).Select(csv => ((IFuzzed)csv, inputs)),
            (new DayFuzz(temp.At("day")), Math.Max(20, inputs / DayTakes)),
            (new EntryFuzz(book), inputs),
            (new PageFuzz(book, temp.At(".")), inputs),
            (new KeysFuzz(temp.At("kiosk")), inputs),
        ];

        all.RemoveAll(f => only is not null && f.Reader.Name != only);

        // The long ones first, two at a time; told in the order of the list.
        var figures = new Figure[all.Count];
        Parallel.For(0, all.Count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => figures[^(i + 1)] = Bounded.Run(all[^(i + 1)].Reader, all[^(i + 1)].Inputs, seed));
        return figures;
    }

    /// <summary>A book with entries of many kinds, made by keys.</summary>
    private static BookFolder Evening(string folder)
    {
        var book = new BookFolder(folder);
        var day = folder + "-day";
        ShortDay.Write(day);
        var given = Files.DayFolder.Read(day, StepPages.Evening).Given!;
        var kiosk = new Screens.KioskSession(new Desk(Book.New(book, given.FirstPage(rehearsal: true), DateTimeOffset.UnixEpoch), TimeProvider.System), new Archive(book), new Attachments(book));
        var typist = new Typist(new Random(1), ["B1", "B4", "B6"]);
        while (!typist.IsDone(kiosk.Desk.Depot))
        {
            foreach (var key in Screens.Parts.Keystroke.Parse(typist.Next(kiosk)))
            {
                kiosk.Press(key);
            }
        }

        var again = Book.Open(book);
        again.Record(d => (Rules.Decision)given.Loaded(d), DateTimeOffset.UnixEpoch);
        again.Record(d => Turning.NextPage.After(d, d.Date.AddDays(1)), DateTimeOffset.UnixEpoch);
        return book;
    }
}
