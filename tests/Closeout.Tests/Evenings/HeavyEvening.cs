using Closeout.Commands;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Store;
using Closeout.Tests.Screens;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Evenings;

/// <summary>The sample evening with 525 lb as B6's payload: the example that docs/methods.md reckons by hand.</summary>
public sealed class HeavyEvening : IDisposable
{
    private readonly SampleKiosk kiosk = With(("B6", 525));

    /// <summary>The sample evening after its answers, some vans with other payloads.</summary>
    internal static SampleKiosk With(params (string Van, double PayloadLb)[] payloads)
    {
        var kiosk = new SampleKiosk(all => SampleDay.Unlearned(all) is var given ? given with
        {
            Setup = given.Setup with { Vans = [.. given.Setup.Vans.Select(v => payloads.FirstOrDefault(p => p.Van == v.Code.Text) is { Van: not null } p ? v with { PayloadLb = p.PayloadLb } : v)] },
        } : all);
        new Rehearsal(kiosk.Session.Desk, new Attachments(kiosk.Folder)).Play(SampleDay.Answers).Should().BeEmpty();
        return kiosk;
    }

    private RestockPlan Plan => kiosk.Session.Desk.Plan;

    [Fact]
    public void Three_lines_of_priority_2_are_cut_in_the_order_of_their_chances()
    {
        Plan.Weights.SelectMany(w => w.Cut.Select(c => (w.Van.Code.Text, c.Item.Code.Text, c.Units))).Should().Equal(
            ("B6", "LED-A19-50", 35), ("B6", "LED-G25", 6), ("B6", "SHW-18F", 14));
        var weight = Plan.Weight(new("B6"));
        new[] { weight.AboardLb, weight.UncutLb, weight.LoadedLb, weight.AllowanceLb!.Value }.Select(w => Math.Round(w, 2)).Should().Equal(42.14, 85.92, 74.97, 75);
    }

    [Fact]
    public void The_globes_that_it_cannot_carry_go_where_they_are_likeliest_to_be_missed()
    {
        new[] { "B1", "B2", "B3", "B6" }.Select(v => Of(v, "LED-G25").Units).Should().Equal(14, 0, 4, 21);
        Of("B6", "LED-G25").Should().Match<RestockLine>(l => l.Sealed == 1 && l.Target == new Target(21, Basis.Payload));
        Of("B2", "LED-A19-50").Should().Match<RestockLine>(l => l.Sealed == 0 && l.FromBin == 18);
    }

    [Fact]
    public void The_sheet_says_what_was_cut_and_what_the_van_then_weighs()
    {
        var sheet = PickSheet.Text(kiosk.Session.Desk.Tonight, kiosk.Depot.Setup.Van(new Code<Van>("B6")));
        sheet.Should().Contain("CUT 14 Shower head, fixed, 1.8 gpm: too heavy for this van.").And.Contain("Weight: aboard 42.1 lb, with this load 75.0 lb of 75.0 lb for stock (payload\n  525.0 lb less crew and kit 450.0 lb).");
        sheet.Split('\n').Should().OnlyContain(line => line.Length <= 80);
        PickSheet.Html(kiosk.Session.Desk.Tonight).Should().Contain("<p>Weight: aboard 42.1 lb, with this load 75.0 lb of 75.0 lb for stock (payload 525.0 lb less crew and kit 450.0 lb).</p>");
    }

    [Fact]
    public void The_wall_says_how_many_lines_were_cut() =>
        kiosk.Show().Should().Contain("3 lines cut").And.Contain("(B6 LED-A19-50 35");

    [Fact]
    public void A_depot_that_reads_kilograms_is_told_kilograms()
    {
        using var metric = new SampleKiosk(given => given with { Setup = given.Setup with { Depot = given.Setup.Depot with { Metric = true } } });
        metric.Press("B6{F4}").Show(120).Should().Contain("of 521.6 kg for stock (payload 725.7 kg less crew and kit 204.1 kg)").And.NotContain(" lb");
    }

    private RestockLine Of(string van, string item) => Plan.Lines.Single(l => l.Van.Code.Text == van && l.Item.Code.Text == item);

    public void Dispose() => kiosk.Dispose();
}
