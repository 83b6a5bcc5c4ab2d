using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Closeout.Tests.Evenings;
using Closeout.Words;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>Every screen as text, against committed pictures. To make them anew, look at them, and commit: UPDATE_GOLDEN=1 dotnet test.</summary>
public sealed partial class GoldenScreens
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
        ["cardboard-waste"] = "B3{Enter}{Enter}**4{Enter}1{Enter}3{Enter}2.5",
        ["mileage-again"] = "B3{Enter}{Enter}**=12{Enter}{Enter}",
        ["mileage-swapped"] = "B3{Enter}{Enter}**=28513{Enter}{Enter}",
        ["mileage-wrong-fuel"] = "B3{Enter}{Enter}**=28153{Enter}14.5{Enter}regular{Enter}",
        ["mileage-all-wrong"] = "B3{Enter}{Enter}**=28513{Enter}14.5{Enter}regular{Enter}",
        ["mileage-fuel"] = "B3{Enter}{Enter}**=28153{Enter}14.5{Enter}",
        ["damage"] = "B3{Enter}{Enter}**=28153{Enter}{Enter}",
        ["damage-note"] = "B3{Enter}{Enter}**==d3{Enter}n{Enter}scratch",
        ["damage-report"] = "B3{Enter}{Enter}**==d6{Enter}u{Enter}crack",
        ["damage-undrivable"] = "B3{Enter}{Enter}**==d2{Enter}r{Enter}door does not lock{Enter}n{Enter}L1, by telephone{Enter}16:4",
        ["damage-told"] = "B3{Enter}{Enter}**==d6{Enter}u{Enter}crack across the view{Enter}{Enter}L1{Enter}16:50{Enter}",
        ["kit"] = "B3{Enter}{Enter}**==n{Enter}3{Enter}",
        ["kit-dates"] = "B3{Enter}{Enter}**==n{Down}{Down}{Down}{Down}{Down}{Down}{Down}{Down}{Down}{Down}2026-11-18{Enter}",
        ["weekly"] = "B2{Enter}{Enter}**==n=",
        ["weekly-report"] = "B2{Enter}{Enter}**==n={Down}{Down}{Down}{Down}{Down}n{Enter}",
        ["weekly-told"] = "B2{Enter}{Enter}**==n={Down}{Down}{Down}{Down}{Down}n{Enter}{Enter}left blade torn{Enter}{Enter}{Enter}{Enter}",
        ["weekly-not-told"] = "B2{Enter}{Enter}**==n={Down}{Down}{Down}{Down}{Down}n{Enter}{Escape}={Enter}{Enter}{Enter}",
        ["attach"] = "B2{Enter}{Enter}**==n={F8}",
        ["attached"] = "B2{Enter}{Enter}**==n={F8}{Enter}",
        ["attach-again"] = "B2{Enter}{Enter}**==n={F8}{Enter}{F8}stick/wip",
        ["sign-off"] = "B3{Enter}{Enter}LED-G25{Enter}1{Enter}4{Enter}0{Enter}**=28153{Enter}{Enter}d6{Enter}u{Enter}crack{Enter}{Enter}L1{Enter}16:50{Enter}{Enter}{Down}3{Enter}=",
        ["closed"] = "B3{Enter}{Enter}**{Enter}=n={Enter}B3{Enter}",
        ["wall-signed"] = "B3{Enter}{Enter}LED-G25{Enter}1{Enter}4{Enter}0{Enter}**=28153{Enter}{Enter}d6{Enter}u{Enter}crack{Enter}{Enter}L1{Enter}16:50{Enter}{Enter}{Down}3{Enter}={Enter}",
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
        ["evening-van"] = "B4{F7}",
        ["evening-van-out"] = "B5{F7}",
        ["evening-van-held-twice"] = "B6{F7}",
        ["evening-lift"] = "B4{F7}lwindshield replaced, workshop slip 12",
        ["evening-lifted"] = "B4{F7}lwindshield replaced, workshop slip 12{Enter}L1{Enter}",
        ["evening-hold"] = "B1{F7}hsteering pulls to the left",
        ["evening-held"] = "B1{F7}hsteering pulls to the left{Enter}L1{Enter}{Escape}",
        ["evening-close"] = "B5{F7}c{Enter}latch replaced",
        ["evening-closed"] = "B5{F7}c{Enter}latch replaced{Enter}L1{Enter}",
        ["evening-write-off"] = "B6{F7}w{Enter}{Enter}never found",
        ["evening-check"] = "B4{F7}k",
        ["evening-reopen"] = "B4{F7}r",
        ["evening-for-somebody"] = "B5{F7}b",
        ["evening-excuse"] = "B5{F7}x",
        ["evening-move"] = "B4{F7}m",
        ["evening-day-book"] = "{F8}",
        ["evening-day-book-of"] = "{F8}led-g",
        ["evening-day-book-whole"] = "{F8}led-g{Down}",
        ["evening-end-day"] = "{F8}{F5}",
        ["evening-accuracy"] = "{F6}",
        ["evening-cardboard"] = "{F3}",
        ["evening-weeks"] = "{F3}{Tab}",
        ["evening-months"] = "{F3}{Tab}{Tab}",
        ["evening-days"] = "{F3}{Tab}{Tab}{Tab}",
        ["evening-vans"] = "{F3}{Tab}{Tab}{Tab}{Tab}",
        ["evening-items"] = "{F3}{Tab}{Tab}{Tab}{Tab}{Tab}",
        ["evening-waste"] = "{F3}{Tab}{Tab}{Tab}{Tab}{Tab}{Tab}",
        ["evening-depot-boxes"] = "B1{F4}={Escape}{F3}b",
        ["evening-opened-here"] = "B1{F4}={Escape}{F3}",
        ["evening-pickup"] = "{F3}p80{Enter}610",
        ["evening-picked-up"] = "{F3}p80{Enter}610{Enter}T02{Enter}",
        ["evening-ship"] = "{F3}s{Enter}lamp recycler, slip 7",
        ["evening-depot-write-off"] = "{F3}w",
        ["heavy-wall"] = "",
        ["heavy-tomorrow"] = "{F2}",
        ["heavy-why"] = "{F2}{Tab}led-g{Down}{Down}{Down}{Enter}",
        ["heavy-why-already"] = "{F2}{Tab}led-g{Enter}",
        ["heavy-load"] = "B6{F4}",
        ["heavy-loaded"] = "B6{F4}={F2}B6",
        ["people"] = "{F9}{Down}{Down}",
        ["pin-ask"] = "B3{Enter}{Enter}**{Enter}=n=T14{Enter}4815",
        ["pin-waits"] = "B3{Enter}{Enter}**{Enter}=n=T14{Enter}481516{Enter}000000{Enter}",
        ["pin-first"] = "B3{Enter}{Enter}**{Enter}=n={Enter}",
        ["pin-issue"] = "{F9}{Down}{Down}{Down}i",
        ["pin-issue-help"] = "{F9}{Down}{Down}{Down}i{F1}",
        ["pin-help"] = "B3{Enter}{Enter}**{Enter}=n={Enter}{F1}",
        ["plan-help"] = "{F2}{F1}",
        ["load-help"] = "{F4}{F1}",
        ["desk-help"] = "{F5}{F1}",
        ["van-help"] = "B4{F7}{F1}",
        ["yard-help"] = "{F3}{F1}",
        ["attach-help"] = "B2{Enter}{Enter}{F8}{F1}",
        ["day-book-help"] = "{F8}{F1}",
        ["handover"] = "B3{Enter}{Enter}**{Enter}=n=",
        ["handover-no"] = "B3{Enter}{Enter}**{Enter}=n=yn",
        ["handover-summary"] = "B3{Enter}{Enter}**{Enter}=n=ynmud on the floor{Enter}",
        ["pick-list"] = "{F5}led{Down}",
        ["pick-reason"] = "B3{F7}x{Enter}{Enter}{Down}",
        ["take-back"] = "{F8}{F4}",
        ["who-name"] = "B3{Enter}in",
    };

    /// <summary>Sizes down to one cell, and a very large one.</summary>
    private static readonly (int Width, int Height)[] Odd = [(1, 1), (5, 2), (20, 3), (40, 5), (47, 24), (60, 10), (79, 23), (109, 24), (110, 8), (400, 100)];

    private static readonly ConcurrentDictionary<string, Lazy<DrawnScreen>> All = new();

    public static IEnumerable<object[]> Rows =>
        from name in Screens.Keys from size in new[] { (80, 24), (120, 40) } select new object[] { name, size.Item1, size.Item2 };

    public static IEnumerable<object[]> InLanguages => from row in Rows from language in Language.Codes select row.Append(language).ToArray();

    [Theory]
    [MemberData(nameof(InLanguages))]
    public void A_screen_looks_as_its_picture(string name, int width, int height, string language)
    {
        var shown = Of(name, language).At(width, height);
        var picture = Repository.Golden(language == "en" ? "screens" : $"screens-{language}", $"{name}-{width}x{height}.txt");
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
            foreach (var (width, height) in Odd)
            {
                Of(name).Invoking(d => d.At(width, height)).Should().NotThrow($"{keys} at {width}x{height}");
            }
        }
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void No_key_line_or_caution_is_cut_at_80_columns(string language)
    {
        var cut = new List<string>();
        foreach (var drawn in Screens.Keys.Select(name => (Name: name, Of: Of(name, language))))
        {
            var narrow = drawn.Of.At(80, 24).Split('\n');
            var wide = drawn.Of.At(200, 24).Split('\n');
            cut.AddRange(new[] { 23, 22, 21 }.Where(row => (row > 21 || drawn.Of.HasCaution) && narrow[row] != wide[row])
                .Select(row => $"{drawn.Name}: {wide[row]}"));
        }

        string.Join('\n', cut).Should().BeEmpty();
    }

    /// <summary>Words that no Spanish sentence has; what the depot's own files say stays as it is.</summary>
    [Fact]
    public void No_English_is_left_in_Spanish()
    {
        var english = new Regex(@"\b(not|are|was|were|your|type|press|missing|held|unchanged|counted|loaded|since|boxes|asks|cannot)\b", RegexOptions.IgnoreCase);
        Screens.Keys.SelectMany(name => Of(name, "es").At(120, 40).Split('\n').Where(l => english.IsMatch(Own().Replace(l, ""))).Select(l => $"{name}: {l}"))
            .Should().BeEmpty();
    }

    /// <summary>What stands in files of the sample and of the tests.</summary>
    [GeneratedRegex("door does not lock|windshield, unsafe|closeout [a-z-]+")]
    private static partial Regex Own();

    /// <summary>The same screens with colors: each word that has a tone.</summary>
    [Fact]
    public void A_screens_tones_are_as_committed()
    {
        var tones = string.Concat(Rows.Select(r => $"{r[0]} {r[1]}x{r[2]} | {Of((string)r[0]).TonesAt((int)r[1], (int)r[2])}\n"));
        var path = Repository.Golden("screens", "tones.txt");
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
            File.WriteAllText(path, tones);

        tones.Should().Be(File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    /// <summary>The screen, drawn once at all sizes for whichever test asks first.</summary>
    private static DrawnScreen Of(string name, string language = "en") => All.GetOrAdd($"{name} {language}", _ => new(() => Language.Choosing(language, () =>
    {
        using var kiosk = Kiosk(name);
        kiosk.Press(Screens[name]);
        return new DrawnScreen(kiosk, [(80, 24), (120, 40), (200, 24), .. Odd]);
    }))).Value;

    /// <summary>A kiosk before anybody came in, after the sample evening, or after the same one with vans that may carry little.</summary>
    private static SampleKiosk Kiosk(string name) => name switch
    {
        _ when name.StartsWith("heavy-", StringComparison.Ordinal) => HeavyEvening.With(("B1", 490), ("B4", 520), ("B6", 525)),
        _ when name.StartsWith("evening-", StringComparison.Ordinal) => SampleKiosk.Evening(),
        _ when name.StartsWith("attach", StringComparison.Ordinal) => WithInbox(),
        _ when name.StartsWith('p') => new SampleKiosk(typesPins: false, without: "T07"),
        _ when name.StartsWith("handover", StringComparison.Ordinal) => new SampleKiosk(given => given with
        {
            Setup = given.Setup with { Handover = [new(new("SWEPT"), "Swept and emptied?"), new(new("PLACE"), "Everything in its place?")] },
        }),
        _ => new SampleKiosk(),
    };

    /// <summary>A picture lies in the book's inbox.</summary>
    private static SampleKiosk WithInbox()
    {
        var kiosk = new SampleKiosk();
        Directory.CreateDirectory(kiosk.Folder.Inbox);
        File.Copy(Path.Combine(Repository.SampleDay, "photos", "b2-wiper.png"), Path.Combine(kiosk.Folder.Inbox, "b2-wiper.png"));
        return kiosk;
    }
}
