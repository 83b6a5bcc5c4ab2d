using Closeout.Html;
using Closeout.Tests.Screens;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

/// <summary>The pages as a real browser draws them: from a phone to a big display, light and dark.</summary>
public sealed class InABrowser(Browser browser) : IClassFixture<Browser>
{
    /// <summary>
    /// What reaches out of the window to the side, but for tables that scroll by themselves; words of a chart that are cut off; and whether
    /// the window would have to scroll sideways.
    /// </summary>
    private const string TooWide =
        """
        [...document.body.querySelectorAll('*')].filter(e => {
            const at = e.getBoundingClientRect(), chart = e.tagName === 'text' ? e.closest('svg').getBoundingClientRect() : { left: 0, right: innerWidth };
            return !e.closest('.wide table') && (at.right > chart.right + 0.5 || at.left < chart.left - 0.5);
          }).map(e => e.tagName + ' ' + e.textContent.slice(0, 40)).concat(
            document.documentElement.scrollWidth > innerWidth ? ['the page: ' + document.documentElement.scrollWidth] : [])
        """;

    /// <summary>Every pair of colours in which text is drawn: letters, what lies behind them, and some of the text.</summary>
    private const string Pairs =
        """
        (() => {
          const hex = c => '#' + c.match(/\d+/g).slice(0, 3).map(n => (+n).toString(16).padStart(2, '0')).join('');
          const clear = c => c === 'transparent' || /^rgba\(.*, 0\)$/.test(c);
          const behind = e => { for (; e; e = e.parentElement) { const c = getComputedStyle(e).backgroundColor; if (!clear(c)) return hex(c); } return null; };
          const pairs = new Map(), walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const text = walker.currentNode.textContent.trim(), e = walker.currentNode.parentElement;
            if (text === '' || e.getClientRects().length === 0 || e.tagName === 'title') continue;
            const style = getComputedStyle(e), letters = hex(e instanceof SVGElement ? style.fill : style.color);
            pairs.set(letters + behind(e), [letters, behind(e), text]);
          }
          return [...pairs.values()];
        })()
        """;

    private static readonly (int Width, int Height)[] Sizes = [(360, 740), (1280, 800), (3840, 2160)];

    /// <summary>The pages of the sample evening, by name.</summary>
    private static readonly Lazy<IReadOnlyDictionary<string, string>> Made = new(() =>
    {
        using var kiosk = SampleKiosk.Evening();
        return SamplePages.Of(kiosk);
    });

    public static TheoryData<string> Pages => [.. SamplePages.Names];

    [NeedsTheory(Needs.Chromium)]
    [MemberData(nameof(Pages))]
    public void A_page_fits_every_width_and_all_of_its_text_is_read_light_and_dark(string page)
    {
        foreach (var dark in new[] { false, true })
        {
            foreach (var (width, height) in Sizes)
            {
                browser.Open(Made.Value[page], width, height, dark);

                browser.Ask(TooWide).EnumerateArray().Should().BeEmpty($"of {page} at {width}");
                var pairs = browser.Ask(Pairs).EnumerateArray().Select(p => p.EnumerateArray().Select(v => v.GetString()!).ToList()).ToList();
                pairs.Should().NotBeEmpty();
                pairs.Should().OnlyContain(p => Wcag.Contrast(p[0], p[1]) >= Wcag.Text, $"of {page} at {width}, {(dark ? "dark" : "light")}");
                browser.Ask("getComputedStyle(document.body).backgroundColor").GetString().Should().Be(dark ? "rgb(0, 0, 0)" : "rgb(255, 255, 255)");
            }
        }
    }

    [NeedsFact(Needs.Chromium)]
    public void The_wall_is_one_column_on_a_phone_and_several_with_large_letters_in_the_bay()
    {
        Wall(360).Should().Match<(int Columns, double Code)>(w => w.Columns == 1 && w.Code >= 20);
        Wall(1280).Columns.Should().BeInRange(2, 4);
        Wall(3840).Should().Match<(int Columns, double Code)>(w => w.Columns >= 4 && w.Code >= 70);

        (int Columns, double Code) Wall(int width)
        {
            browser.Open(Made.Value["wall"], width, 800, dark: false);
            return (browser.Ask("new Set([...document.querySelectorAll('.van')].map(v => v.getBoundingClientRect().left)).size").GetInt32(),
                browser.Ask("parseFloat(getComputedStyle(document.querySelector('.van h2 b')).fontSize)").GetDouble());
        }
    }

    /// <summary>28 items are three sheets of ten labels; what else is one sheet of paper fits one.</summary>
    [NeedsTheory(Needs.Chromium)]
    [InlineData("labels", 3)]
    [InlineData("stow", 1)]
    [InlineData("incident", 1)]
    [InlineData("weekly", 1)]
    public void A_page_to_print_takes_as_many_sheets_of_paper_as_it_says(string page, int sheets)
    {
        browser.Open(Made.Value[page], 1280, 800, dark: true);
        browser.Sheets().Should().Be(sheets);
    }

    [NeedsFact(Needs.Chromium)]
    public void A_label_is_as_large_on_the_screen_as_on_paper()
    {
        browser.Open(Made.Value["labels"], 1280, 800, dark: true);

        // A CSS inch is 96 pixels: https://www.w3.org/TR/css-values-3/#absolute-lengths
        browser.Ask("[...document.querySelectorAll('.label')].every(l => { const r = l.getBoundingClientRect(); return r.width === 4 * 96 && r.height === 2 * 96; })").GetBoolean().Should().BeTrue();
        browser.Ask("[...document.querySelectorAll('.label *')].every(e => e.getBoundingClientRect().bottom <= e.closest('.label').getBoundingClientRect().bottom)").GetBoolean().Should().BeTrue();
    }

    [NeedsFact(Needs.Chromium)]
    public void Names_that_are_markup_stay_text_and_run_nothing()
    {
        const string sly = "<img src=x onerror=\"document.title='sly'\"><script>document.title='sly'</script>\"'><b>";
        var setup = Tiny.Setup with { Depot = Tiny.Settings with { Name = sly }, Vans = [Tiny.Van("B1", 1, sly, 1000)] };
        browser.Open(WallPage.Html(new(Tiny.Opened(setup: setup)), new(Tiny.FiveOClock)), 1280, 800, dark: false);

        browser.Ask("document.title").GetString().Should().Be($"{sly}, bay wall");
        browser.Ask("document.querySelectorAll('img, script').length").GetInt32().Should().Be(0);
        browser.Ask("document.querySelector('.van h2').textContent").GetString().Should().Contain(sly);
    }

    [NeedsFact(Needs.Chromium)]
    public void A_page_that_is_too_wide_or_too_pale_would_be_found()
    {
        browser.Open("<!DOCTYPE html><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/><body style=\"background: #fff\"><p style=\"width: 500px; color: #888\">pale", 360, 740, dark: false);

        browser.Ask(TooWide).EnumerateArray().Select(e => e.GetString()).Should().Contain("P pale");
        var pair = browser.Ask(Pairs).EnumerateArray().Single().EnumerateArray().Select(v => v.GetString()!).ToList();
        pair.Should().Equal("#888888", "#ffffff", "pale");
        Wcag.Contrast(pair[0], pair[1]).Should().BeLessThan(Wcag.Text);
    }
}
