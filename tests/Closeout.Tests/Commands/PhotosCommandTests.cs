using Closeout.Commands;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Tests.Screens;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary><c>photos --out</c>, whatever the pictures were called where they came from.</summary>
public sealed class PhotosCommandTests : IDisposable
{
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3];

    private readonly TempFolder temp = new();
    private readonly SampleKiosk kiosk = new SampleKiosk().Press("B3{Enter}{Enter}");

    [Theory]
    [InlineData("..", "")]
    [InlineData("../../elsewhere.jpg", "_.._elsewhere.jpg")]
    [InlineData("..\\..\\elsewhere.jpg", "_.._elsewhere.jpg")]
    [InlineData("/etc/passwd", "_etc_passwd")]
    [InlineData("C:wiper.jpg", "C_wiper.jpg")]
    [InlineData("a\u001b[2J\nb.jpg", "a__2J_b.jpg")]
    [InlineData("\u202egpj.exe", "_gpj.exe")]
    [InlineData(".hidden", "hidden")]
    [InlineData("Scheibenwischer rechts.jpg", "Scheibenwischer_rechts.jpg")]
    public void No_name_leads_out_of_its_folder_or_steers_a_terminal(string name, string written)
    {
        Attach(name, Jpeg);

        Run().Code.Should().Be(0);

        var number = kiosk.Depot.Number;
        Directory.EnumerateFileSystemEntries(temp["out"], "*", SearchOption.AllDirectories).Where(File.Exists).Select(f => Path.GetRelativePath(temp["out"], f))
            .Should().Equal(Path.Combine("2026-11-18", "B3", $"{number}-{written}"));
        Directory.EnumerateFileSystemEntries(temp.Path).Should().BeEquivalentTo(temp["out"], temp["picture"]);
        foreach (var line in kiosk.Press("{F8}").Show(120, 40).Split('\n'))
        {
            line.Should().NotMatchRegex("[\u0000-\u001f\u202e]");
        }
    }

    [Fact]
    public void Pictures_of_one_name_are_all_written_and_only_those_of_a_date_when_it_is_named()
    {
        Attach("wiper.jpg", Jpeg);
        Attach("wiper.jpg", [.. Jpeg, 4]);

        Run().Out.Should().Be("2 photos written, each as it was attached.\n");
        Directory.GetFiles(temp["out", "2026-11-18", "B3"]).Select(File.ReadAllBytes).Should().BeEquivalentTo(new[] { Jpeg, [.. Jpeg, 4] });

        Run(new(2026, 11, 18)).Out.Should().StartWith("2 photos");
        FluentActions.Invoking(() => Run(new(2026, 11, 17))).Should().Throw<BookException>().WithMessage("*no page for 2026-11-17*");
    }

    [Fact]
    public void A_picture_that_is_gone_is_told_and_no_half_file_is_left()
    {
        var sha = Attach("wiper.jpg", Jpeg);
        File.Delete(Path.Combine(kiosk.Folder.Files, sha));

        FluentActions.Invoking(() => Run()).Should().Throw<BookException>().WithMessage("*cannot be read*Restore it from a backup*");
        Directory.GetFiles(temp["out"], "*", SearchOption.AllDirectories).Should().BeEmpty();
    }

    public void Dispose()
    {
        kiosk.Dispose();
        temp.Dispose();
    }

    private string Attach(string name, byte[] bytes)
    {
        File.WriteAllBytes(temp["picture"], bytes);
        var taken = new Attachments(kiosk.Folder).Take(temp["picture"]);
        kiosk.Session.Desk.Record(new AttachPhoto(new("B3"), taken.Sha256, name, taken.Bytes)).Should().BeNull();
        return taken.Sha256;
    }

    private Spoken Run(DateOnly? date = null) => Spoken.By(() => PhotosCommand.Run(kiosk.Folder, date, temp["out"], TimeProvider.System));
}
