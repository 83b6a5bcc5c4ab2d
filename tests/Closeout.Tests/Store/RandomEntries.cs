using Closeout.Facts;
using CsCheck;

namespace Closeout.Tests.Store;

/// <summary>A generator for each kind of entry, by the kind's name. The text in them is as wild as people and programs make it.</summary>
internal static class RandomEntries
{
    public const string Seed = "0N0XIzNsQ0O2";

    private static readonly Gen<string> Wild = Gen.OneOf(
        "\"", "\\", "\\u0041", "\u0000", "\u0001", "\u001b[2J", "\u007f", "\n", "\r\n", "\t", "\U0001F69A", "\U0001F468\u200D\U0001F469", "漢字", "한", "é", "e\u0301",
        "\u2028", "\u202e", "\ufeff", "<&'>", "{\"n\":1}", ",\"sha\":\"", "日本", " ", "a", "Z", "0").Array[0, 8].Select(string.Concat);

    private static readonly Gen<DateOnly> Date = Gen.Int[0, DateOnly.MaxValue.DayNumber].Select(DateOnly.FromDayNumber);
    private static readonly Gen<decimal> Decimal = Gen.Int[-20_000_000, 20_000_000].Select(Gen.Int[0, 6], (n, d) => new decimal(Math.Abs(n), 0, 0, n < 0, (byte)d));
    private static readonly Gen<Code<Van>> Van = Code<Van>();
    private static readonly Gen<Code<Item>> Item = Code<Item>();
    private static readonly Gen<Code<Technician>> Technician = Code<Technician>();
    private static readonly Gen<Code<KitPiece>> Piece = Code<KitPiece>();
    private static readonly Gen<Code<VisitKind>> Visit = Code<VisitKind>();
    private static readonly Gen<Code<WasteStream>> Stream = Code<WasteStream>();
    private static readonly DateTimeOffset At = new(2026, 3, 3, 17, 5, 0, TimeSpan.FromHours(-5));
    private static readonly Gen<Severity> Severities = Gen.OneOf(Enum.GetValues<Severity>());

    private static readonly Gen<Place> Places = Gen.Select(Gen.OneOf(Enum.GetValues<PlaceKind>()), Van, (kind, van) =>
        kind is PlaceKind.VanSealed or PlaceKind.VanLoose ? new Place(kind, van) : new Place(kind));

    private static readonly Gen<Move> Moves = Gen.Select(Item, Gen.Int[1, int.MaxValue], Places, Places).Where((_, _, from, to) => from != to)
        .Select((item, units, from, to) => new Move(item, units, from, to));

    private static readonly Gen<DailyUse> Use = Gen.Select(Date, Visit, Gen.Int, Gen.Select(Item, Gen.Int, Gen.Long, (i, s, q) => new ItemUse(i, s, q)).Array[0, 2], (d, k, n, u) => new DailyUse(d, k, n, u));
    private static readonly Gen<VanUse> ByVan = Gen.Select(Date, Van, Gen.Select(Item, Gen.Int, (i, u) => new ItemUnits(i, u)).Array[0, 2], Gen.Select(Visit, Gen.Int, (k, n) => new KindVisits(k, n)).Array[0, 2], (d, v, u, n) => new VanUse(d, v, u, n));
    private static readonly Gen<CountedDay> Counted = Gen.Select(Date, Van, Gen.Select(Item, Gen.Int, (i, u) => new ItemUnits(i, u)).Array[0, 2], (d, v, u) => new CountedDay(d, v, u));
    private static readonly Gen<Booking> Bookings = Gen.Select(Date, Van, Visit, Gen.Int, (d, v, k, n) => new Booking(d, v, k, n));
    private static readonly Gen<Order> Orders = Gen.Select(Item, Gen.Int, Date, (i, c, d) => new Order(i, c, d));

    private static readonly Gen<Item> Items = Gen.Select(Item, Wild, Gen.Int, Gen.Double[0, 1e6], Wild).Select((code, said, n, x, stow) =>
        new Item(code, said, n, n, x, new(x, x / 3, x / 7, said), n, n, n, n, n, stow));

    private static readonly Gen<Technician> Crew = Gen.Select(Technician, Wild, Gen.Bool, Maybe(Van), Gen.OneOf(Enum.GetValues<DayOfWeek>()).Array[0, 7])
        .Select((code, name, lead, van, days) => new Technician(code, name, lead, van, days));

