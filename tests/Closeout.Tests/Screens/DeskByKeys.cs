using Closeout.Facts;
using Closeout.Screens;
using Closeout.Screens.Forms;
using Closeout.Screens.People;
using Closeout.Screens.Yard;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>The stock desk and the keys of the wall, on the sample day before anybody came in.</summary>
public sealed class DeskByKeys : IDisposable
{
    private readonly SampleKiosk kiosk = new();

    [Theory]
    [InlineData("{F1}", typeof(HelpScreen))]
    [InlineData("{F2}", typeof(PlanScreen))]
    [InlineData("{F3}", typeof(YardScreen))]
    [InlineData("{F4}", typeof(LoadScreen))]
    [InlineData("{F5}", typeof(FormScreen))]
    [InlineData("{F6}", typeof(AccuracyScreen))]
    [InlineData("{F9}", typeof(PeopleScreen))]
    public void Each_key_of_the_wall_opens_its_screen_and_Esc_leads_back(string key, Type screen)
    {
        kiosk.Press(key).Session.Model.Screen.Should().BeOfType(screen);
        kiosk.Press("{F1}{Escape}").Session.Model.Screen.Should().BeOfType(screen == typeof(HelpScreen) ? typeof(WallScreen) : screen, "help leads back to where one was");
        kiosk.Press("{Escape}").Session.Model.Screen.Should().BeOfType<WallScreen>();
        kiosk.Entries.Should().BeEmpty();
    }

    [Theory]
    [InlineData("{F2}{Escape}")]
    [InlineData("{F2}led{Escape}{Escape}")]
    [InlineData("{F3}{Tab}{Escape}")]
    [InlineData("{F4}{Escape}")]
    [InlineData("{F5}{Escape}")]
    [InlineData("{F6}{Escape}")]
    [InlineData("{F7}{Escape}")]
    [InlineData("{F8}{Escape}")]
    [InlineData("{F8}{F5}{Escape}")]
    [InlineData("{F9}{Down}{Escape}")]
    [InlineData("{F1}{Escape}")]
    public void Back_on_the_wall_the_same_van_is_chosen_still(string away)
    {
        kiosk.Press("{Down}{Down}{Down}" + away);
        kiosk.Session.Model.Screen.Should().Be(new WallScreen(3));

        kiosk.Press("{F7}").Session.Model.Screen.Should().BeOfType<VanScreen>().Which.Van.Should().Be(kiosk.Depot.Setup.Vans[3].Code);
    }

    [Fact]
    public void A_code_half_typed_on_the_wall_is_gone_after_another_screen_and_the_van_that_it_found_is_chosen()
    {
        kiosk.Press("B4{F2}{Escape}B5{Enter}");

        kiosk.Session.Model.Said.Should().BeEmpty();
        kiosk.Session.Model.Screen.Should().BeOfType<WhoScreen>().Which.Van.Text.Should().Be("B5");
    }

