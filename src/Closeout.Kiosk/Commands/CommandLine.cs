using System.CommandLine;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>The arguments, as the contract names them.</summary>
public sealed partial class CommandLine
{
    private readonly Option<string?> book = Everywhere(
        "--book", "FOLDER", "The book's folder. Without it: closeout in your application-data folder; for rehearse: DIR/book.");
    private readonly Option<string?> date = Everywhere(
        "--date", "DATE", "A business date of the book, YYYY-MM-DD. Without it: the open one.");
    private readonly Option<string?> backups = Everywhere(
        "--backups", "FOLDER", "Where the kiosk and load put the day's backup, best on another disk. Without it: backups in the book.");
    private readonly Option<int> keep = new("--keep-backups")
    {
        Description = "How many of the day's backups to keep; 0: make none.", HelpName = "N",
        Recursive = true, DefaultValueFactory = _ => DailyBackup.Usual,
    };
    private readonly Option<bool> noColor = new("--no-color")
    {
        Description = "Send no colors; NO_COLOR and TERM=dumb say the same.", Recursive = true,
    };

    private readonly Option<bool> final = new("--final") { Description = "Answer no, with exit code 1, while a van is not closed." };
    private readonly RootCommand root = new("The end of the day at a depot of service vans. Without a command: the kiosk.");
    private readonly TimeProvider clock;
    private readonly Pins pins;

    private CommandLine(TimeProvider clock, Pins pins)
    {
        (this.clock, this.pins) = (clock, pins);
        Array.ForEach<Option>([book, date, backups, keep, noColor], root.Add);
        root.SetAction(parsed => Guarded(() => KioskCommand.Run(
            FolderOf(parsed), DateOf(parsed), clock, Daily(parsed), pins, parsed.GetValue(noColor))));
        AddEvening();
        AddFilesOut();
        AddPages();
        AddKeeping();
    }

    /// <param name="pins">Null: the program's own.</param>
    public static RootCommand Build(TimeProvider clock, Pins? pins = null) => new CommandLine(clock, pins ?? new Pins()).root;

    private void AddEvening()
    {
        var folder = new Argument<string>("FOLDER") { Description = "A day folder." };
        var dir = Out("DIR", "Where the files and the rehearsal's book go.");
        Add(new("rehearse", "Plays a day folder's evening on a fresh book, prints the bay wall, writes all files.") { folder, dir, final },
            p => RehearseCommand.Run(p.GetValue(folder)!, Path(p, dir)!, Path(p, book), DateOf(p), p.GetValue(final)));
        Add(new("load", "Sets up the book from a day folder, or updates it.") { folder },
            p => LoadCommand.Run(p.GetValue(folder)!, FolderOf(p), DateOf(p), clock, Daily(p), pins));
        var lead = new Argument<string>("LEAD") { Description = "The code of a lead." };
        Add(new("first-pin", "Issues a lead's PIN and prints it once, while no other lead of the book has one that works.") { lead },
            p => FirstPinCommand.Run(p.GetValue(lead)!, FolderOf(p), pins, clock));
    }

    private void AddFilesOut()
    {
        foreach (var name in Output.Files.Keys.Where(f => f != "wall" && !Paged.ContainsKey(f)))
        {
            var file = Out("FILE", "The file to write; - is standard output.");
            Add(new(name, $"Writes {name}.csv.") { file, final }, p =>
            {
                var depot = DepotOf(p);
                return p.GetValue(final) && Say.NotFinal(depot)
                    ? ExitCode.No
                    : Output.Write(Path(p, file)!, Output.Files[name](depot, ArchiveCommand.Of(FolderOf(p), clock)));
            });
        }

        var sheets = Out("DIR", "The folder for the sheets.");
        Add(new("picks", "Writes a pick sheet for every van as text, and all in picks.html.") { sheets },
            p => PicksCommand.Run(new(DepotOf(p)), Path(p, sheets)!));
        const string Morning = "Writes the morning sheet: a page for the depot and one for every van as text, and all in morning.html.";
        Add(new("morning", Morning) { sheets }, p => MorningCommand.Run(new(DepotOf(p)), Path(p, sheets)!));
        var pictures = Out("DIR", "The folder for the photos.");
        Add(new("photos", "Writes all attached photos out again, byte for byte, by date and van.") { pictures },
            p => PhotosCommand.Run(FolderOf(p), DateOf(p), Path(p, pictures)!, clock));
        var audit = Out("FILE", "The file to write; - is standard output.");
        Add(new("audit", "Writes audit.csv: every entry of the book, or of --date: who did what when.") { audit },
            p => AuditCommand.Run(FolderOf(p), DateOf(p), Path(p, audit)!));
    }