    private static readonly Gen<Setup> Setups = Gen.Select(Items.Array[0, 2], Crew.Array[0, 2], Wild, Van, Date, Decimal, Gen.Double[0.001, 1]).Select((items, crew, text, van, date, miles, part) => new Setup(
        new(text, TimeOnly.MaxValue, miles > 0, part, part / 2, part / 3, part * 8, part * 90, part * 100, miles > 0 ? part : null, miles > 0 ? text : null, miles > 0 ? [new("lamps")] : [], part * 1000),
        items, [new(van, 7, text, part, text, miles, miles, 6, miles, date)], [.. items.Select(i => new VanLimit(van, i.Code, 1, 2))],
        [new(new("P"), text, 3, miles > 0, miles < 0, 30, 7)], [new(van, new("P"), 4)], crew, [.. items.Select(i => new PlanningRate(new("k"), i.Code, part, part))], [new(text, part)]));

    private static readonly Gen<VanCarried> Vans = Gen.Select(Van, Decimal, Maybe(Date), Gen.Select(Date, Severities, Wild, Maybe(Technician), (d, s, t, by) => new Incident(7, d, At, by, t, s, t, s == Severity.Note, t, by is null ? null : new TimeOnly(16, 1), s == Severity.Repair)).Array[0, 2], Item, Piece)
        .Select((van, miles, on, damages, item, piece) => new VanCarried(
            van, miles, on, on, [new(item, 2, on ?? default)], on is null ? [] : [new(piece, on.Value, null)], [new(piece, 0)], damages, [.. damages.Select(d => new Hold(d.Since, d.What))], [new(on ?? default, miles, miles + 7, on is null ? null : miles)]));

    private static readonly Gen<PlanOverridden> Changes = Gen.Select(Gen.OneOf(Enum.GetValues<OverrideKind>()), Van, Maybe(Item), Date, Gen.Int, Wild, Technician)
        .Select((k, v, i, d, n, why, by) => new PlanOverridden(k, v, i, d, n, why, by));

    private static readonly Gen<(Standing[], SpotCounted[], Promise[], KeptPromises[])> Rest = Gen.Select(
        Gen.Select(Gen.Int, Changes, (n, c) => new Standing(n, c)).Array[0, 2],
        Gen.Select(Van, Item, Date, Gen.Int, (v, i, d, g) => new SpotCounted(v, i, d, g)).Array[0, 2],
        Gen.Select(Van, Item, Gen.Int, (v, i, t) => new Promise(v, i, t)).Array[0, 2],
        Gen.Select(Date, Gen.Int[1, 3], Gen.Int, Gen.Long, (d, p, n, u) => new KeptPromises(d, p, n, n, u, n, u, u)).Array[0, 2],
        (standing, spots, promises, kept) => (standing, spots, promises, kept));

    private static readonly Gen<LoadedLine> Lines = Gen.Select(Item, Gen.Int.Array[4], (i, n) => new LoadedLine(i, n[0], n[1], n[2], n[3]));

    private static readonly Gen<PinHash> Hashes = Gen.Select(Gen.Int[1, 10_000_000], Gen.Byte.Array[16], Gen.Byte.Array[32], (n, salt, hash) => new PinHash(n, Convert.ToBase64String(salt), Convert.ToBase64String(hash)));
    private static readonly Gen<PersonPin> People = Gen.Select(Technician, Hashes, Gen.Bool, Gen.Int, (t, h, issued, n) => new PersonPin(t, issued ? h : null, issued, n, issued ? At : null));
    private static readonly Gen<KioskTries> Kiosks = Gen.Select(Wild, Gen.Int, Gen.Int[0, 3], (k, n, times) => new KioskTries(k, n, [.. Enumerable.Repeat(At, times)]));

    private static readonly Gen<Carried> Carry = Gen.Select(Setups, Gen.Select(Places, Item, Gen.Int, (p, i, u) => new Balance(p, i, u)).Array[0, 3], Vans.Array[0, 2], Bookings.Array[0, 2], Orders.Array[0, 2], Use.Array[0, 2], ByVan.Array[0, 2], Counted.Array[0, 2])
        .Select((setup, balances, vans, bookings, orders, use, byVan, counted) => new Carried(setup, balances, vans, bookings, orders, use, byVan, counted, [], [], [], [], new YardCarried(1.5, null, [], [new(default, 3, 2, 0.25)], [new(new("film"), default, 2.5m)]), 9, [], []))
        .Select(Rest, People.Array[0, 2], Kiosks.Array[0, 2], (carried, rest, people, kiosks) => carried with { People = people, Kiosks = kiosks, Overrides = rest.Item1, SpotCounts = rest.Item2, Promises = rest.Item3, Kept = rest.Item4 });