    [Fact]
    public void A_delivery_is_recorded_and_the_form_is_ready_for_the_next_item()
    {
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}T02{Enter}");
        var entry = kiosk.Entries.Should().ContainSingle().Which.Should().BeOfType<DeliveryReceived>().Which;
        (entry.Item.Text, entry.Cartons, entry.Ordered, entry.By.Text).Should().Be(("CO-10Y", 5, 5, "T02"));
        kiosk.Session.Model.Screen.Should().BeOfType<FormScreen>().Which.Form.IsUntouched.Should().BeTrue();
    }

    [Theory]
    [InlineData("bin{Enter}LED-G25{Enter}{Enter}7{Enter}spilled{Enter}T02{Enter}", "bin", 7)]
    [InlineData("{Enter}LED-G25{Enter}2{Enter}{Enter}counted twice{Enter}T02{Enter}", "shelf", 24)]
    [InlineData("B3{Enter}LED-G25{Enter}1{Enter}{Enter}counted twice{Enter}T02{Enter}", "B3 sealed", 12)]
    [InlineData("B3{Enter}LED-G25{Enter}{Enter}5{Enter}counted twice{Enter}T02{Enter}", "B3 loose", 5)]
    public void A_corrected_count_is_recorded_with_its_place(string keys, string place, int units)
    {
        kiosk.Press("{F5}{F5}" + keys);
        var entry = kiosk.Entries.Should().ContainSingle(kiosk.Session.Model.Said).Which.Should().BeOfType<CountCorrected>().Which;
        (entry.Place.ToString(), entry.Counted).Should().Be((place, units));
    }

    [Theory]
    [InlineData("{F5}{Enter}{Enter}{Enter}", "code on the carton label")]
    [InlineData("{F5}CO-10Y{Enter}{Enter}{Enter}", "how many cartons came")]
    [InlineData("{F5}CO-10Y{Enter}5{Enter}{Enter}", "your own code")]
    [InlineData("{F5}CO-10Y{Enter}5{Enter}T99{Enter}", "Nobody here has the code T99")]
    [InlineData("{F5}CO-11{Enter}", "No item has the code CO-11")]
    [InlineData("{F5}CO-11{Tab}", "No item has the code CO-11")]
    [InlineData("{F5}{Tab}5{Enter}T02{Enter}", "code on the carton label")]
    [InlineData("{F8}{F5}2026-11-31{Enter}", "\"2026-11-31\" is no date")]
    [InlineData("{F5}{F5}{Enter}LED-G25{Enter}2{Enter}3{Enter}why{Enter}T02{Enter}", "one count at a time")]
    [InlineData("{F5}{F5}{Enter}LED-G25{Enter}{Enter}3{Enter}why{Enter}T02{Enter}", "sealed cartons: type those")]
    [InlineData("{F5}{F5}bin{Enter}LED-G25{Enter}3{Enter}{Enter}why{Enter}T02{Enter}", "loose units: type those")]
    [InlineData("{F5}{F5}B9{Enter}", "No van has the code B9")]
    [InlineData("{F5}{F5}{Enter}LED-G25{Enter}3{Enter}{Enter}{Enter}", "Say why")]
    [InlineData("{F2}led-g{F5}{Enter}6{Enter}why{Enter}{Enter}", "type the lead's code")]
    [InlineData("{F2}led-g{F5}{Enter}{Enter}why{Enter}L1{Enter}", "how many units")]
    [InlineData("{F2}led-g{F5}q{Enter}6{Enter}why{Enter}L1{Enter}", "T, M, X or W")]
    [InlineData("{F2}led-g{F5}w{Enter}{Enter}why{Enter}L1{Enter}", "Nothing was changed")]
    [InlineData("{F2}led-g{F5}m{Enter}6{Enter}why{Enter}T02{Enter}", "is not a lead")]
    public void What_is_missing_or_wrong_is_said_and_the_form_stays(string keys, string said)
    {
        kiosk.Press(keys);
        kiosk.Session.Model.Said.Should().Contain(said);
        kiosk.Entries.Should().BeEmpty();
        kiosk.Session.Model.Screen.Should().BeOfType<FormScreen>();
    }

    [Fact]
    public void A_lead_changes_a_line_sees_it_in_the_plan_and_withdraws_it()
    {
        kiosk.Press("{F2}led-g{F5}t{Enter}20{Enter}open house{Enter}L1{Enter}");
        var change = kiosk.Entries.Should().ContainSingle().Which.Should().BeOfType<PlanOverridden>().Which;
        (change.Kind, change.Units, change.Reason, change.Date).Should().Be((OverrideKind.Target, 20, "open house", kiosk.Session.Desk.Plan.Date));
        kiosk.Show().Should().Contain(" lead ");

        kiosk.Press("{Enter}").Show().Should().Contain("L1 set the target to 20: open house");
        kiosk.Press("{F5}w{Enter}{Enter}called off{Enter}L1{Enter}").Entries[^1].Should().BeOfType<OverrideWithdrawn>();
        kiosk.Depot.Planning.Overrides.Should().BeEmpty();
    }

    [Fact]
    public void A_van_that_was_excluded_can_be_taken_back_by_keys()
    {
        kiosk.Press("{F2}Bittern{F5}x{Enter}{Enter}in the workshop{Enter}L1{Enter}{Escape}{Escape}");
        kiosk.Depot.Planning.Overrides.Should().ContainSingle();

        kiosk.Press("{F2}Bittern{F5}w{Enter}{Enter}repaired{Enter}L1{Enter}");
        kiosk.Depot.Planning.Overrides.Should().BeEmpty("what is shown nowhere cannot be withdrawn");
    }

    public void Dispose() => kiosk.Dispose();
}
