using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>What once let a wrong thing into the book: each trap played at the kiosk.</summary>
public sealed class TrapsByKeys
{
    private const string Mileage = "B3{Enter}{Enter}**=";

    [Theory]
    [InlineData("9,8", "9.8")]
    [InlineData("9.8", "9.8")]
    [InlineData("12", "12")]
    public void Fuel_is_typed_with_a_point_or_a_comma(string typed, string gallons)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press($"{Mileage}28153{{Enter}}{typed}{{Enter}}{{Enter}}!");

        kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle().Which.FuelGal.Should().Be(decimal.Parse(gallons, System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("1.2", ".", "1.2")]
    [InlineData("1,2", ",", "1,2")]
    [InlineData("-", "", "")]
    [InlineData("9", "x", "9")]
    [InlineData("9.812", "5", "9.812")]
    public void What_is_no_number_is_refused_at_once_and_what_was_typed_stays(string typed, string then, string stays)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press($"{Mileage}28153{{Enter}}{typed}{then}");

        kiosk.Session.Model.Said.Should().NotBeEmpty();
        kiosk.Closeout.Form["fuel"].Text.Should().Be(stays);
    }

    [Fact]
    public void A_mark_between_the_thousands_of_an_odometer_is_refused_at_once()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(Mileage + "28,15").Session.Model.Said.Should().Contain("At most 1 digit after the decimal mark. Type thousands without a mark.");

