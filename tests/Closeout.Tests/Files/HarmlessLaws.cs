using System.Text;
using System.Text.RegularExpressions;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Shifts.Steps;
using Closeout.Words;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>Whatever stands in a file, a name or a book: nothing that steers a terminal comes out, in no sentence, sheet or CSV file.</summary>
public sealed partial class HarmlessLaws
{
    private static readonly Gen<string> AnyText = Gen.OneOf(
        Gen.OneOf("\x1b[2J", "\x1b]0;x\a", "\r", "\n", "\r\n", "\t", "\0", "\x7f", "\u0085", "\u009b", "\u2028", "\u2029", "\u202e", "\u2066", "\u061c", "\u200f", "\ufeff", "\ud800", "漢", "<b>", "=1", "\"", ",", "a", " "),
        Gen.Char.Select(c => c.ToString())).Array[0, 12].Select(string.Concat);

    [Fact]
    public void A_line_holds_nothing_that_steers_a_terminal() => AnyText.Holds(text => Harmful().IsMatch(Harmless.Line(text)).Should().BeFalse(), samples: 3_000);

    [Fact]
    public void A_field_of_a_CSV_file_holds_nothing_but_line_breaks_of_its_own() => AnyText.Holds(text => IsHarmlessCsv(Csv(c => c.Text(text))).Should().BeTrue(), samples: 3_000);

    [Fact]
    public void Harmless_text_stays_as_it_is() => AnyText.Holds(
        text =>
        {
            if (!Harmful().IsMatch(text))
            {
                (Harmless.Line(text), Harmless.Field(text)).Should().Be((text, text));
            }
        },
        samples: 3_000);

    [Fact]
    public void A_finding_is_one_line_whatever_it_quotes() => AnyText.Holds(text =>
    {
        var findings = new Findings();
        findings.Fault("a.csv", 1, 1, $"found {text}");
        findings.Note("a.csv", 1, 1, $"found {text}");

        Harmful().IsMatch(findings.Problems.Concat(findings.Notes).Aggregate("", (all, p) => all + p)).Should().BeFalse();
    });

    [Fact]
    public void No_sheet_wall_or_file_out_holds_what_steers_a_terminal() => AnyText.Holds(
        text =>
        {
            var depot = Named(text);
            var plan = RestockPlan.For(depot);
            var texts = depot.Setup.Vans.SelectMany(v => new[] { PickSheet.Text(new(depot), v), MorningSheet.Text(MorningSheet.OfVan(new(depot), v)) })
                .Append(MorningSheet.Text(MorningSheet.OfDepot(new(depot)))).Append(PickSheet.Html(new(depot))).Append(MorningSheet.Html(new(depot))).Append(WallText.Of(new(depot)));
            var files = new[] { "restock", "shelf", "cardboard", "mileage", "wall", "accuracy", "kit" }.Select(f => Closeout.Commands.Output.Files[f](depot, null!)).Append(Audit(text));

            texts.Should().AllSatisfy(t => Harmful().IsMatch(t.Replace("\n", "", StringComparison.Ordinal)).Should().BeFalse());
            files.Should().AllSatisfy(f => IsHarmlessCsv(Encoding.UTF8.GetString(f)).Should().BeTrue());
        },
        samples: 60);

    private static Depot Named(string text) => Tiny.Opened("shelf: 1 LAMP; B1: 0+1 LAMP", setup: Tiny.Setup with
    {
        Depot = Tiny.Setup.Depot with { Name = text },
        Items = [.. Tiny.Setup.Items.Select(i => i with { Description = text, Stow = text })],
        Vans = [.. Tiny.Setup.Vans.Select(v => v with { Name = text })],
        Kit = [.. Tiny.Setup.Kit.Select(k => k with { Description = text })],
        Crew = [.. Tiny.Setup.Crew.Select(t => t with { Name = text })],
    }).At(Tiny.B1, Step.Damage).Did(new ReportDamage(Tiny.B1, "left door", Severity.Repair, "dent"), new ConfirmDamage(Tiny.B1, false));

    private static byte[] Audit(string text) => AuditCsv.Write(
        [(Tiny.Wednesday, [new(1, Tiny.FiveOClock, new PhotoAttached(Tiny.B1, new string('a', 64), text, 1)), new(2, Tiny.FiveOClock, new HoldPlaced(Tiny.B1, text, Tiny.Lead))])]);

    private static string Csv(Func<CsvText, CsvText> field)
    {
        using var csv = new CsvText("a");
        field(csv).EndRow();
        return Encoding.UTF8.GetString(csv.Bytes());
    }

    private static bool IsHarmlessCsv(string csv) =>
        !Harmful().IsMatch(csv.Replace("\r\n", "", StringComparison.Ordinal).Replace("\n", "", StringComparison.Ordinal));

    [GeneratedRegex("[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]")]
    private static partial Regex Harmful();
}
