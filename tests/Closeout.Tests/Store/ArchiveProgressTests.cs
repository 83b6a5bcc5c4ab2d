using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Screens.Yard;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>Whoever waits for the archive is told what for, after a second, however few the pages.</summary>
public sealed class ArchiveProgressTests
{
    [Fact]
    public void Within_a_second_nothing_is_said_and_then_once_a_second()
    {
        var (clock, said) = (new SlowClock(TimeSpan.Zero), new List<string>());
        var progress = new ArchiveProgress(clock, said.Add);
        foreach (var (done, wait) in new[] { (0, 0.9), (1, 0.3), (2, 0.5), (3, 0.6), (4, 0) })
        {
            progress.Told(done, 5);
            clock.Pass(wait);
        }

        said.Should().Equal("Bringing the archive up to the pages: 2 of 5 pages done.", "Bringing the archive up to the pages: 4 of 5 pages done.");
        progress.Told(0, 1);
        said.Should().HaveCount(2, "another time begins anew");
    }

    [Fact]
    public void Three_pages_that_take_long_are_told()
    {
        using var book = new LongBook();
        Directory.Delete(book.Folder.Archive, recursive: true);
        var said = new List<string>();

        new Archive(book.Folder, new ArchiveProgress(new SlowClock(TimeSpan.FromSeconds(2)), said.Add).Told).CatchUp();

        said.Should().HaveCount(3).And.EndWith("Bringing the archive up to the pages: 2 of 3 pages done.");
    }

    [Fact]
    public void The_kiosk_shows_it_while_F3_waits_and_not_afterwards()
    {
        using var book = new LongBook();
        Directory.Delete(book.Folder.Archive, recursive: true);
        KioskSession? session = null;
        var archive = new Archive(book.Folder, new ArchiveProgress(new SlowClock(TimeSpan.FromSeconds(2)), said => session!.Working(said)).Told);
        session = new KioskSession(new Desk(Book.Open(book.Folder), TimeProvider.System), archive, new Attachments(book.Folder));
        var drawn = new List<string>();
        session.Draw = () => drawn.Add(session.Show(80, 24).ToString());

        session.Press(new(Press.F3));

        drawn[2].Should().Contain("Bringing the archive up to the pages: 2 of 3 pages done.");
        session.Model.Screen.Should().BeOfType<YardScreen>();
        session.Model.Said.Should().BeEmpty();
    }

    /// <summary>Goes on by so much each time that somebody looks.</summary>
    private sealed class SlowClock(TimeSpan each) : TimeProvider
    {
        private TimeSpan passed;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => (passed += each).Ticks;

        public void Pass(double seconds) => passed += TimeSpan.FromSeconds(seconds);
    }
}
