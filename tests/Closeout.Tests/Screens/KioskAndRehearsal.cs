using System.Text;
using System.Text.Json;
using Closeout.Commands;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

public sealed class KioskAndRehearsal
{
    [Fact]
    public void The_sample_evening_by_keys_alone_gives_the_same_entries_as_its_rehearsal()
    {
        var answers = SampleDay.Answers;
        using var rehearsed = new SampleKiosk();
        new Rehearsal(rehearsed.Session.Desk, new Attachments(rehearsed.Folder)).Play(answers).Should().BeEmpty();
        using var typed = new SampleKiosk();
        using var stick = new TempFolder();

        EveningKeys.Play(typed, answers.Select(a => a.Photo is { } path ? a with { Photo = On(stick, path) } : a));

        foreach (var van in typed.Depot.Setup.Vans)
        {
            Lines(typed, van.Code.Text).Should().Equal(Lines(rehearsed, van.Code.Text), $"van {van.Code} gave the same answers");
        }

        typed.Entries.Select(e => e.GetType()).Should().Contain([typeof(PhotoAttached), typeof(StreamCounted), typeof(DamageFound), typeof(WeeklyChecked)]);
        typed.Entries.Should().HaveCount(rehearsed.Entries.Count).And.HaveCountGreaterThan(80);
        MileageCsv.Write(typed.Depot).Should().Equal(MileageCsv.Write(rehearsed.Depot));
        foreach (var photo in typed.Entries.OfType<PhotoAttached>())
        {
            new Attachments(typed.Folder).Read(photo.Sha256).Should().Equal(new Attachments(rehearsed.Folder).Read(photo.Sha256));
        }
    }

    /// <summary>The picture where its path is short enough to be typed.</summary>
    private static string On(TempFolder stick, string path)
    {
        File.Copy(path, stick[Path.GetFileName(path)]);
        return stick[Path.GetFileName(path)];
    }

    /// <summary>The van's entries; incidents without their number, for at the kiosk one van is closed out after the other.</summary>
    private static IReadOnlyList<string> Lines(SampleKiosk kiosk, string van) =>
        [.. kiosk.Entries.OfType<VanEntry>().Where(e => e.Van.Text == van).Select(e => Line(e is DamageFound found ? found with { Number = 0 } : e))];

    private static string Line(Entry entry)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            EntryCodec.Write(json, entry);
        }

        return EntryKind.Of(entry).Name + " " + Encoding.UTF8.GetString(bytes.ToArray());
    }
}