        kiosk.Closeout.Form["odometer"].Text.Should().Be("28,1");
    }

    [Fact]
    public void Of_fuel_0_means_none()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(Mileage + "28153{Enter}0{Enter}{Enter}");

        kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle().Which.FuelGal.Should().BeNull();
    }

    [Fact]
    public void Enter_pressed_by_habit_confirms_no_doubt_and_no_damage()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(Mileage + "12{Enter}{Enter}{Enter}{Enter}{Enter}{Enter}{Enter}");

        kiosk.Entries.Should().NotContain(e => e is MileageLogged || e is DamageConfirmed);
        kiosk.Press("!{Enter}{Enter}{Enter}").Entries.OfType<MileageLogged>().Should().ContainSingle();
        kiosk.Entries.OfType<DamageConfirmed>().Should().BeEmpty();
        kiosk.Session.Model.Said.Should().Contain("press N for none or D");
    }

    [Fact]
    public void What_was_typed_before_a_doubt_could_be_seen_is_dropped()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Session.DropsTypedAhead = true;
        kiosk.Press(Mileage + "12{Enter}{Enter}!n=").Entries.OfType<MileageLogged>().Should().BeEmpty("nobody saw the doubt");

        kiosk.Show().Should().Contain("below this morning");
        kiosk.Press("!").Entries.OfType<MileageLogged>().Should().ContainSingle();
    }

    [Theory]
    [InlineData("{F2}", "{F3}", "CARDBOARD")]
    [InlineData("{F6}", "{F2}", "TOMORROW'S PLAN")]
    [InlineData("B4{F7}", "{F4}", "B4 Dunlin")]
    [InlineData("{F9}", "{F8}", "DAY BOOK")]
    public void The_walls_function_keys_work_on_every_screen_on_which_nothing_is_half_typed(string first, string then, string shown)
    {
        using var kiosk = SampleKiosk.Evening();
        kiosk.Press(first + then).Show().Should().Contain(shown);
    }

    [Theory]
    [InlineData("12{Enter}", "typed again")]
    [InlineData("!", "with its own key")]
    public void A_doubted_answer_is_recorded_by_a_deliberate_act(string keys, string why)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(Mileage + "12{Enter}{Enter}{Enter}" + keys);

        kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle(why).Which.Sure.Should().BeTrue();
    }

    [Fact]
    public void Open_damage_of_the_van_stands_on_the_step_and_is_pointed_at()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}{Enter}**{Enter}=");
        kiosk.Show().Should().Contain("Already known. Press a number").And.Contain("1 rear door, to repair");

        kiosk.Press("1").Show().Should().Contain("1 still there: rear door");
        kiosk.Press("n").Entries.OfType<DamageConfirmed>().Should().ContainSingle().Which.Known.Should().Equal(1);
    }

    [Fact]
    public void A_van_that_used_units_and_did_not_move_is_asked_about()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}LED-G25{Enter}0{Enter}0{Enter}0{Enter}***=");
        kiosk.Depot.Shift(new("B3"))!.Step.Should().Be(Step.Mileage);

        kiosk.Press("=").Session.Model.Said.Should().Contain("units were used tonight, but the van did not move");
        kiosk.Entries.OfType<MileageLogged>().Should().BeEmpty();
        kiosk.Press("=").Entries.OfType<MileageLogged>().Should().ContainSingle("the same key again is the answer again");
    }

    [Theory]
    [InlineData(Mileage + "99999{Enter}{Enter}", "the limit is 1500 mi")]
    [InlineData("B3{Enter}{Enter}1{Down}{Down}99999{Enter}", "Sealed cartons cannot be 99999")]
    [InlineData(Mileage + "=n99{Enter}", "cannot be 99. Type 0 to")]
    [InlineData("{F3}p150{Enter}", "cannot be 150. Type 1 to 120")]
    public void What_cannot_be_is_refused_and_not_asked_twice(string keys, string said)
    {
        using var kiosk = new SampleKiosk();
        var before = kiosk.Press(keys).Session.Model.Said;

        before.Should().Contain(said).And.NotContain("press !");
    }

    [Fact]
    public void Two_holds_are_lifted_each_by_its_number_and_all_only_when_meant()
    {
        using var kiosk = SampleKiosk.Evening();
        kiosk.Press("B6{F7}l").Show().Should().Contain("1  Fire extinguisher: 0 of 1").And.Contain("2  refueled with diesel");

        kiosk.Press("a{Enter}both seen to{Enter}L1{Enter}").Session.Model.Said.Should().Contain("That lifts all 2 holds").And.Contain("! records it");
        kiosk.Press("{Enter}{Enter}{Enter}").Entries.OfType<HoldsLifted>().Should().BeEmpty("Enter alone confirms nothing");
        kiosk.Press("{Escape}l2{Enter}tank drained, slip 7{Enter}L1{Enter}").Entries.OfType<HoldsLifted>().Should().ContainSingle().Which.Reasons.Should().ContainSingle().Which.Should().StartWith("refueled");
    }

    [Fact]
    public void All_holds_are_lifted_with_the_key_that_says_so()
    {
        using var kiosk = SampleKiosk.Evening();
        kiosk.Press("B6{F7}la{Enter}both seen to{Enter}L1{Enter}!").Entries.OfType<HoldsLifted>().Should().ContainSingle().Which.Reasons.Should().HaveCount(2);
    }

    [Fact]
    public void A_suggestion_that_was_taken_is_what_is_recorded()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(Mileage + "28513{Enter}{Enter}{Enter}!{Enter}{Enter}").Entries.OfType<MileageLogged>().Should().ContainSingle().Which.EndMi.Should().Be(28153);
    }

    [Fact]
    public void A_number_with_a_part_refused_goes_no_farther_until_it_is_typed_again()
    {
        using var kiosk = SampleKiosk.Evening();
        kiosk.Press("B5{F7}o53,900{Enter}").Session.Model.Said.Should().Contain("\"53,9\" is left. Type all of it again");
        kiosk.Press("{Backspace}{Backspace}{Backspace}{Backspace}53900{Enter}misread{Enter}L1{Enter}").Entries.OfType<OdometerCorrected>().Should().ContainSingle().Which.Mi.Should().Be(53900);

        using var other = new SampleKiosk();
        other.Press(Mileage + "28,153{Enter}").Session.Model.Said.Should().Contain("Type all of it again");
        other.Closeout.Form.Now!.Name.Should().Be("odometer");
    }

    [Fact]
    public void A_letter_typed_by_mistake_leads_to_no_other_item()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}/SHW-15H{Enter}2o{Enter}");

        kiosk.Closeout.Item.Should().Be(new Code<Item>("SHW-15H"));
        kiosk.Session.Model.Said.Should().Contain("\"o\" is not a count");
    }

    [Theory]
    [InlineData("1630")]
    [InlineData("16:30")]
    public void A_time_needs_no_colon(string typed)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press($"{Mileage}=d6{{Enter}}u{{Enter}}crack{{Enter}}{{Enter}}L1{{Enter}}{typed}{{Enter}}");

        kiosk.Entries.OfType<DamageFound>().Should().ContainSingle().Which.ToldAt.Should().Be(new TimeOnly(16, 30));
    }

    [Fact]
    public void A_long_text_is_cut_with_a_word()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(Mileage + "=d6{Enter}u{Enter}" + new string('x', 81)).Session.Model.Said.Should().Contain("takes at most 80 characters");
    }

    [Fact]
    public void A_van_opened_by_mistake_is_out_again_while_nothing_is_recorded_of_it()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}{F2}").Session.Model.Said.Should().Contain("B3 Curlew is out again");
        kiosk.Depot.Shift(new("B3")).Should().BeNull();

        kiosk.Press("B3{Enter}{Enter}7{Enter}{Enter}7{Enter}!{F2}");
        kiosk.Session.Model.Said.Should().Contain("has answers already");
        kiosk.Depot.Shift(new("B3")).Should().NotBeNull();
    }

    [Theory]
    [InlineData("egret")]
    [InlineData("b5")]
    public void A_van_is_opened_by_its_name_or_its_code(string typed)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(typed + "{Enter}").Show().Should().Contain("B5 Egret, bay 5, is back");
    }

    [Theory]
    [InlineData("T09")]
    [InlineData("@")]
    public void Who_is_rostered_for_a_van_opens_it_with_a_badge_or_a_name(string typed)
    {
        using var kiosk = new SampleKiosk();
        var name = kiosk.Depot.Setup.Find(new Code<Technician>("T09"))!.Name;
        kiosk.Press(typed.Replace("@", name, StringComparison.Ordinal) + "{Enter}");

        kiosk.Closeout.Van.Text.Should().Be("B5");
        kiosk.Entries.Should().ContainSingle().Which.Should().BeOfType<VanCameIn>().Which.Technician.Text.Should().Be("T09");
        kiosk.Press("{F2}").Depot.Shift(new("B5")).Should().BeNull("and a slip is taken back at one key");
    }

    [Theory]
    [InlineData("B3{Enter}{Enter}**{Enter}=d2{Enter}x{Enter}", "severity", "Say how bad it is")]
    [InlineData("B3{Enter}{Enter}**{Enter}=d2{Enter}r{Enter}dent{Enter}x{Enter}", "drivable", "Say whether it can be driven")]
    [InlineData("B3{Enter}{Enter}**{Enter}=d2{Enter}r{Enter}dent{Enter}{Enter}{Enter}25:00{Enter}", "told_at", "is no time")]
    [InlineData("B2{Enter}{Enter}**==n=x{Enter}", "lights", "Say whether this part is in order: lights")]
    public void A_letter_or_a_time_that_means_nothing_is_said_when_its_field_is_left(string keys, string field, string said)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(keys).Session.Model.Said.Should().Contain(said);

        kiosk.Closeout.Form.Now!.Name.Should().Be(field);
    }
}
