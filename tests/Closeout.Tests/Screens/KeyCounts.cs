using Closeout.Facts;
using Closeout.Screens;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>
/// How many keys the evening's tasks take, and how long by the keystroke-level model of Card, Moran and Newell, "The keystroke-level model
/// for user performance time with interactive systems", Communications of the ACM 23 (1980) 396-410: K, a key of an average non-secretary
/// typist, 0.28 s; M, making up one's mind before a step, 1.35 s; H, a hand to the keyboard, 0.40 s. docs/trials.md has the figures.
/// </summary>
public sealed class KeyCounts : IDisposable
{
    private const double K = 0.28;
    private const double M = 1.35;
    private const double H = 0.40;

    private readonly SampleKiosk kiosk = new(typesPins: false);

    /// <summary>Before the day's visit reports are loaded.</summary>
    private readonly SampleKiosk early = new(given => given with { Used = given.Used with { ByVan = [] } }, typesPins: false);

    [Fact]
    public void An_untouched_van_takes_12_keys_with_its_PIN()
    {
        var minds = Play(early, "B1{Enter}", "{F4}", "n", early.PinOf("T02"), "{Enter}");

        early.Depot.Shift(new("B1"))!.IsClosed.Should().BeTrue(early.Show());
        early.Session.Model.Screen.Should().BeOfType<WallScreen>();
        early.Keys.Should().BeLessThanOrEqualTo(12);
        Says(early, "untouched van", minds);
    }

    [Fact]
    public void A_clean_van_with_three_spot_counts_takes_30_keys_or_fewer_with_its_PIN()
    {
        var minds = Play(early, "T02{Enter}") + Spots(early);
        minds += Play(early, "*", "=", "298{Enter}", "{Enter}", "n", "=", early.PinOf("T02") + "{Enter}");

        early.Depot.Shift(new("B1"))!.IsClosed.Should().BeTrue(early.Show());
        early.Entries.OfType<LeftoverCounted>().Should().HaveCount(3).And.OnlyContain(c => c.Gap == 0);
        early.Keys.Should().BeLessThanOrEqualTo(30);
        Says(early, "clean van", minds);
    }

    [Fact]
    public void What_visits_used_is_asked_next_and_is_one_key_each_where_the_count_agrees()
    {
        var minds = Play(kiosk, "T02{Enter}") + Spots(kiosk);
        for (var left = Reported(kiosk); left > 0; left--)
            minds += Play(kiosk, "{Enter}");

        minds += Play(kiosk, "*", "=", "298{Enter}", "{Enter}", "n", "=", kiosk.PinOf("T02") + "{Enter}");

        kiosk.Depot.Shift(new("B1"))!.IsClosed.Should().BeTrue(kiosk.Show());
        kiosk.Entries.OfType<LeftoverCounted>().Should().HaveCountGreaterThanOrEqualTo(6);
        Says(kiosk, "clean van, used items as visits say", minds);
    }

    [Fact]
    public void An_untidy_van_with_six_items_a_box_lost_and_a_dent()
    {
        var minds = Play(kiosk, "T02{Enter}") + Spots(kiosk);
        foreach (var item in Leftovers.ToCount(kiosk.Depot, kiosk.Depot.Shift(new("B1"))!).Where(i => !kiosk.Depot.Shift(new("B1"))!.Counts.ContainsKey(i.Code)).Take(6))
            minds += Play(kiosk, "0{Enter}", "2{Enter}", "0{Enter}");

        minds += Play(kiosk, "**", "0{Enter}", "=", "41298{Enter}", "11.2{Enter}", "{Enter}!", "d2{Enter}", "r{Enter}", "dent in the rear door{Enter}", "{Enter}", "L1{Enter}", "{Enter}", "{Enter}", "=", kiosk.PinOf("T02") + "{Enter}");

        kiosk.Depot.Shift(new("B1"))!.IsClosed.Should().BeTrue(kiosk.Show());
        Says(kiosk, "untidy van", minds);
    }

