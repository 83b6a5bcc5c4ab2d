using Closeout.Commands;
using Closeout.Files;
using Closeout.Store;
using Closeout.Tests.Evenings;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>Every screen as text, against committed pictures. To make them anew, look at them, and commit: UPDATE_GOLDEN=1 dotnet test.</summary>
public sealed class GoldenScreens
{
    public static readonly IReadOnlyDictionary<string, string> Screens = new Dictionary<string, string>
    {
        ["wall"] = "",
        ["wall-typed"] = "B3",
        ["wall-help"] = "{F1}",
        ["who"] = "B3{Enter}",
        ["leftovers"] = "B3{Enter}{Enter}/SHW-15H{Enter}",
        ["leftovers-blind"] = "B3{Enter}{Enter}1{Enter}",
        ["leftovers-gap"] = "B3{Enter}{Enter}LED-BR30{Enter}1{Enter}4{Enter}",
        ["leftovers-above"] = "B3{Enter}{Enter}LED-BR30{Enter}9{Enter}0{Enter}0{Enter}",
        ["leftovers-find"] = "B3{Enter}{Enter}/led",
        ["leftovers-unseen"] = "B3{Enter}{Enter}*",
        ["cardboard"] = "B6{Enter}{Enter}LED-A19-27{Enter}0{Enter}23{Enter}0{Enter}LED-G25{Enter}0{Enter}9{Enter}0{Enter}**1{Enter}",
        ["mileage-again"] = "B3{Enter}{Enter}**{Enter}12{Enter}{Enter}",
        ["mileage-fuel"] = "B3{Enter}{Enter}**{Enter}28153{Enter}14.5{Enter}",
        ["damage"] = "B3{Enter}{Enter}**{Enter}28153{Enter}{Enter}",
        ["damage-report"] = "B3{Enter}{Enter}**{Enter}=d6{Enter}u{Enter}crack",
        ["damage-told"] = "B3{Enter}{Enter}**{Enter}=d6{Enter}u{Enter}crack across the view{Enter}",
        ["kit"] = "B3{Enter}{Enter}**{Enter}={Enter}{Enter}3{Enter}",
        ["weekly"] = "B2{Enter}{Enter}**{Enter}={Enter}=",
        ["sign-off"] = "B3{Enter}{Enter}LED-G25{Enter}1{Enter}4{Enter}0{Enter}**{Enter}28153{Enter}{Enter}d6{Enter}u{Enter}crack{Enter}{Enter}{Down}3{Enter}=",
        ["closed"] = "B3{Enter}{Enter}**{Enter}={Enter}={Enter}B3{Enter}",
        ["wall-signed"] = "B3{Enter}{Enter}LED-G25{Enter}1{Enter}4{Enter}0{Enter}**{Enter}28153{Enter}{Enter}d6{Enter}u{Enter}crack{Enter}{Enter}{Down}3{Enter}={Enter}",
        ["cardboard-totals"] = "B6{Enter}{Enter}LED-A19-27{Enter}0{Enter}23{Enter}0{Enter}**{Enter}{Escape}{F3}",
        ["closeout-help"] = "B3{Enter}{Enter}{F1}",
        ["evening-wall"] = "",
        ["evening-tomorrow"] = "{F2}",
        ["evening-by-item"] = "{F2}{Tab}led-g",
        ["evening-short"] = "{F2}{Tab}{Tab}",
        ["evening-why"] = "{F2}{Tab}led-g{Down}{Down}{Down}{Enter}",
        ["evening-why-high"] = "{F2}{Tab}A19-27{Down}{Enter}",
        ["evening-change"] = "{F2}led-g{F5}m{Enter}6{Enter}open house at the mill{Enter}T02{Enter}",
        ["evening-changed"] = "{F2}led-g{Down}{F5}m{Enter}6{Enter}open house at the mill{Enter}L1{Enter}{Enter}",
        ["evening-load"] = "B6{F4}{Enter}3{Enter}",
        ["evening-loaded"] = "B1{F4}=",
        ["evening-delivery"] = "{F5}CO-10Y{Enter}5",
        ["evening-correction"] = "{F5}{F5}bin{Enter}LED-G25",
        ["evening-lift"] = "B4{F7}windscreen replaced, workshop slip 12",
        ["evening-lifted"] = "B4{F7}windscreen replaced, workshop slip 12{Enter}L1{Enter}",
        ["evening-accuracy"] = "{F6}",
        ["evening-cardboard"] = "{F3}",
        ["heavy-wall"] = "",
        ["heavy-tomorrow"] = "{F2}",
        ["heavy-why"] = "{F2}{Tab}led-g{Down}{Down}{Down}{Enter}",
        ["heavy-why-already"] = "{F2}{Tab}led-g{Enter}",
        ["heavy-load"] = "B6{F4}",
        ["heavy-full"] = "B6{F4}={F2}B6",
        ["plan-help"] = "{F2}{F1}",
        ["load-help"] = "{F4}{F1}",
        ["desk-help"] = "{F5}{F1}",
    };

    public static IEnumerable<object[]> Rows =>
        from name in Screens.Keys from size in new[] { (80, 24), (120, 40) } select new object[] { name, size.Item1, size.Item2 };

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_screen_looks_as_its_picture(string name, int width, int height)
    {
        using var kiosk = Kiosk(name);
        var shown = kiosk.Press(Screens[name]).Show(width, height);
        var picture = Repository.Golden("screens", $"{name}-{width}x{height}.txt");
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
        {
            File.WriteAllText(picture, shown);
        }

        shown.Should().Be(File.ReadAllText(picture));
        shown.Split('\n').Should().OnlyContain(line => line.Length <= width);
    }

    [Fact]
    public void Every_screen_draws_at_every_size_from_one_cell_up()
    {
        foreach (var (name, keys) in Screens)
        {
            using var kiosk = Kiosk(name);
            kiosk.Press(keys);
            foreach (var (width, height) in new[] { (1, 1), (5, 2), (20, 3), (40, 5), (47, 24), (60, 10), (79, 23), (109, 24), (110, 8), (400, 100) })
            {
                kiosk.Invoking(k => k.Show(width, height)).Should().NotThrow($"{keys} at {width}x{height}");
            }
        }
    }

    [Fact]
    public void No_key_line_or_caution_is_cut_at_80_columns()
    {
        foreach (var (name, keys) in Screens)
        {
            using var kiosk = Kiosk(name);
            kiosk.Press(keys);
            var narrow = kiosk.Show().Split('\n');
            var wide = kiosk.Show(200).Split('\n');

            narrow[23].Should().Be(wide[23], $"the keys of {name} fit");
            narrow[22].Should().Be(wide[22], $"the keys of {name} fit");
            if (kiosk.Session.Model is { Said: "", Screen: Closeout.Screens.CloseoutScreen })
            {
                narrow[21].Should().Be(wide[21], $"the caution of {name} fits");
            }
        }
    }

    /// <summary>A kiosk before anybody came in, after the sample evening, or after the same one with vans that may carry little.</summary>
    private static SampleKiosk Kiosk(string name)
    {
        if (name.StartsWith("heavy-", StringComparison.Ordinal))
        {
            return HeavyEvening.With(("B1", 490), ("B4", 520), ("B6", 525));
        }

        var kiosk = new SampleKiosk();
        if (name.StartsWith("evening-", StringComparison.Ordinal))
        {
            Rehearsal.Play(kiosk.Session.Desk, new Attachments(kiosk.Folder), EveningAnswers.Of(DayFolder.Read(Repository.SampleDay).Evening)).Should().BeEmpty();
        }

        return kiosk;
    }
}
