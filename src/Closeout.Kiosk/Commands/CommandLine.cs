using System.CommandLine;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>The arguments, as the contract names them.</summary>
public sealed partial class CommandLine
{
    private readonly Option<string?> book = Everywhere(
        "--book", "FOLDER", T("The book's folder. Without it: closeout in your application-data folder; for rehearse: DIR/book."));
    private readonly Option<string?> date = Everywhere(
        "--date", "DATE", T("A business date of the book, YYYY-MM-DD. Without it: the open one."));
    private readonly Option<string?> backups = Everywhere(
        "--backups", "FOLDER", T("Where the kiosk and load put the day's backup, best on another disk. Without it: backups in the book."));
    private readonly Option<int> keep = new("--keep-backups")
    {
        Description = T("How many of the day's backups to keep; 0: make none."), HelpName = "N",
        Recursive = true, DefaultValueFactory = _ => DailyBackup.Usual,
    };
    private readonly Option<bool> noColor = new("--no-color")
    {
        Description = T("Send no colors; NO_COLOR and TERM=dumb say the same."), Recursive = true,
    };

    private readonly Option<string?> language = Everywhere(
        "--language", "CODE", T("The language that is spoken, en or es. Without it: the depot's, and each technician's own."));

    private readonly Option<bool> final = new("--final") { Description = T("Answer no, with exit code 1, while a van is not closed.") };
    private readonly RootCommand root = new(T("The end of the day at a depot of service vans. Without a command: the kiosk."));
    private readonly TimeProvider clock;
    private readonly Pins pins;

