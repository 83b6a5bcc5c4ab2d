using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>Who walks which van, and what is said where nobody can tell.</summary>
public sealed class VanSeatsTests
{
    private static readonly DateTimeOffset Now = SmallBook.At(1);

    [Fact]
    public void A_van_that_is_walked_elsewhere_is_told_with_the_kiosk_and_free_when_it_is_left()
    {
        using var book = new SmallBook();
        using VanSeats first = new(book.Folder, "the first kiosk"), second = new(book.Folder, "the second kiosk");

        first.Take(SmallBook.B1, Now).Should().BeNull();
        second.Take(SmallBook.B1, Now).Should().Be("the first kiosk since 16:30");
        second.Take(SmallBook.B2, Now).Should().BeNull();
        first.Leave();
        second.Take(SmallBook.B1, Now).Should().BeNull();
    }

    [Fact]
    public void A_seat_that_cannot_be_written_is_a_sentence_at_the_kiosk_and_never_another_kiosk()
    {
        using var book = new SmallBook().With(counts: 0);
        File.WriteAllText(book.Folder.Seats, "a file where the folder should be");
        using var seats = new VanSeats(book.Folder, "this kiosk");
        var session = new KioskSession(new Desk(book.Book, TimeProvider.System), new Archive(book.Folder), new Attachments(book.Folder), seats);

        session.Press(new(Press.Enter));

        session.Model.Screen.Should().BeOfType<CloseoutScreen>();
        session.Model.Said.Should().StartWith($"The book at {book.Folder.Path} cannot be written: ").And.NotContain("closed out at");
    }
}
