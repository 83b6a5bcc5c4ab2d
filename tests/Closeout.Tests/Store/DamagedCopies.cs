using System.Globalization;
using System.Text;
using System.Text.Json;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Store;
using Closeout.Turning;
using FluentAssertions;
using Xunit;
using Xunit.Abstractions;

namespace Closeout.Tests.Store;

/// <summary>
/// Six hundred copies of a book, each damaged in some way by a fixed seed. Whatever asks a copy must get the truth or a refusal
/// that names the place, and what is saved of it must be a good book in which entries kept and lost add up.
/// </summary>
public sealed class DamagedCopies(ITestOutputHelper output)
{
    private const int Copies = 600;
    private const int Seed = 20261125;

    private static readonly DateTimeOffset Now = new(2026, 3, 9, 8, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>What became of one copy.</summary>
    /// <param name="Refused">Whether anything refused it; else everything read as before.</param>
    /// <param name="Wrong">Answers that were neither the truth nor a refusal with its place.</param>
    /// <param name="Untold">Whether nothing is left that could tell what was lost.</param>
    /// <param name="Unsaved">Whether no line was left to begin a book with.</param>
    private sealed record Outcome(string Damage, bool Refused, IReadOnlyList<string> Wrong, bool Untold, bool Unsaved, int Kept, int Lost);

    [Fact]
    public void None_is_silently_wrong_and_of_each_a_good_book_is_saved_whose_entries_add_up()
    {
        using var book = new LongBook(inMemory: true);
        using var other = new LongBook(second: 1000, inMemory: true);
        var truth = new Truth(book.Folder, book.Entries);
        var kinds = Damage.All(other.Folder);
        var outcomes = new Outcome[Copies];
        Parallel.For(0, Copies, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            var random = new Random(Seed + i);
            var copy = book.Copy($"copy-{i}");
            var one = kinds[i % kinds.Count];
            one.Do(copy, random);

            // Every fifth copy is damaged in a second way, too.
            var two = i / kinds.Count % 5 == 4;
            if (two)
            {
                kinds[random.Next(kinds.Count)].Do(copy, random);
            }

            outcomes[i] = truth.Ask(copy, two ? "two of these at once" : one.Name, new(book.Temp[$"saved-{i}"]));
            Directory.Delete(copy.Path, recursive: true);
        });

        var table = Table(outcomes, kinds, book.Entries);
        output.WriteLine(table);
        string.Join("\n", outcomes.SelectMany((o, i) => o.Wrong.Select(w => $"copy {i}, {o.Damage}: {w}"))).Should().BeEmpty();
        var golden = Repository.Golden("damaged-copies.txt");
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
        {
            File.WriteAllText(golden, table);
        }

        table.Should().Be(File.ReadAllText(golden).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_cut_between_two_lines_can_be_told_only_while_something_beside_the_pages_remembers_more()
    {
        using var book = new LongBook();
        var third = book.Folder.Page(LongBook.Third);
        LongBook.Write(third, LongBook.Lines(third)[..^1]);
        BookCheck.Of(book.Folder).Fault.Should().Contain("the book has had them");

        File.Delete(book.Folder.Last);
        BookCheck.Of(book.Folder).Fault.Should().Contain("the archive has seen them");

        Directory.Delete(book.Folder.Archive, recursive: true);
        BookCheck.Of(book.Folder).Fault.Should().BeNull("a shorter book is what is left, and nothing says that there was more");
    }

    private static string Table(IReadOnlyList<Outcome> outcomes, IReadOnlyList<Damage> kinds, int entries)
    {
        var text = new StringBuilder();
        void Row(string name, params object[] cells) => text.Append(CultureInfo.InvariantCulture, $"{name,-45}{string.Concat(cells.Select(c => Convert.ToString(c, CultureInfo.InvariantCulture)!.PadLeft(10)))}\n");
        Row("", "copies", "refused", "as before", "wrong", "saved", "kept", "lost");
        foreach (var name in kinds.Select(k => k.Name).Append("two of these at once").Append("all"))
        {
            var of = outcomes.Where(o => name == "all" || o.Damage == name).ToList();
            Row(name, of.Count, of.Count(o => o.Refused), of.Count(o => !o.Refused), of.Count(o => o.Wrong.Count > 0), of.Count(o => !o.Unsaved), of.Sum(o => o.Kept), of.Sum(o => o.Lost));
        }

        text.Append(CultureInfo.InvariantCulture, $"A copy has {entries} entries on 3 pages. Copies of which nothing was left that could tell the loss: {outcomes.Count(o => o.Untold)}\n");
        return text.ToString();
    }

    /// <summary>What the book says when it is whole.</summary>
    private sealed class Truth
    {
        private readonly int entries;
        private readonly IReadOnlyDictionary<string, string> pages;
        private readonly IReadOnlyDictionary<DateOnly, string> depots;
        private readonly List<string> keys;
        private readonly string archived;
        private readonly string audited;
        private readonly string last;
        private readonly string seal;

        public Truth(BookFolder folder, int entries)
        {
            (this.entries, pages, archived, audited, last, seal) = (entries, LongBook.Pages(folder), Archived(folder), Audited(folder), File.ReadAllText(folder.Last), Seal(folder));
            depots = LongBook.Dates.ToDictionary(d => d, d => Digest(Book.Open(folder, d).Depot));
            keys = [.. LongBook.All(folder).Select(Key)];
        }

        public Outcome Ask(BookFolder copy, string damage, BookFolder to)
        {
            var untold = Untold(copy);
            var (wrong, refused) = (new List<string>(), 0);
            void Asked(string what, Func<string> ask, string truth)
            {
                try
                {
                    if (ask() is var told && told != truth && !untold)
                    {
                        wrong.Add($"{what} gives {told}");
                    }
                }
                catch (BookException e)
                {
                    refused++;
                    if (!e.Message.Contains(copy.Path, StringComparison.Ordinal) && !e.Message.StartsWith("The book has no page for", StringComparison.Ordinal))
                    {
                        wrong.Add($"{what} names no place: {e.Message}");
                    }
                }
            }

            Asked("the open page", () => Digest(Book.Open(copy).Depot), depots[LongBook.Third]);
            foreach (var date in LongBook.Dates)
            {
                Asked($"{date:yyyy-MM-dd}", () => Digest(Book.Open(copy, date).Depot), depots[date]);
            }

            Asked("check", () => Checked(copy), "good");
            var saved = Save(copy, to, wrong, untold);
            Asked("the archive", () => Archived(copy), archived);
            Asked("the audit", () => Audited(copy), audited);
            Asked("a backup", () => BackedUp(copy), "as it was");
            return new(damage, refused > 0, wrong, untold, saved is null, saved?.Kept ?? 0, saved?.Lost ?? entries);
        }

        /// <summary>A good answer of check is true when every page is as it was.</summary>
        private string Checked(BookFolder copy) => BookCheck.Of(copy).Fault is { } fault ? throw new BookException(fault) : Same(copy) ? "good" : "good, of other pages";

        private bool Same(BookFolder copy)
        {
            var now = LongBook.Pages(copy);
            return now.Count == pages.Count && pages.All(p => now.GetValueOrDefault(p.Key) == p.Value);
        }

        private string BackedUp(BookFolder copy)
        {
            var (file, back) = (copy.Path + ".zip", new BookFolder(copy.Path + ".back"));
            Backup.Write(copy, file, Now);
            Restore.Into(back, file);
            var same = Same(back);
            File.Delete(file);
            Directory.Delete(back.Path, recursive: true);
            return same ? "as it was" : "other pages";
        }

        private Salvaged? Save(BookFolder copy, BookFolder to, List<string> wrong, bool untold)
        {
            Salvaged saved;
            try
            {
                saved = Salvage.Into(copy, to, Now);
            }
            catch (BookException e) when (e.Message.StartsWith("Nothing of the book", StringComparison.Ordinal) || e.Message.StartsWith("There is no book", StringComparison.Ordinal))
            {
                return null;
            }

            if (BookCheck.Of(to).Fault is { } fault)
            {
                wrong.Add($"the saved book is not good: {fault}");
            }

            var all = LongBook.All(to);
            var kept = all.Where(e => e.Entry is not BookSalvaged && !(e.Entry is PageOpened && e.At == Now)).Select(Key).ToList();
            if (kept.Count != saved.Kept || !IsWithin(kept))
            {
                wrong.Add("the entries kept are not those of the book, in their order");
            }

            // Where the book's memory and the archive are both gone, entries lost at the end are not known of.
            if (saved.Kept + saved.Lost != entries && (Remembers(copy) || saved.Kept + saved.Lost > entries))
            {
                wrong.Add($"{saved.Kept} kept and {saved.Lost} lost are not {entries}");
            }

            if (all.Select(e => e.Entry).OfType<BookSalvaged>().Sum(s => s.Lost) != saved.Lost)
            {
                wrong.Add("the losses written in the saved book do not add up to those told");
            }

            Directory.Delete(to.Path, recursive: true);
            return saved;
        }

        private bool IsWithin(List<string> kept)
        {
            var at = 0;
            foreach (var key in kept)
            {
                at = keys.IndexOf(key, at) + 1;
                if (at == 0)
                {
                    return false;
                }
            }

            return true;
        }

        /// <summary>Whether the copy's pages are a shorter book in which all fits, and both that could tell are gone.</summary>
        private bool Untold(BookFolder copy)
        {
            if (Remembers(copy) || Same(copy))
            {
                return false;
            }

            var (now, whole) = (LongBook.Pages(copy), pages.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Value));
            var there = string.Concat(now.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Value));
            return there.Length > 0 && string.Concat(whole).StartsWith(there, StringComparison.Ordinal);
        }

        private bool Remembers(BookFolder copy) => (File.Exists(copy.Last) && File.ReadAllText(copy.Last) == last) || Seal(copy) == seal;

        private static string Seal(BookFolder folder)
        {
            var database = Path.Combine(folder.Archive, "closeout.db");
            return File.Exists(database) ? Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(database))) : "";
        }

        private static string Archived(BookFolder folder)
        {
            var archive = new Archive(folder);
            return string.Join(
                "; ",
                string.Join(' ', archive.Boxes(LongBook.First, LongBook.Third)),
                string.Join(' ', archive.Miles(LongBook.First, LongBook.Third)),
                string.Join(' ', archive.Streams(LongBook.First, LongBook.Third)),
                string.Join(' ', archive.Incidents()),
                string.Join(' ', archive.Photos().Select(p => $"{p.Number} {p.Photo} {new Attachments(folder).Read(p.Photo.Sha256).Length}")),
                string.Join(',', archive.EntriesOf("B1")),
                string.Join(',', archive.EntriesOf("B2")));
        }

        /// <summary>audit.csv of the whole book, which reads every page.</summary>
        private static string Audited(BookFolder folder)
        {
            var file = folder.Path + ".csv";
            Closeout.Commands.AuditCommand.Run(folder, null, file);
            var text = File.ReadAllText(file);
            File.Delete(file);
            return text;
        }

        /// <summary>All that a depot knows, in short: what it would hand to the next day, and how far each close-out is.</summary>
        private static string Digest(Depot depot)
        {
            var (_, sha) = PageLine.Write(new Recorded(1, Now, NextPage.After(depot, depot.Date.AddDays(1))), PageLine.Nothing);
            return $"{depot.Date} {depot.Number} {sha} {string.Join(' ', depot.Shifts.Values.OrderBy(s => s.Van).Select(s => $"{s.Van} {s.Step} {s.Story.Count}"))}";
        }

        /// <summary>An entry without the numbers by which it names others or is named: those may be new.</summary>
        private static string Key(Recorded recorded)
        {
            var entry = recorded.Entry switch
            {
                OverrideWithdrawn w => w with { Number = 0 },
                DamageFound d => d with { Number = 0 },
                IncidentClosed c => c with { Number = 0 },
                PageOpened p => p with { Carried = p.Carried with { Overrides = [.. p.Carried.Overrides.Select(o => o with { Number = 0 })] } },
                _ => recorded.Entry,
            };
            using var bytes = new MemoryStream();
            using (var json = new Utf8JsonWriter(bytes))
            {
                EntryCodec.Write(json, entry);
            }

            return $"{recorded.At:O} {EntryKind.Of(entry).Name} {Encoding.UTF8.GetString(bytes.ToArray())}";
        }
    }
}