    /// <summary>The commands that keep the book: check, backup, restore, archive.</summary>
    private void AddKeeping()
    {
        var repair = new Option<bool>("--repair") { Description = "Save every good entry into a new book. The damaged one is only read." };
        var newBook = Out("NEWBOOK", "The folder of the new book, for --repair.", required: false);
        Add(new("check", "Verifies the book: numbering, checksums, every entry lawful, the ledger balanced.") { repair, newBook },
            p => (p.GetValue(repair), Path(p, newBook)) switch
            {
                (true, { } to) => RepairCommand.Run(FolderOf(p), to, clock),
                (false, null) => CheckCommand.Run(FolderOf(p)),
                (true, null) => throw new UsageException(
                    "check --repair needs --out: found nothing, allowed the name of a folder that does not exist."),
                (false, _) => throw new UsageException("check writes nothing without --repair. Add --repair, or leave --out away."),
            });
        var backup = Out("FILE", "The file to write; one that exists is never replaced.");
        Add(new("backup", "Writes the whole book into one file, while kiosks may go on.") { backup },
            p => BackupCommand.Write(FolderOf(p), Path(p, backup)!, clock));
        var file = new Argument<string>("FILE") { Description = "A backup." };
        Add(new("restore", "Makes the book of a backup in a folder that does not exist.") { file },
            p => BackupCommand.Restore(FolderOf(p), p.GetValue(file)!));
        Add(new("archive", "Remakes the searchable archive from the pages."), p => ArchiveCommand.Run(FolderOf(p), clock));
    }

    private void Add(Command command, Func<ParseResult, int> run)
    {
        command.SetAction(parsed => Guarded(() => run(parsed)));
        root.Add(command);
    }

    private static Option<string?> Everywhere(string name, string value, string description) =>
        new(name) { Description = description, HelpName = value, Recursive = true };

    private static Option<string?> Out(string value, string description, bool required = true) =>
        new("--out") { Description = description, HelpName = value, Required = required };

    private BookFolder FolderOf(ParseResult parsed) => BookFolder.At(Path(parsed, book) ?? BookFolder.Default);

    private Depot DepotOf(ParseResult parsed) => Book.Open(FolderOf(parsed), DateOf(parsed)).Depot;

    private DailyBackup Daily(ParseResult parsed) => parsed.GetValue(keep) is >= 0 and var kept
        ? new(FolderOf(parsed), Path(parsed, backups) ?? FolderOf(parsed).Backups, kept, clock)
        : throw new UsageException($"--keep-backups is below zero: found {parsed.GetValue(keep)}, allowed 0 or more.");

    /// <summary>A path given on the command line; null: none.</summary>
    private static string? Path(ParseResult parsed, Option<string?> option) => parsed.GetValue(option) is { Length: 0 }
        ? throw new UsageException($"{option.Name} is empty: found nothing, allowed the name of a folder or file.")
        : parsed.GetValue(option);

    private DateOnly? DateOf(ParseResult parsed) => parsed.GetValue(date) is not { } text
        ? null
        : IsoDate.Parse(text) ?? throw new UsageException($"--date is no date: found \"{text}\", allowed YYYY-MM-DD.");

    private static int Guarded(Func<int> run)
    {
        try
        {
            return run();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Say.CannotSay(e);
        }
        catch (UsageException e)
        {
            return Say.Wrong(e.Message, ExitCode.BadInput);
        }
        catch (BookException e)
        {
            return Say.Wrong(e.Message, ExitCode.NoBook);
        }
    }
}
