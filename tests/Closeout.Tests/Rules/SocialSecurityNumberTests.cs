using System.Globalization;
using Closeout.Rules;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Rules;

/// <summary>What looks like a social-security number. 219-09-9999 stood in an agency's pamphlet as an example and is nobody's; from memory.</summary>
public sealed class SocialSecurityNumberTests
{
    [Theory]
    [InlineData("219-09-9999")]
    [InlineData("of 219 09 9999, the tenant")]
    [InlineData("219.09.9999.")]
    [InlineData("SSN219-09-9999")]
    public void It_is_found_with_marks_between(string text) => SocialSecurityNumber.IsIn(text).Should().BeTrue();

    [Theory]
    [InlineData("000-12-3456")]
    [InlineData("666-12-3456")]
    [InlineData("900-12-3456")]
    [InlineData("219-00-9999")]
    [InlineData("219-09-0000")]
    [InlineData("219-09.9999")]                // not one kind of mark
    [InlineData("219099999")]                  // any slip has nine digits
    [InlineData("2026-11-18 and 28153")]
    [InlineData("call 202-555-0100")]
    [InlineData("part 1-219-09-9999")]         // a longer number
    [InlineData("")]
    public void Other_numbers_may_be_typed(string text) => SocialSecurityNumber.IsIn(text).Should().BeFalse();

    [Fact]
    public void Any_that_may_have_been_issued_is_found() =>
        Gen.Select(Gen.Int[1, 899].Where(a => a != 666), Gen.Int[1, 99], Gen.Int[1, 9999], Gen.OneOf("-", " ", ".")).Holds(number =>
        {
            var (area, group, serial, mark) = number;
            SocialSecurityNumber.IsIn(string.Create(CultureInfo.InvariantCulture, $"it is {area:000}{mark}{group:00}{mark}{serial:0000}, ask")).Should().BeTrue();
        });
}
