using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Screens;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>F8: pictures beside a close-out.</summary>
public sealed class AttachByKeys : IDisposable
{
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 1];

    private readonly TempFolder stick = new();
    private readonly SampleKiosk kiosk = new SampleKiosk().Press("B2{Enter}{Enter}");

    [Fact]
    public void A_picture_is_attached_by_its_path_and_the_question_goes_on_as_it_was_typed()
    {
        Put("a.jpg", Jpeg);
        kiosk.Press("1{Down}2{F8}");
        kiosk.Session.Model.Screen.Should().BeOfType<AttachScreen>();
        kiosk.Show().Should().Contain("0 of at most 24 attached").And.Contain("No faces, no house numbers");

        kiosk.Press(stick["a.jpg"] + "{Enter}");

        kiosk.Session.Model.Said.Should().Be("1 photo is attached.");
        kiosk.Closeout.Form["bin"].Typed.Should().Be("2");
        var entry = kiosk.Entries.OfType<PhotoAttached>().Should().ContainSingle().Which;
        (entry.Van.Text, entry.Name, entry.Bytes).Should().Be(("B2", "a.jpg", 5));
        new Attachments(kiosk.Folder).Read(entry.Sha256).Should().Equal(Jpeg);
        kiosk.Show().Should().Contain("photo a.jpg", "the card tells it");
    }

    [Fact]
    public void An_empty_field_takes_what_lies_in_the_inbox()
    {
        kiosk.Press("{F8}{Enter}");
        kiosk.Session.Model.Said.Should().Contain("There is no photo at").And.Contain("inbox");
        kiosk.Session.Model.Screen.Should().BeOfType<AttachScreen>();

        Directory.CreateDirectory(kiosk.Folder.Inbox);
        File.WriteAllBytes(Path.Combine(kiosk.Folder.Inbox, "b.jpg"), [.. Jpeg, 2]);
        File.WriteAllBytes(Path.Combine(kiosk.Folder.Inbox, "a.jpg"), Jpeg);
        File.WriteAllText(Path.Combine(kiosk.Folder.Inbox, "list.txt"), "no picture");

        kiosk.Press("{Enter}").Session.Model.Said.Should().Be("2 photos are attached.");
        kiosk.Entries.OfType<PhotoAttached>().Select(p => p.Name).Should().Equal("a.jpg", "b.jpg");

        Directory.EnumerateFiles(kiosk.Folder.Inbox).Select(Path.GetFileName).Should().Equal(["list.txt"], "the next van must not get them too");
    }

    [Fact]
    public void A_folder_in_which_a_picture_lies_twice_gives_all_its_pictures_once()
    {
        Put("in/a.jpg", Jpeg);
        Put("in/b.jpg", Jpeg);
        Put("in/c.jpg", [.. Jpeg, 3]);

        kiosk.Press($"{{F8}}{stick["in"]}{{Enter}}");

        kiosk.Entries.OfType<PhotoAttached>().Select(p => p.Name).Should().Equal(["a.jpg", "c.jpg"], kiosk.Session.Model.Said);
        kiosk.Session.Model.Said.Should().Be("2 photos are attached.");
    }

    [Fact]
    public void One_picture_attached_twice_is_refused_and_the_screen_stays()
    {
        Put("a.jpg", Jpeg);
        kiosk.Press($"{{F8}}{stick["a.jpg"]}{{Enter}}{{F8}}{stick["a.jpg"]}{{Enter}}");

        kiosk.Session.Model.Said.Should().Contain("a.jpg is already attached");
        kiosk.Session.Model.Screen.Should().BeOfType<AttachScreen>();
        kiosk.Entries.OfType<PhotoAttached>().Should().ContainSingle();
    }

    [Fact]
    public void Of_a_folder_with_too_many_those_that_fit_are_attached_and_it_is_said()
    {
        for (var n = 0; n < 26; n++)
        {
            Put($"in/{n:00}.jpg", [.. Jpeg, (byte)n]);
        }

        kiosk.Press($"{{F8}}{stick["in"]}{{Enter}}");

        kiosk.Entries.OfType<PhotoAttached>().Should().HaveCount(24);
        kiosk.Session.Model.Said.Should().Contain("The limit is 24");
    }

    [Fact]
    public void Their_number_is_in_the_field_of_the_weekly_check_unless_another_was_typed()
    {
        Put("a.jpg", Jpeg);
        Put("b.jpg", [.. Jpeg, 2]);
        kiosk.Press("**==n=").Closeout.At.Should().Be(Step.Weekly);

        kiosk.Press($"=2026-08-03{{F8}}{stick["a.jpg"]}{{Enter}}");
        (kiosk.Closeout.Form["photos"].Text, kiosk.Closeout.Form["oil"].Text).Should().Be(("1", "2026-08-03"));

        kiosk.Press($"{{Enter}}9{{F8}}{stick["b.jpg"]}{{Enter}}");
        kiosk.Closeout.Form["photos"].Text.Should().Be("9");
    }

    [Fact]
    public void One_taken_while_a_part_of_the_walk_round_is_described_is_counted_too()
    {
        Put("a.jpg", Jpeg);
        kiosk.Press($"**==n=n{{Enter}}dark{{F8}}{stick["a.jpg"]}{{Enter}}");
        (kiosk.Closeout.IsReport, kiosk.Closeout.Form["what"].Text).Should().Be((true, "dark"));

        kiosk.Press("{Enter}{Enter}{Enter}{Enter}={Enter}{Enter}{Enter}");
        kiosk.Entries.OfType<WeeklyChecked>().Single().Photos.Should().Be(1);
    }

    [Fact]
    public void Nothing_is_attached_to_a_signed_close_out()
    {
        kiosk.Press("**==n=={Enter}{Enter}{Enter}{Enter}B2{Enter}").Closeout.At.Should().Be(Step.Closed);

        kiosk.Press("{F8}").Session.Model.Screen.Should().BeOfType<CloseoutScreen>();
        kiosk.Show().Should().NotContain("F8");
    }

    [Theory]
    [InlineData("none.jpg", "There is no photo at")]
    [InlineData("words.jpg", "is not a photo: allowed are JPEG, PNG, WebP and HEIC")]
    [InlineData("empty.jpg", "has 0 bytes: it is empty, or still being copied")]
    public void What_is_no_picture_is_said_and_Esc_leads_back(string name, string said)
    {
        Put("words.jpg", [.. "words"u8]);
        Put("empty.jpg", []);

        kiosk.Press($"{{F8}}{stick[name]}{{Enter}}").Session.Model.Said.Should().Contain(said);
        kiosk.Entries.OfType<PhotoAttached>().Should().BeEmpty();
        kiosk.Press("{Escape}").Closeout.At.Should().Be(Step.Leftovers);
    }

    public void Dispose()
    {
        kiosk.Dispose();
        stick.Dispose();
    }

    private void Put(string name, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(stick[name])!);
        File.WriteAllBytes(stick[name], bytes);
    }
}
