using System.Text;
using System.Text.Json;
using Closeout.Commands;
using Closeout.DayBook;
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
        var answers = EveningAnswers.Of(DayFolder.Read(Repository.SampleDay).Evening);
        using var rehearsed = new SampleKiosk();
        Rehearsal.Play(rehearsed.Session.Desk, new Attachments(rehearsed.Folder), answers).Should().BeEmpty();
        using var typed = new SampleKiosk();

        EveningKeys.Play(typed, answers);

        foreach (var van in typed.Depot.Setup.Vans)
        {
            Lines(typed, van.Code.Text).Should().Equal(Lines(rehearsed, van.Code.Text), $"van {van.Code} gave the same answers");
        }

        typed.Entries.Should().HaveCount(rehearsed.Entries.Count).And.HaveCountGreaterThan(80);
        MileageCsv.Write(typed.Depot).Should().Equal(MileageCsv.Write(rehearsed.Depot));
    }

    private static IReadOnlyList<string> Lines(SampleKiosk kiosk, string van) =>
        [.. kiosk.Entries.OfType<VanEntry>().Where(e => e.Van.Text == van).Select(Line)];

    private static string Line(Entry entry)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            EntryCodec.Write(json, entry);
        }

        return EntryCodec.KindOf(entry).Name + " " + Encoding.UTF8.GetString(bytes.ToArray());
    }
}
