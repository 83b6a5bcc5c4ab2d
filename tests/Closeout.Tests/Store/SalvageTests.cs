using System.Text;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>What <c>check --repair</c> saves of a damaged book.</summary>
public sealed class SalvageTests
{
    private static readonly DateTimeOffset Now = new(2026, 3, 7, 8, 0, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void A_good_book_comes_out_the_same_to_the_byte()
    {
        using var book = new LongBook();

        var saved = Saved(book, lost: 0);

        saved.Said.Should().BeEmpty();
        LongBook.Pages(To(book)).Should().BeEquivalentTo(LongBook.Pages(book.Folder));
        File.ReadAllText(To(book).Last).Should().Be(File.ReadAllText(book.Folder.Last));
        Directory.EnumerateFiles(To(book).Files).Should().HaveCount(2);
        Directory.EnumerateFiles(To(book).TornLines).Should().HaveCount(1);
    }

    [Fact]
    public void A_damaged_line_is_named_with_what_it_seems_to_have_been_and_all_others_are_kept()
    {
        using var book = new LongBook();
        var at = Damage(book, LongBook.First, e => e is DeliveryReceived);

        var saved = Saved(book, lost: 1);

        saved.Said.Should().ContainSingle().Which.Should().Be($"{book.Folder.Page(LongBook.First)}:{at}: the checksum does not fit: the line is not as it was written; it seems to be entry {at} delivery-received");
        var before = LongBook.All(new BookFolder(book.Temp["good"])).Where(e => e.Number != at).Select(e => e.Entry);
        Kept(book).Should().BeEquivalentTo(before, o => o.RespectingRuntimeTypes().WithStrictOrdering().Excluding(m => m.Name == "Number"));
    }

    [Fact]
    public void Where_the_next_page_carries_other_balances_one_entry_at_the_end_of_the_page_before_says_so()
    {
        using var book = new LongBook();
        Damage(book, LongBook.First, e => e is DeliveryReceived);

        Saved(book, lost: 1);

        var page = PageReader.Read(To(book).Page(LongBook.First), default).Entries;
        page[^1].Entry.Should().BeEquivalentTo(new BookSalvaged(1, [new(SmallBook.Lamp, 60, Place.Unexplained, Place.Shelf), new(SmallBook.Lamp, 60, Place.Supplier, Place.Unexplained)]));
        page[^1].At.Should().Be(Now);
        PageReader.Read(To(book).Page(LongBook.Second), default).Entries.Should().NotContain(e => e.Entry is BookSalvaged);
    }

    [Fact]
    public void Numbers_are_given_anew_without_holes_and_a_withdrawal_follows_the_change_that_it_withdraws()
    {
        using var book = new LongBook();
        Damage(book, LongBook.First, e => e is VanCameIn { Van.Text: "B2" });

        // All of B2's evening can no longer stand without its coming in.
        var saved = Saved(book, lost: 10);

        saved.Said.Should().Contain(s => s.EndsWith("(signed) can no longer stand: it cannot stand here", StringComparison.Ordinal));
        var all = LongBook.All(To(book));
        all.Select(e => e.Number).Should().Equal(Enumerable.Range(1, all.Count));
        var withdrawn = all.Select(e => e.Entry).OfType<OverrideWithdrawn>().Single();
        all[withdrawn.Number - 1].Entry.Should().BeOfType<PlanOverridden>().Which.Reason.Should().Be("open house");
    }

    [Fact]
    public void A_withdrawal_still_stands_when_the_change_was_lost_and_a_later_page_carried_it()
    {
        using var book = new LongBook();
        Damage(book, LongBook.First, e => e is PlanOverridden { Kind: OverrideKind.Extra });

        Saved(book, lost: 1);

        Book.Open(To(book), LongBook.Second).Depot.Planning.Overrides.Should().ContainSingle("the other one was withdrawn").Which.Change.Kind.Should().Be(OverrideKind.Exclude);
        Book.Open(To(book)).Depot.Planning.Overrides.Should().ContainSingle();
    }

    [Fact]
    public void A_withdrawal_of_what_was_lost_on_the_same_page_is_lost_too()
    {
        using var small = new SmallBook().With(counts: 1);
        var change = new ChangePlan(OverrideKind.Extra, SmallBook.B1, SmallBook.Lamp, SmallDay.Date.AddDays(1), 4, "open house", new("L1"));
        small.Book.Record(d => change.Decide(d), SmallBook.At(2)).Should().BeNull();
        small.Book.Record(d => new WithdrawChange(5, "called off", new("L1")).Decide(d), SmallBook.At(3)).Should().BeNull();
        Break(small.Page, 5);

        using var temp = new TempFolder();
        var saved = Salvage.Into(small.Folder, new(temp["new"]), Now);

        (saved.Kept, saved.Lost).Should().Be((4, 2));
        saved.Said.Should().Contain(s => s.StartsWith($"{small.Page}:6: entry 6 (override-withdrawn) can no longer stand: ", StringComparison.Ordinal));
        BookCheck.Of(new(temp["new"])).Fault.Should().BeNull();
    }

    [Fact]
    public void A_lost_opening_is_made_from_the_page_before()
    {
        using var book = new LongBook();
        Break(book.Folder.Page(LongBook.Second), 1);

        var saved = Saved(book, lost: 1);

        saved.Said.Should().Contain($"{book.Folder.Page(LongBook.Second)}: the opening of 2026-03-05 is lost, and was made from the page before: what the day folder of that day said is not in it");
        To(book).Dates.Should().Equal(LongBook.Dates);
        Book.Open(To(book), LongBook.Second).Depot.Shift(SmallBook.B2)!.IsClosed.Should().BeTrue();
    }

    [Fact]
    public void Without_the_first_opening_the_rest_of_its_page_is_listed_as_lost()
    {
        using var book = new LongBook();
        Break(book.Folder.Page(LongBook.First), 1);
        var lost = LongBook.Lines(book.Folder.Page(LongBook.First)).Count;

        var saved = Saved(book, lost);

        saved.Said.Should().Contain(s => s.EndsWith("(signed) can no longer stand: the opening of its page is lost, and there is no page before it", StringComparison.Ordinal));
        To(book).Dates.Should().Equal(LongBook.Second, LongBook.Third);
        LongBook.All(To(book))[0].Number.Should().Be(1);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_page_that_is_gone_is_lost_and_the_others_are_kept(int page)
    {
        using var book = new LongBook();
        var lost = LongBook.Lines(book.Folder.Page(LongBook.Dates[page])).Count;
        File.Delete(book.Folder.Page(LongBook.Dates[page]));

        Saved(book, lost);

        To(book).Dates.Should().Equal(LongBook.Dates.Where((_, i) => i != page));
    }

    [Fact]
    public void Lines_that_changed_places_were_said_twice_or_stand_in_anothers_file_are_put_where_they_belong()
    {
        using var book = new LongBook();
        book.Copy("good");
        var (first, second) = (book.Folder.Page(LongBook.First), book.Folder.Page(LongBook.Second));
        var lines = LongBook.Lines(first);
        (lines[3], lines[8]) = (lines[8], lines[3]);
        lines.Insert(5, lines[11]);
        LongBook.Write(first, LongBook.Lines(second));
        LongBook.Write(second, lines);

        Saved(book, lost: 0);

        LongBook.Pages(To(book)).Should().BeEquivalentTo(LongBook.Pages(new BookFolder(book.Temp["good"])));
    }

    [Fact]
    public void Changed_line_ends_lose_nothing()
    {
        using var book = new LongBook();
        book.Copy("good");
        var (first, third) = (book.Folder.Page(LongBook.First), book.Folder.Page(LongBook.Third));
        File.WriteAllText(first, "\ufeff" + File.ReadAllText(first).Replace("\n", "\r\n", StringComparison.Ordinal));
        var bytes = File.ReadAllBytes(third);
        bytes[bytes.AsSpan().IndexOf((byte)'\n')] = (byte)'J';
        bytes[^1] = 0;
        File.WriteAllBytes(third, bytes);

        Saved(book, lost: 0);

        LongBook.Pages(To(book)).Should().BeEquivalentTo(LongBook.Pages(new BookFolder(book.Temp["good"])));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_page_of_another_book_is_left_out(int page)
    {
        using var book = new LongBook();
        using var other = new LongBook(second: 1000);
        var path = book.Folder.Page(LongBook.Dates[page]);
        var lost = LongBook.Lines(path).Count;
        File.Copy(other.Folder.Page(LongBook.Dates[page]), path, overwrite: true);

        var saved = Saved(book, lost);

        saved.Said.Should().Contain($"{path}:1: entry {LongBook.All(other.Folder).First(e => e.Entry is PageOpened p && p.Date == LongBook.Dates[page]).Number} belongs to another book; left out");
        saved.Said.Count(s => s.EndsWith("belongs to another book; left out", StringComparison.Ordinal)).Should().Be(lost);
    }

    [Fact]
    public void Lines_lost_at_the_end_are_counted_by_what_the_book_remembers_of_its_last_entry()
    {
        using var book = new LongBook();
        var third = book.Folder.Page(LongBook.Third);
        LongBook.Write(third, LongBook.Lines(third)[..^3]);

        Saved(book, lost: 3);
    }

    [Fact]
    public void A_second_count_is_worth_what_it_says_when_the_first_one_is_lost()
    {
        using var book = new SmallBook().With(counts: 2);
        Break(book.Page, 4);
        using var temp = new TempFolder();

        Salvage.Into(book.Folder, new(temp["new"]), Now).Lost.Should().Be(1);

        var depot = Book.Open(new(temp["new"])).Depot;
        depot.Stock.Ledger.Aboard(SmallBook.B1, depot.Setup.Item(SmallBook.Lamp)).Should().Be(book.Book.Depot.Stock.Ledger.Aboard(SmallBook.B1, depot.Setup.Item(SmallBook.Lamp)));
        PageReader.Read(new BookFolder(temp["new"]).Page(SmallDay.Date), default).Entries[^1].Entry.Should().BeOfType<BookSalvaged>().Which.Lost.Should().Be(1);
    }

    [Fact]
    public void Stock_that_would_be_less_than_nothing_is_taken_from_unexplained()
    {
        using var book = new SmallBook().Closed(SmallBook.B1);
        book.Book.Record(d => new ReceiveDelivery(SmallBook.Lamp, 3, new("L1")).Decide(d), SmallBook.At(2)).Should().BeNull();
        book.Book.Record(d => new LoadVan(SmallBook.B1, [new(SmallBook.Lamp, 8, 0)], null).Decide(d), SmallBook.At(3)).Should().BeNull();
        Break(book.Page, 9);
        using var temp = new TempFolder();

        Salvage.Into(book.Folder, new(temp["new"]), Now).Lost.Should().Be(1);

        Book.Open(new(temp["new"])).Depot.Stock.Ledger.Units(Place.Shelf, SmallBook.Lamp).Should().Be(0);
    }

    [Fact]
    public void A_damaged_picture_is_left_out_and_so_is_the_entry_that_attached_it()
    {
        using var book = new LongBook();
        var file = Directory.EnumerateFiles(book.Folder.Files).First();
        File.AppendAllText(file, "!");

        var saved = Saved(book, lost: 1);

        saved.Said.Should().Contain($"{file}: the attachment is not as it was; left out");
        saved.Said.Should().ContainSingle(s => s.EndsWith($"(photo-attached) can no longer stand: its picture {Path.GetFileName(file)} is gone or damaged", StringComparison.Ordinal));
        Directory.EnumerateFiles(To(book).Files).Should().ContainSingle();
    }

    [Fact]
    public void Incidents_keep_numbers_without_a_hole_when_one_is_lost_and_what_closed_another_still_closes_that_one()
    {
        using var book = new LongBook();
        Damage(book, LongBook.Third, e => e is DamageFound { Zone: "roof" });

        Saved(book, lost: 1);

        var third = PageReader.Read(To(book).Page(LongBook.Third), default).Entries.Select(e => e.Entry).ToList();
        var door = third.OfType<DamageFound>().Single();
        (door.Zone, third.OfType<IncidentClosed>().Single().Number).Should().Be(("rear door", door.Number));
        door.Number.Should().Be(Book.Open(To(book), LongBook.Second).Depot.Vans.Incidents + 1);
    }

    [Fact]
    public void What_closed_a_lost_incident_is_lost_too()
    {
        using var book = new LongBook();
        Damage(book, LongBook.Third, e => e is DamageFound { Zone: "rear door" });

        Saved(book, lost: 2).Said.Should().ContainSingle(s => s.EndsWith("(incident-closed) can no longer stand: incident 5 is lost", StringComparison.Ordinal));
    }

    [Fact]
    public void A_book_without_any_whole_opening_cannot_be_saved_and_nothing_is_left_behind()
    {
        using var book = new SmallBook().With(counts: 2);
        Break(book.Page, 1);
        using var temp = new TempFolder();

        var saving = () => Salvage.Into(book.Folder, new(temp["new"]), Now);

        saving.Should().Throw<BookException>().WithMessage("Nothing of the book at * can be saved: no line that opens a page is whole. Bring back the newest backup with: *");
        Directory.EnumerateFileSystemEntries(temp.Path).Should().BeEmpty();
    }

    [Fact]
    public void A_book_of_a_newer_version_is_not_damaged_and_is_left_to_that_version()
    {
        using var book = new SmallBook().With(counts: 0);
        var entries = PageReader.Read(book.Page, default).Entries;
        var lines = LongBook.Lines(book.Page);
        var forged = ForgedLine.Of(entries[2], "van-came-in", "van-flew-in", Encoding.ASCII.GetString(lines[1])[^67..^3]);
        LongBook.Write(book.Page, [lines[0], lines[1], [.. forged, (byte)'\n']]);
        using var temp = new TempFolder();

        var saving = () => Salvage.Into(book.Folder, new(temp["new"]), Now);

        saving.Should().Throw<BookException>().WithMessage($"{book.Page}:3: an entry of kind 'van-flew-in' version 1, which this program does not know; a newer one, or an older, may. Nothing is damaged there: use the version that wrote this book.");
        book.Check().Err.Should().Contain("Nothing is damaged: use the version that wrote this book.");
    }

    private static BookFolder To(LongBook book) => new(book.Temp["new"]);

    /// <summary>Saves the book; the old one must stay as it was, and the new one must be good and add up.</summary>
    private static Salvaged Saved(LongBook book, int lost)
    {
        var before = Directory.EnumerateFiles(book.Folder.Path, "*", SearchOption.AllDirectories).ToDictionary(f => f, f => (Convert.ToHexString(File.ReadAllBytes(f)), File.GetLastWriteTimeUtc(f)));

        var saved = Salvage.Into(book.Folder, To(book), Now);

        Directory.EnumerateFiles(book.Folder.Path, "*", SearchOption.AllDirectories).ToDictionary(f => f, f => (Convert.ToHexString(File.ReadAllBytes(f)), File.GetLastWriteTimeUtc(f))).Should().BeEquivalentTo(before);
        BookCheck.Of(To(book)).Fault.Should().BeNull();
        (saved.Kept, saved.Lost).Should().Be((book.Entries - lost, lost), string.Join("\n", saved.Said));
        LongBook.All(To(book)).Select(e => e.Entry).OfType<BookSalvaged>().Sum(s => s.Lost).Should().Be(lost);
        return saved;
    }

    private static IEnumerable<Entry> Kept(LongBook book) => LongBook.All(To(book)).Select(e => e.Entry).Where(e => e is not BookSalvaged);

    /// <summary>Damages the line of the only such entry on a page; its line number, which is its number too on the first page.</summary>
    private static int Damage(LongBook book, DateOnly date, Predicate<Entry> which)
    {
        book.Copy("good");
        var at = PageReader.Read(book.Folder.Page(date), default).Entries.Index().Single(e => which(e.Item.Entry)).Index + 1;
        Break(book.Folder.Page(date), at);
        return at;
    }

    private static void Break(string page, int line)
    {
        var lines = LongBook.Lines(page);
        lines[line - 1][^40] ^= 2;
        LongBook.Write(page, lines);
    }
}