    public static readonly IReadOnlyDictionary<string, Gen<Entry>> ByKind = new Dictionary<string, Gen<Entry>>
    {
        ["page-opened"] = Gen.Select(Date, Gen.Bool, Carry, (d, r, c) => (Entry)new PageOpened(d, r, c)),
        ["day-folder-loaded"] = Gen.Select(Setups, Date.Array[0, 2], Bookings.Array[0, 2], Use.Array[0, 2], ByVan.Array[0, 2], Gen.Bool, Orders.Array[0, 2])
            .Select((s, dates, b, u, v, has, o) => (Entry)new DayFolderLoaded(s, dates, b, dates, u, v, [.. v.Select(x => new VanDay(x.Date, x.Van))], has ? o : null)),
        ["van-sent-back"] = Van.Select(v => (Entry)new VanSentBack(v)),
        ["van-came-in"] = Gen.Select(Van, Technician, Gen.Bool, Item.Array[0, 3], (v, t, w, s) => (Entry)new VanCameIn(v, t, w, s)),
        ["leftover-counted"] = Gen.Select(Van, Item, Gen.Int.Array[6], Maybe(Gen.Int), Moves.Array[0, 4])
            .Select((v, i, n, installed, moves) => (Entry)new LeftoverCounted(v, i, new(n[0], n[1], n[2]), installed, n[3], n[4], n[5], moves)),
        ["leftovers-confirmed"] = Van.Select(v => (Entry)new LeftoversConfirmed(v)),
        ["boxes-counted"] = Gen.Select(Van, Item, Gen.Int, Gen.Int, (v, i, e, f) => (Entry)new BoxesCounted(v, i, e, f)),
        ["cardboard-confirmed"] = Van.Select(v => (Entry)new CardboardConfirmed(v)),
        ["mileage-logged"] = Gen.Select(Van, Technician, Decimal, Decimal, Maybe(Decimal), Wild, Gen.Bool)
            .Select((v, t, s, e, fuel, grade, sure) => (Entry)new MileageLogged(v, t, s, e, fuel, sure ? grade : null, sure)),
        ["damage-found"] = Gen.Select(Van, Gen.Int, Technician, Wild, Severities, Wild, Gen.Bool).Select((v, n, t, z, s, w, d) => (Entry)new DamageFound(v, n, t, z, s, w, d, w, d ? new TimeOnly(23, 59) : null)),
        ["damage-confirmed"] = Gen.Select(Van, Gen.Bool, (v, n) => (Entry)new DamageConfirmed(v, n)),
        ["kit-counted"] = Gen.Select(Van, Piece, Gen.Int, Maybe(Date), Maybe(Date), (v, p, n, d, t) => (Entry)new KitCounted(v, p, n, d, t)),
        ["kit-confirmed"] = Van.Select(v => (Entry)new KitConfirmed(v)),
        ["handover-answered"] = Gen.Select(Van, Gen.Select(Wild, Gen.Bool, Wild, (q, yes, why) => new HandoverAnswer(new("SWEPT"), q, yes, why)).Array[0, 2], (v, a) => (Entry)new HandoverAnswered(v, a)),
        ["weekly-checked"] = Gen.Select(Van, Maybe(Date), Gen.Int, Gen.Bool, Wild.Array[0, 2], (v, d, n, c, parts) => (Entry)new WeeklyChecked(v, d, n, c, parts)),
        ["photo-attached"] = Gen.Select(Van, Wild, Wild, Gen.Long, (v, sha, name, n) => (Entry)new PhotoAttached(v, sha, name, n)),
        ["stream-counted"] = Gen.Select(Van, Stream, Decimal, (v, s, n) => (Entry)new StreamCounted(v, s, n)),
        ["closeout-checked"] = Gen.Select(Van, Technician, (v, by) => (Entry)new CloseoutChecked(v, by)),
        ["closeout-reopened"] = Gen.Select(Van, Wild, Technician, (v, why, by) => (Entry)new CloseoutReopened(v, why, by)),
        ["signed-for"] = Gen.Select(Van, Technician, Wild, (v, by, why) => (Entry)new SignedFor(v, by, why, by)),
        ["odometer-corrected"] = Gen.Select(Van, Gen.Int[0, 2_000_000], Gen.Int[0, 2_000_000], Wild, Technician, (v, from, to, why, by) => (Entry)new OdometerCorrected(v, from, to, why, by)),
        ["van-explained"] = Gen.Select(Van, Gen.Bool, Wild, Technician, (v, stayed, why, by) => (Entry)new VanExplained(v, stayed, why, by)),
        ["bookings-moved"] = Gen.Select(Date, Van, Van, Gen.Select(Visit, Gen.Int, (k, n) => new KindVisits(k, n)).Array[0, 2], Wild, Technician, (d, v, w, n, why, by) => (Entry)new BookingsMoved(d, v, w, n, why, by)),
        ["hold-placed"] = Gen.Select(Van, Wild, Technician, (v, why, by) => (Entry)new HoldPlaced(v, why, by)),
        ["incident-closed"] = Gen.Select(Van, Gen.Int, Wild, Technician, (v, n, why, by) => (Entry)new IncidentClosed(v, n, why, by)),
        ["depot-boxes-counted"] = Gen.Select(Item, Gen.Int, Gen.Int, Technician, (i, e, f, by) => (Entry)new DepotBoxesCounted(i, e, f, by)),
        ["boxes-written-off"] = Gen.Select(Maybe(Van), Item, Gen.Int, Wild, Technician, (v, i, n, why, by) => (Entry)new BoxesWrittenOff(v, i, n, why, by)),
        ["container-emptied"] = Gen.Select(Gen.Double[0, 1e6], Maybe(Gen.Double[0, 150]), Maybe(Gen.Double[0, 1e5]), Technician, (lb, p, w, by) => (Entry)new ContainerEmptied(lb, p, w, by)),
        ["collecting-box-shipped"] = Gen.Select(Stream, Date, Decimal, Wild, Technician, (s, d, n, to, by) => (Entry)new CollectingBoxShipped(s, d, n, to, by)),
        ["signed"] = Gen.Select(Van, Technician, Gen.OneOf(Enum.GetValues<Proof>()), (v, t, p) => (Entry)new Signed(v, t, p)),
        ["pin-set"] = Gen.Select(Technician, Hashes, Gen.Bool, Maybe(Technician), (t, h, issued, lead) => (Entry)new PinSet(t, h, issued, lead)),
        ["pin-reset"] = Gen.Select(Technician, Technician, (t, lead) => (Entry)new PinReset(t, lead)),
        ["pin-failed"] = Gen.Select(Technician, Wild, (t, kiosk) => (Entry)new PinFailed(t, kiosk)),
        ["pin-passed"] = Gen.Select(Technician, Wild, (t, kiosk) => (Entry)new PinPassed(t, kiosk)),
        ["plan-overridden"] = Changes.Select(c => (Entry)c),
        ["override-withdrawn"] = Gen.Select(Gen.Int, Wild, Technician, (n, why, by) => (Entry)new OverrideWithdrawn(n, why, by)),
        ["van-loaded"] = Gen.Select(Van, Lines.Array[0, 3], Moves.Array[0, 4], Maybe(Technician), (v, l, m, by) => (Entry)new VanLoaded(v, l, m, by)),
        ["delivery-received"] = Gen.Select(Item, Gen.Int, Gen.Int, Moves.Array[0, 2], Technician, (i, c, o, m, by) => (Entry)new DeliveryReceived(i, c, o, m, by, Math.Max(0, c % 3))),
        ["stock-moved"] = Gen.Select(Van, Maybe(Van), Item, Gen.Int.Array[3], Wild, Moves.Array[0, 2], Technician, (v, to, i, n, why, m, by) => (Entry)new StockMoved(v, to, i, n[0], n[1], n[2], why, m, by)),
        ["stock-given"] = Gen.Select(Van, Van, Item, Gen.Int.Array[3], Moves.Array[0, 2], Technician, (v, to, i, n, m, by) => (Entry)new StockGiven(v, to, i, n[0], n[1], n[2], m, by)),
        ["gift-answered"] = Gen.Select(Gen.Int, Van, Item, Gen.Bool, Moves.Array[0, 2], Technician, (n, v, i, came, m, by) => (Entry)new GiftAnswered(n, v, i, came, m, by)),
        ["stock-taken-back"] = Gen.Select(Gen.Int, Item, Moves.Array[0, 2], Wild, Technician, (n, i, m, why, by) => (Entry)new StockTakenBack(n, i, m, why, by)),
        ["yard-taken-back"] = Gen.Select(Gen.Int, Wild, Technician, (n, why, by) => (Entry)new YardTakenBack(n, why, by)),
        ["holds-lifted"] = Gen.Select(Van, Wild.Array[0, 2], Wild, Technician, (v, r, why, by) => (Entry)new HoldsLifted(v, r, why, by)),
        ["book-salvaged"] = Gen.Select(Gen.Int, Moves.Array[0, 4], (n, m) => (Entry)new BookSalvaged(n, m)),
        ["count-corrected"] = Gen.Select(Places, Item, Gen.Int.Array[2], Wild, Moves.Array[0, 2], Technician, (p, i, n, why, m, by) => (Entry)new CountCorrected(p, i, n[0], n[1], why, m, by)),
    };

    private static Gen<Code<T>> Code<T>() => Gen.String[Gen.Char["ABCxyz019._-"], 1, 24].Select(text => new Code<T>(text));

    private static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : struct => Gen.Select(Gen.Bool, gen, (there, value) => there ? value : (T?)null);
}