    [Fact]
    public void Four_vans_are_excused_with_one_form()
    {
        var minds = Play(kiosk, "B1{F7}x", "B1 B2 B4 B6{Enter}", "{Enter}", "in the shop{Enter}", "L1{Enter}", kiosk.PinOf("L1") + "{Enter}");

        kiosk.Entries.OfType<VanExplained>().Select(e => e.Van.Text).Should().Equal("B1", "B2", "B4", "B6");
        Says(kiosk, "excuse four vans", minds);
    }

    [Fact]
    public void Two_holds_are_lifted_one_by_one_and_the_leads_code_is_typed_once()
    {
        var held = new SampleKiosk();
        using var _ = held;
        held.Press("B4{F7}hsteering pulls{Enter}L1{Enter}hbrakes squeal{Enter}{Enter}");
        held.Depot.Vans.Placed.Should().HaveCount(2);
        var before = held.Keys;

        held.Press("l1{Enter}belt replaced{Enter}{Enter}lpads replaced{Enter}{Enter}");

        held.Entries.OfType<HoldsLifted>().Should().HaveCount(2);
        Holds("lift two holds", held.Keys - before);
    }

    [Fact]
    public void More_of_an_item_for_a_van()
    {
        var minds = Play(kiosk, "{F2}", "led-g{F5}", "m{Enter}", "20{Enter}", "open house{Enter}", "L1{Enter}", kiosk.PinOf("L1") + "{Enter}");

        kiosk.Entries.OfType<PlanOverridden>().Should().ContainSingle(kiosk.Show());
        Says(kiosk, "more of an item", minds);
    }

    [Fact]
    public void Last_weeks_recycling()
    {
        var minds = Play(kiosk, "{F3}", "{Tab}");

        kiosk.Show().Should().Contain("2026-W46");
        Says(kiosk, "last week's recycling", minds);
    }

    public void Dispose()
    {
        kiosk.Dispose();
        early.Dispose();
    }

    /// <summary>Items that visits used and nobody counted yet.</summary>
    private static int Reported(SampleKiosk at) => at.Depot.Shift(new("B1"))! is var shift
        ? at.Depot.Setup.Items.Count(i => !shift.Counts.ContainsKey(i.Code) && at.Depot.Reported(shift.Van, i.Code) > 0)
        : 0;

    /// <summary>Counts the blind items as they lie in the van.</summary>
    private static int Spots(SampleKiosk at)
    {
        var minds = 0;
        var shift = at.Depot.Shift(at.Closeout.Van)!;
        foreach (var item in Leftovers.ToCount(at.Depot, shift).Select(i => i.Code).Where(shift.SpotItems.Contains))
        {
            var c = at.Depot.Setup.Item(item).UnitsPerCarton;
            var booked = Leftovers.BeforeOf(shift, at.Depot.Setup.Item(item));
            var left = booked.Units(c) - (at.Depot.Reported(shift.Van, item) ?? 0);
            var sealedNow = Math.Min(booked.Sealed, left / c);
            minds += Play(at, booked.Sealed > 0 ? $"{sealedNow}{{Enter}}" : "", $"{left - (sealedNow * c)}{{Enter}}");
        }

        return minds;
    }

    /// <returns>How often somebody makes up his mind: once before each of these.</returns>
    private static int Play(SampleKiosk at, params string[] chunks)
    {
        foreach (var keys in chunks)
            at.Press(keys);

        return chunks.Count(c => c.Length > 0);
    }

    /// <summary>The docs say the same number.</summary>
    private static void Says(SampleKiosk at, string task, int minds) =>
        Trials().Should().Contain($"| {task} | {at.Keys} | {H + (at.Keys * K) + (minds * M):0} s |", "docs/trials.md has the figures");

    private static void Holds(string task, int keys) => Trials().Should().Contain($"| {task} | {keys} |", "docs/trials.md has the figures");

    private static string Trials() => File.ReadAllText(Path.Combine(Repository.Root, "docs", "trials.md"));
}
