using System.Text;
using Closeout.Commands;
using Closeout.Facts;
using Closeout.People;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Screens.People;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>No PIN stands in clear in any file of a book or any file written from it.</summary>
public sealed class NoPinInClear
{
    private const string Own = "iron gravel 7";

    [Fact]
    public void No_file_of_a_book_and_no_file_out_holds_a_PIN_in_clear()
    {
        using var kiosk = new SampleKiosk(typesPins: false, without: "T14");
        using var outside = new TempFolder();
        kiosk.Press("{F9}{Down}{Down}{Down}c").TypePin("T07").Press($"{Own}{{Enter}}{Own}{{Enter}}{{Escape}}{{F9}}{{Down}}{{Down}}{{Down}}{{Down}}{{Down}}{{Down}}iL1{{Enter}}").TypePin("L1");
        var issued = ((IssuedScreen)kiosk.Session.Model.Screen).Pin;
        kiosk.Press("{Enter}{Escape}{F5}CO-10Y{Enter}1{Enter}{Enter}T09{Enter}975311{Enter}").Clock.Pass(30);
        kiosk.TypePin("T09").Press("{Escape}");
        new Rehearsal(kiosk.Session.Desk, new Attachments(kiosk.Folder)).Play(SampleDay.Answers.Where(a => a.Van.Text is "B1" or "B2")).Should().BeEmpty();
        new Archive(kiosk.Folder).CatchUp();
        foreach (var (name, write) in Output.Files)
        {
            Output.Write(outside[name + ".csv"], write(kiosk.Depot, new Archive(kiosk.Folder)));
        }

        PicksCommand.Run(kiosk.Session.Desk.Tonight, outside["picks"]);
        MorningCommand.Run(kiosk.Session.Desk.Tonight, outside["morning"]);

        var entries = kiosk.Entries;
        entries.OfType<PinSet>().Should().HaveCount(2);
        entries.OfType<PinFailed>().Should().ContainSingle();
        var pins = kiosk.Depot.Setup.Crew.Select(t => kiosk.PinOf(t.Code.Text)).Append(Own).Append(issued).Append("975311").ToList();
        var files = new[] { kiosk.Folder.Path, outside.Path }.SelectMany(f => Directory.EnumerateFiles(f, "*", SearchOption.AllDirectories)).ToList();
        files.Should().HaveCountGreaterThan(15).And.Contain(f => f.EndsWith(".jsonl", StringComparison.Ordinal)).And.Contain(f => f.EndsWith(".db", StringComparison.Ordinal));
        foreach (var file in files)
        {
            var text = WithoutHashes(Encoding.Latin1.GetString(File.ReadAllBytes(file)));
            pins.Should().OnlyContain(pin => !text.Contains(pin, StringComparison.Ordinal), $"of {Path.GetFileName(file)}");
        }
    }

    [Fact]
    public void The_search_finds_a_PIN_where_one_stands() =>
        WithoutHashes("{\"salt\":\"AAAA\",\"person\":\"T07\",\"note\":\"493027\"}").Should().Contain("493027");

    [Fact]
    public void No_screen_record_prints_a_PIN()
    {
        new PinScreen(new("T07"), new TryPinAct(), new WallScreen(), "bay", PinStage.Again, Own, Own).ToString().Should().NotContain(Own);
        new Model(new IssuedScreen(new("T07"), "493027", new WallScreen())).ToString().Should().NotContain("493027");
        new ChangePin(new("T07"), new Pins(1).Hash("493027"), new Pins(1).Hash(Own), false).ToString().Should().NotContain(Own);
    }

    /// <summary>Six digits may stand in a hash or checksum by chance; those are random, and are left out.</summary>
    private static string WithoutHashes(string text) => System.Text.RegularExpressions.Regex.Replace(text, "(?<=\")([0-9a-f]{64}|[A-Za-z0-9+/]{22}==|[A-Za-z0-9+/]{43}=)(?=\")", "");
}