    private CommandLine(TimeProvider clock, Pins pins)
    {
        (this.clock, this.pins) = (clock, pins);
        Array.ForEach<Option>([book, date, backups, keep, noColor, language], root.Add);
        root.SetAction(parsed => Guarded(parsed, () => KioskCommand.Run(
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
        var folder = new Argument<string>("FOLDER") { Description = T("A day folder.") };
        var dir = Out("DIR", T("Where the files and the rehearsal's book go."));
        Add(
            new("rehearse", T("Plays a day folder's evening on a fresh book, prints the bay wall, writes all files.")) { folder, dir,
                final },
            p => RehearseCommand.Run(p.GetValue(folder)!, Path(p, dir)!, Path(p, book), DateOf(p), p.GetValue(final)));
        Add(new("load", T("Sets up the book from a day folder, or updates it.")) { folder },
            p => LoadCommand.Run(p.GetValue(folder)!, FolderOf(p), DateOf(p), clock, Daily(p), pins));
        var lead = new Argument<string>("LEAD") { Description = T("The code of a lead.") };
        Add(new("first-pin", T("Issues a lead's PIN and prints it once, while no other lead of the book has one that works.")) { lead },
            p => FirstPinCommand.Run(p.GetValue(lead)!, FolderOf(p), pins, clock));
    }

    private void AddFilesOut()
    {
        foreach (var name in Output.Files.Keys.Where(f => f != "wall" && !Paged.ContainsKey(f)))
        {
            var file = Out("FILE", T("The file to write; - is standard output."));
            Add(new(name, T($"Writes {name}.csv.")) { file, final }, p =>
            {
                var depot = DepotOf(p);
                return p.GetValue(final) && Say.NotFinal(depot)
                    ? ExitCode.No
                    : Output.Write(Path(p, file)!, Output.Files[name](depot, ArchiveCommand.Of(FolderOf(p), clock)));
            });
        }

        var sheets = Out("DIR", T("The folder for the sheets."));
        Add(new("picks", T("Writes a pick sheet for every van as text, and all in picks.html.")) { sheets },
            p => PicksCommand.Run(new(DepotOf(p)), Path(p, sheets)!));
        var morning = T("Writes the morning sheet: a page for the depot and one for every van as text, and all in morning.html.");
        Add(new("morning", morning) { sheets }, p => MorningCommand.Run(new(DepotOf(p)), Path(p, sheets)!));
        var pictures = Out("DIR", T("The folder for the photos."));
        Add(new("photos", T("Writes all attached photos out again, byte for byte, by date and van.")) { pictures },
            p => PhotosCommand.Run(FolderOf(p), DateOf(p), Path(p, pictures)!, clock));
        var audit = Out("FILE", T("The file to write; - is standard output."));
        Add(new("audit", T("Writes audit.csv: every entry of the book, or of --date: who did what when.")) { audit },
            p => AuditCommand.Run(FolderOf(p), DateOf(p), Path(p, audit)!));
    }

    /// <summary>The commands that keep the book: check, backup, restore, archive.</summary>
    private void AddKeeping()
    {
        var repair =
            new Option<bool>("--repair") { Description = T("Save every good entry into a new book. The damaged one is only read.") };
        var newBook = Out("NEWBOOK", T("The folder of the new book, for --repair."), required: false);
        Add(new("check", T("Verifies the book: numbering, checksums, every entry lawful, the ledger balanced.")) { repair, newBook },
            p => (p.GetValue(repair), Path(p, newBook)) switch
            {
                (true, { } to) => RepairCommand.Run(FolderOf(p), to, clock),
                (false, null) => CheckCommand.Run(FolderOf(p)),
                (true, null) => throw new UsageException(
                    T("check --repair needs --out: found nothing, allowed the name of a folder that does not exist.")),
                (false, _) => throw new UsageException(T("check writes nothing without --repair. Add --repair, or leave --out away.")),
            });
        var backup = Out("FILE", T("The file to write; one that exists is never replaced."));
        Add(new("backup", T("Writes the whole book into one file, while kiosks may go on.")) { backup },
            p => BackupCommand.Write(FolderOf(p), Path(p, backup)!, clock));
        var file = new Argument<string>("FILE") { Description = T("A backup.") };
        Add(new("restore", T("Makes the book of a backup in a folder that does not exist.")) { file },
            p => BackupCommand.Restore(FolderOf(p), p.GetValue(file)!));
        Add(new("archive", T("Remakes the searchable archive from the pages.")), p => ArchiveCommand.Run(FolderOf(p), clock));
    }

    private void Add(Command command, Func<ParseResult, int> run)
    {
        command.SetAction(parsed => Guarded(parsed, () => run(parsed)));
        root.Add(command);
    }

    private static Option<string?> Everywhere(string name, string value, string description) =>
        new(name) { Description = description, HelpName = value, Recursive = true };

    private static Option<string?> Out(string value, string description, bool required = true) =>
        new("--out") { Description = description, HelpName = value, Required = required };

    private BookFolder FolderOf(ParseResult parsed) => BookFolder.At(Path(parsed, book) ?? BookFolder.Default);

    private Depot DepotOf(ParseResult parsed)
    {
        var depot = Book.Open(FolderOf(parsed), DateOf(parsed)).Depot;
        Language.OfDepot(depot.Setup.Depot);
        return depot;
    }

    private DailyBackup Daily(ParseResult parsed) => parsed.GetValue(keep) is >= 0 and var kept
        ? new(FolderOf(parsed), Path(parsed, backups) ?? FolderOf(parsed).Backups, kept, clock)
        : throw new UsageException(T($"--keep-backups is below zero: found {parsed.GetValue(keep)}, allowed 0 or more."));

    /// <summary>A path given on the command line; null: none.</summary>
    private static string? Path(ParseResult parsed, Option<string?> option) => parsed.GetValue(option) is { Length: 0 }
        ? throw new UsageException(T($"{option.Name} is empty: found nothing, allowed the name of a folder or file."))
        : parsed.GetValue(option);

    private DateOnly? DateOf(ParseResult parsed) => parsed.GetValue(date) is not { } text
        ? null
        : IsoDate.Parse(text) ?? throw new UsageException(T($"--date is no date: found \"{text}\", allowed YYYY-MM-DD."));

    private int Guarded(ParseResult parsed, Func<int> run)
    {
        try
        {
            var code = parsed.GetValue(language);
            return code is null || Language.Codes.Contains(code)
                ? Language.Choosing(code, run)
                : throw new UsageException(T($"--language is none: found {code}, allowed {string.Join(", ", Language.Codes)}."));
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
