using Closeout.Words;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>F1 helps with the screen that it is pressed on.</summary>
public sealed class HelpByKeys
{
    [Theory]
    [InlineData("{F9}r", "A PIN that is locked or forgotten is taken away")]
    [InlineData("{F9}i", "Six digits are drawn and shown once")]
    [InlineData("{F9}", "Everybody of the crew")]
    [InlineData("{F9}iL1{Enter}", "The PIN that was drawn")]
    [InlineData("{F5}", "A delivery goes onto the shelf")]
    [InlineData("{F5}{F5}", "A corrected count makes the record follow")]
    [InlineData("{F2}{F5}", "change of one line of the plan")]
    [InlineData("B4{F7}h", "A hold keeps a van in")]
    [InlineData("B4{F7}b", "closed out for somebody who cannot")]
    [InlineData("{F3}p", "The hauler emptied the container")]
    [InlineData("{F8}{F5}", "The business date ends once")]
    public void A_form_has_the_help_of_what_it_records(string keys, string help)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(keys + "{F1}").Show().Should().Contain(help);
    }

    [Fact]
    public void Every_form_has_help_of_its_own_that_fits_on_one_page()
    {
        var helps = AllForms.Of().Select(f => f.Help).ToList();
        helps.Select(h => h[0]).Should().OnlyHaveUniqueItems();
        foreach (var help in helps)
        {
            help.SelectMany(l => Cells.Wrap(l, 76)).Should().HaveCountLessThan(20);
        }
    }
}
