using System.Text;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Store;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class EntryCodecTests
{
    public static TheoryData<string> Kinds => [.. EntryKind.All.Select(k => k.Name)];

    [Fact]
    public void Every_kind_in_the_codec_has_a_generator_and_a_sample()
    {
        RandomEntries.ByKind.Keys.Should().BeEquivalentTo(EntryKind.All.Select(k => k.Name));
        EveryKind.Page.Select(e => e.Entry.GetType()).Distinct().Should().BeEquivalentTo(EntryKind.All.Select(k => k.Type));
    }

    [Fact]
    public void Every_kind_of_entry_that_the_core_knows_is_in_the_codec() =>
        typeof(Entry).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Entry)) && !t.IsAbstract)
            .Should().BeEquivalentTo(EntryKind.All.Select(k => k.Type));

    [Theory]
    [InlineData("holds-lifted", """{"van":"B1","holds":[null],"reason":"r","lead":"L1"}""")]
    [InlineData("van-loaded", """{"van":"B1","lines":[],"moves":[null],"by":null}""")]
    public void Nothing_in_a_list_is_no_entry(string kind, string json)
    {
        using var read = System.Text.Json.JsonDocument.Parse(json);

        var reading = () => EntryCodec.Read(kind, 1, read.RootElement);

        reading.Should().Throw<FormatException>().WithMessage("*a list holds nothing*");
    }

    [Theory]
    [InlineData("signed", 2, """{}""", "*missing required*")]
    [InlineData("bookings-moved", 1, """{"from":"B1","to":"B2","date":"2026-11-19","visits":[{}],"reason":"r","lead":"L1"}""", "*missing required*")]
    public void What_could_not_be_written_again_is_no_entry(string kind, int version, string json, string why)
    {
        using var read = System.Text.Json.JsonDocument.Parse(json);

        var reading = () => EntryCodec.Read(kind, version, read.RootElement);

        reading.Should().Throw<FormatException>().WithMessage(why);
    }

    [Fact]
    public void A_number_too_large_to_be_written_again_is_no_entry()
    {
        var page = EveryKind.Page.First(e => e.Entry is PageOpened);
        var line = System.Text.Encoding.UTF8.GetString(PageLine.Write(page, PageLine.Nothing).Bytes);
        var large = System.Text.RegularExpressions.Regex.Replace(line, "\"containerCuYd\":[0-9.]+", "\"containerCuYd\":1e999");
        large.Should().NotBe(line);
        using var read = System.Text.Json.JsonDocument.Parse(large);

        var reading = () => EntryCodec.Read("page-opened", EntryKind.Of(page.Entry).Version, read.RootElement.GetProperty("entry"));

        reading.Should().Throw<FormatException>().WithMessage("*a number too large*");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void An_entry_is_read_back_as_it_was_written(string kind) =>
        RandomEntries.ByKind[kind].Sample(
            entry =>
            {
                var recorded = new Recorded(7, new DateTimeOffset(2026, 3, 4, 5, 6, 7, 89, TimeSpan.FromHours(-5)), entry);
                var (bytes, sha) = PageLine.Write(recorded, PageLine.Nothing);
                bytes.AsSpan(0, bytes.Length - 1).Contains((byte)'\n').Should().BeFalse("an entry is one line");

                var (read, readSha, prev, _) = PageLine.Read(bytes.AsSpan(0, bytes.Length - 1), PageLine.Nothing);

                prev.Should().Be(PageLine.Nothing);
                read.Should().BeEquivalentTo(recorded, o => o.RespectingRuntimeTypes().WithStrictOrdering());
                readSha.Should().Be(sha);
                PageLine.Write(read, PageLine.Nothing).Bytes.Should().Equal(bytes);
            },
            seed: RandomEntries.Seed,
            iter: 60);

    [Fact]
    public void The_page_with_every_kind_is_written_as_the_committed_one()
    {
        var prev = PageLine.Nothing;
        var page = new StringBuilder();
        foreach (var recorded in EveryKind.Page)
        {
            var (bytes, sha) = PageLine.Write(recorded, prev);
            page.Append(Encoding.UTF8.GetString(bytes));
            prev = sha;
        }

        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
        {
            File.WriteAllText(Repository.Golden("every-kind.jsonl"), page.ToString());
        }

        page.ToString().Should().Be(File.ReadAllText(Repository.Golden("every-kind.jsonl")), "books already written must stay readable: never change a kind, add a version");
    }

    [Fact]
    public void The_committed_page_with_every_kind_reads_back_and_folds()
    {
        var read = PageReader.Read(Repository.Golden("every-kind.jsonl"), default);

        read.Torn.Should().BeEmpty();
        read.Entries.Should().BeEquivalentTo(EveryKind.Page, o => o.RespectingRuntimeTypes().WithStrictOrdering());
        Depot.Fold(read.Entries).Shift(new("B3"))!.IsClosed.Should().BeTrue();
    }

    /// <summary>Made up: once the signer was called "who", and before that nothing was said of how.</summary>
    private static readonly Upcast[] MadeUp =
    [
        new("signed", 0, old =>
        {
            old["how"] = nameof(Proof.Rehearsal);
            return old;
        }),
        new("signed", 1, old => new() { ["van"] = (string?)old["van"], ["technician"] = (string?)old["who"], ["proof"] = (string?)old["how"] }),
    ];

    [Theory]
    [InlineData("0", "", Proof.Rehearsal)]
    [InlineData("1", ",\"how\":\"Pin\"", Proof.Pin)]
    public void A_line_of_an_older_version_reads_as_an_entry_of_today(string version, string how, Proof proof)
    {
        var line = ForgedLine.Of(
            EveryKind.Signed,
            "\"v\":2,\"entry\":{\"technician\":\"T07\",\"proof\":\"Pin\",\"van\":\"B3\"}",
            $"\"v\":{version},\"entry\":{{\"van\":\"B3\",\"who\":\"T07\"{how}}}",
            PageLine.Nothing);

        PageLine.Read(line, PageLine.Nothing, MadeUp).Recorded.Entry.Should().Be(new Signed(new("B3"), new("T07"), proof));

        var without = () => PageLine.Read(line, PageLine.Nothing);
        without.Should().Throw<OtherVersionException>("no such version was ever written");
    }

    [Theory]
    [InlineData("\"kind\":\"signed\",\"v\":2", "\"kind\":\"van-painted\",\"v\":1", "an entry of kind 'van-painted' version 1, which this program does not know*newer*")]
    [InlineData("\"kind\":\"signed\",\"v\":2", "\"kind\":\"signed\",\"v\":3", "an entry of kind 'signed' version 3, which this program does not know*newer*")]
    [InlineData("\"kind\":\"signed\",\"v\":2", "\"kind\":\"signed\",\"v\":0", "an entry of kind 'signed' version 0*")]
    [InlineData("\"kind\":\"signed\"", "\"kind\":\"Signed\"", "an entry of kind 'Signed' version 2*")]
    [InlineData("\"technician\":\"T07\"", "\"technician\":\"T 07\"", "not an entry of kind 'signed': *'T 07' is not a code*")]
    [InlineData("\"technician\":\"T07\"", "\"technician\":\"T07\",\"colour\":\"red\"", "not an entry of kind 'signed': *colour*")]
    [InlineData("\"technician\":\"T07\"", "\"technician\":7", "*")]
    public void What_this_program_does_not_know_is_refused_by_name(string was, string now, string told)
    {
        var line = ForgedLine.Of(EveryKind.Signed, was, now, PageLine.Nothing);

        var reading = () => PageLine.Read(line, PageLine.Nothing);

        reading.Should().Throw<FormatException>().WithMessage(told);
    }

    [Fact]
    public void A_page_from_before_crew_and_kit_were_a_setting_has_the_default()
    {
        var (was, prev) = (PageLine.Write(EveryKind.Page[1], PageLine.Nothing).Bytes, PageLine.Nothing);
        Encoding.UTF8.GetString(was).Should().Contain(",\"crewAndKitLb\":475.5");

        var read = PageLine.Read(ForgedLine.Of(EveryKind.Page[1], ",\"crewAndKitLb\":475.5", "", prev), prev).Recorded;

        ((DayFolderLoaded)read.Entry).Setup.Depot.CrewAndKitLb.Should().Be(DepotSettings.DefaultCrewAndKitLb);
    }

    [Fact]
    public void A_field_that_is_missing_is_refused()
    {
        var line = ForgedLine.Of(EveryKind.Signed, "\"technician\":\"T07\",", "", PageLine.Nothing);

        var reading = () => PageLine.Read(line, PageLine.Nothing);

        reading.Should().Throw<FormatException>("a signature without a person is no signature");
    }
}
