using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Closeout.Html;
using Closeout.Screens;
using Closeout.Tests.Screens;
using FluentAssertions;
using Xunit;
using ZXing;
using ZXing.Common;

namespace Closeout.Tests.Html;

/// <summary>Labels as a scanner sees them: drawn into gray values and read by the library's reader.</summary>
public sealed partial class LabelTests
{
    public static TheoryData<string> Sheets => [.. Labels.Sheets.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_label_reads_as_its_code_by_bars_and_by_squares(string sheet)
    {
        using var kiosk = new SampleKiosk();
        var labels = Labels.Sheets.Single(s => s.Name == sheet).Labels(kiosk.Depot.Setup).ToList();
        var page = PageText.Parsed(Labels.Html(kiosk.Depot, sheet, labels));
        var drawn = page.Of("div", "label").ToList();

        drawn.Select(d => d.Of("p", "code").Single().Value).Should().Equal(labels.Select(l => l.Code));
        drawn.Select(d => Read(d.Of("svg", "c128").Single(), BarcodeFormat.CODE_128, height: 20)).Should().Equal(labels.Select(l => l.Code));
        drawn.Select(d => Read(d.Of("svg", "qr").Single(), BarcodeFormat.QR_CODE, height: 1)).Should().Equal(labels.Select(l => l.Code));
        page.Descendants("section").Should().HaveCount((labels.Count + 9) / 10).And.OnlyContain(s => s.Of("div", "label").Count() <= 10);
    }

    [Fact]
    public void Everything_of_the_set_up_has_its_labels_once()
    {
        var setup = SampleDay.Given.Setup;
        var codes = Labels.Sheets.ToDictionary(s => s.Name, s => s.Labels(setup).Select(l => l.Code).ToList());

        foreach (var sheet in new[] { "boxes", "bins", "shelf" })
            codes[sheet].Should().Equal(setup.Items.Select(i => i.Code.Text));

        codes["vans"].Should().Equal(setup.Vans.Select(v => v.Code.Text));
        codes["badges"].Should().Equal(setup.Crew.Select(t => t.Code.Text));
    }

    [Fact]
    public void What_the_labels_say_opens_a_van_names_its_technician_and_finds_an_item_at_the_kiosk()
    {
        using var kiosk = new SampleKiosk();
        string Scanned(string sheet, string code)
        {
            var page = PageText.Parsed(Labels.Html(kiosk.Depot, sheet, Labels.Sheets.Single(s => s.Name == sheet).Labels(kiosk.Depot.Setup)));
            return Read(page.Of("div", "label").Single(d => d.Of("p", "code").Single().Value == code).Of("svg", "c128").Single(), BarcodeFormat.CODE_128, 20);
        }

        kiosk.Press(Scanned("vans", "B5") + "{Enter}");
        kiosk.Session.Model.Screen.Should().BeOfType<WhoScreen>().Which.Van.Text.Should().Be("B5");
        kiosk.Press(Scanned("badges", "T14") + "{Enter}");
        kiosk.Depot.Shift(new("B5"))!.Technician.Text.Should().Be("T14");
        kiosk.Show().Should().NotContain("Thermostat, programmable");
        kiosk.Press(Scanned("boxes", "THERM-P") + "{Enter}").Show().Should().Contain("Thermostat, programmable");
    }

    [Theory]
    [InlineData("LED lamp A19, 9 W, 2700 K", "LED lamp A19", "9 W, 2700 K", "24 in a carton")]
    [InlineData("Kitchen aerator, swivel, 1.5 gpm", "Kitchen aerator", "1.5 gpm", "swivel, 24 in a carton")]
    [InlineData("CO alarm, sealed battery, 10-year", "CO alarm", "10-year", "sealed battery, 24 in a carton")]
    [InlineData("Pipe wrap, 3/4 in, 3 ft piece", "Pipe wrap", "3/4 in, 3 ft piece", "24 in a carton")]
    [InlineData("LED lamp A19 2700 K", "LED lamp A19 2700 K", "2700 K", "24 in a carton")]
    [InlineData("Thermostat, programmable", "Thermostat", "", "programmable, 24 in a carton")]
    [InlineData("Furnace filter whistle", "Furnace filter whistle", "", "24 in a carton")]
    [InlineData("", "LAMP", "", "24 in a carton")]
    public void What_tells_an_item_from_its_neighbours_stands_large(string description, string name, string tells, string rest) =>
        Labels.Of(Tiny.Lamp with { Description = description, UnitsPerCarton = 24 }, "CARTON BOX", "24 in a carton").Should().Be(new Label("CARTON BOX", "LAMP", name, tells, rest));

    [Theory]
    [InlineData("A")]
    [InlineData("a-.B_9")]
    [InlineData("WWWWWWWWWWWWWWWWWWWWWWWW")]
    [InlineData("123456789012345678901234")]
    public void Any_code_reads_and_its_bars_fit_the_label(string code)
    {
        var bars = XElement.Parse(Symbol.Code128(code, 3.7));

        Read(bars, BarcodeFormat.CODE_128, 20).Should().Be(code);
        Read(XElement.Parse(Symbol.Qr(code)), BarcodeFormat.QR_CODE, 1).Should().Be(code);
        var inches = double.Parse(Inches().Match((string)bars.Attribute("style")!).Groups[1].Value, CultureInfo.InvariantCulture);
        inches.Should().BeLessThanOrEqualTo(3.7);
        (inches / Size(bars).Width).Should().BeInRange(0.0075, 0.0151, "a module of a scanner's bars is 7.5 mil or more (common practice)");
    }

    [Fact]
    public void A_symbol_of_which_a_part_is_missing_does_not_read()
    {
        var bars = XElement.Parse(Symbol.Code128("LED-A19-27", 3.7));
        var path = bars.Element("path")!.Attribute("d")!;
        path.Value = path.Value[..(path.Value.Length / 2)];

        FluentActions.Invoking(() => Read(bars, BarcodeFormat.CODE_128, 20)).Should().Throw<Exception>();
    }

    /// <summary>Draws the symbol four dots to a module, and reads it.</summary>
    private static string Read(XElement svg, BarcodeFormat format, int height)
    {
        const int Dots = 4;
        var (width, rows) = Size(svg);
        var gray = new byte[width * Dots * rows * height * Dots];
        Array.Fill(gray, byte.MaxValue);
        foreach (Match run in Run().Matches((string)svg.Element("path")!.Attribute("d")!))
        {
            var (x, y, length) = (Number(run, 1), Number(run, 2), Number(run, 3));
            for (var row = y * height * Dots; row < (y + 1) * height * Dots; row++)
                Array.Fill(gray, (byte)0, row * width * Dots + x * Dots, length * Dots);
        }

        var source = new RGBLuminanceSource(gray, width * Dots, rows * height * Dots, RGBLuminanceSource.BitmapFormat.Gray8);
        var read = new MultiFormatReader().decode(
            new BinaryBitmap(new HybridBinarizer(source)),
            new Dictionary<DecodeHintType, object> { [DecodeHintType.POSSIBLE_FORMATS] = new List<BarcodeFormat> { format }, [DecodeHintType.TRY_HARDER] = true });
        read.Should().NotBeNull("the symbol reads");
        return read.Text;
    }

    private static (int Width, int Height) Size(XElement svg)
    {
        var box = ((string)svg.Attribute("viewBox")!).Split(' ').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToList();
        return (box[2], box[3]);
    }

    private static int Number(Match run, int group) => int.Parse(run.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"M(\d+) (\d+)h(\d+)v1H\d+z")]
    private static partial Regex Run();

    [GeneratedRegex(@"width: ([\d.]+)in")]
    private static partial Regex Inches();
}
