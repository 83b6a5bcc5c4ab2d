using Closeout.Commands;
using Closeout.Facts;
using Closeout.Store;
using Closeout.Tests.Screens;
using Closeout.Vans;
using Closeout.Words;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Words;

/// <summary>Spanish says all that English says, and changes nothing but words.</summary>
public sealed class SpanishTests
{
    [Fact]
    public void Every_sentence_of_the_code_is_said_in_Spanish() =>
        Sentences.Said.Select(Language.NameOf).Except(Sentences.Spanish.Keys).Should().BeEmpty();

    [Fact]
    public void Nothing_is_translated_that_the_code_does_not_say() =>
        Sentences.Spanish.Keys.Except(Sentences.Said.Select(Language.NameOf)).Should().BeEmpty();

    [Fact]
    public void A_translation_has_the_holes_of_its_sentence_with_their_formats() =>
        Sentences.Said.Where(s => !Sentences.Holes(s).SequenceEqual(Sentences.Holes(Sentences.Spanish.GetValueOrDefault(Language.NameOf(s)) ?? s))).Should().BeEmpty();

    [Fact]
    public void All_pieces_of_a_sentence_with_holes_are_of_one_kind() => Sentences.Mixed.Should().BeEmpty();

    [Fact]
    public void Nothing_is_said_before_the_language_is_known() => Sentences.Frozen.Should().BeEmpty();

    [Fact]
    public void The_evening_in_Spanish_records_what_it_records_in_English()
    {
        using var english = new SampleKiosk();
        EveningKeys.Play(english, SampleDay.Answers);
        using var spanish = Language.Choosing("es", () => new SampleKiosk());
        EveningKeys.Play(spanish, SampleDay.Answers);

        spanish.Show().Should().Contain("RETENIDA");
        spanish.Entries.Select(e => EntryKind.Of(e).Name).Should().Equal(english.Entries.Select(e => EntryKind.Of(e).Name));
        spanish.Entries.Should().BeEquivalentTo(english.Entries, o => o.RespectingRuntimeTypes().WithStrictOrdering());
    }

    [Fact]
    public void Files_for_other_programs_are_the_same_in_every_language()
    {
        using var english = SampleKiosk.Evening();
        using var spanish = Language.Choosing("es", SampleKiosk.Evening);
        foreach (var (name, write) in Output.Files)
        {
            Language.Choosing("es", () => write(spanish.Depot, new Archive(spanish.Folder)))
                .Should().Equal(write(english.Depot, new Archive(english.Folder)), name);
        }
    }

    [Fact]
    public void A_hold_is_lifted_in_Spanish_though_the_book_knows_it_in_English()
    {
        using var kiosk = Language.Choosing("es", SampleKiosk.Evening);
        kiosk.Press("B6{F7}l1{Enter}revisado en el taller{Enter}L1{Enter}");

        kiosk.Entries[^1].Should().BeOfType<HoldsLifted>().Which.Reasons.Should().NotBeEmpty().And.OnlyContain(r => !r.Contains(" de ", StringComparison.Ordinal));
        kiosk.Press("{Escape}B4{F7}lrevisado{Enter}L1{Enter}").Session.Model.Said.Should().Contain("registrado");
        Language.Choosing("es", () => Readiness.Of(kiosk.Depot)).Select(v => (v.Van.Code, v.Morning)).Should().Equal(
            Readiness.Of(kiosk.Depot).Select(v => (v.Van.Code, v.Morning)), "what a van is does not hang on the language");
        Readiness.Of(kiosk.Depot).Single(v => v.Van.Code == new Code<Van>("B4")).Morning.Should().Be(Morning.ReadyWithNotes);
    }

    [Fact]
    public void A_close_out_speaks_its_technicians_language_and_the_wall_the_depots()
    {
        using var kiosk = new SampleKiosk(given => given with
        {
            Setup = given.Setup with { Crew = [.. given.Setup.Crew.Select(c => c.Code.Text == "T02" ? c with { Language = "es" } : c)] },
        });
        kiosk.Show().Should().Contain("bay van");
        kiosk.Press("T02{Enter}").Show().Should().Contain("TARJETA").And.Contain("Sueltas");
        kiosk.Press("{Escape}B3{Enter}{Enter}").Show().Should().Contain("TALLY CARD");
        kiosk.Press("{Escape}").Show().Should().Contain("bay van");
    }
}
