using System.CommandLine;
using Closeout.Facts;
using Closeout.Screens;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>The arguments, as the contract names them.</summary>
public static class CommandLine
{
    /// <param name="pins">Null: the program's own.</param>
    public static RootCommand Build(TimeProvider clock, Pins? pins = null)
    {
        pins ??= new Pins();
        var book = new Option<string?>("--book") { Description = "The book's folder. Without it: closeout in your application-data folder; for rehearse: DIR/book.", HelpName = "FOLDER", Recursive = true };
        var date = new Option<string?>("--date") { Description = "A business date of the book, YYYY-MM-DD. Without it: the open one.", HelpName = "DATE", Recursive = true };
        var backups = new Option<string?>("--backups") { Description = "Where the kiosk and load put the day's backup, best on another disk. Without it: backups in the book.", HelpName = "FOLDER", Recursive = true };
        var keep = new Option<int>("--keep-backups") { Description = "How many of the day's backups to keep; 0: make none.", HelpName = "N", Recursive = true, DefaultValueFactory = _ => DailyBackup.Usual };
        var root = new RootCommand("The end of the day at a depot of service vans. Without a command: the kiosk.") { book, date, backups, keep };
        BookFolder FolderOf(ParseResult parsed) => BookFolder.At(Path(parsed, book) ?? BookFolder.Default);
        DailyBackup Daily(ParseResult parsed) => new(
            FolderOf(parsed),
            Path(parsed, backups) ?? FolderOf(parsed).Backups,
            parsed.GetValue(keep) is >= 0 and var kept ? kept : throw new UsageException($"--keep-backups is below zero: found {parsed.GetValue(keep)}, allowed 0 or more."),
            clock);

        root.SetAction(parsed => Guarded(() => KioskCommand.Run(FolderOf(parsed), DateOf(parsed.GetValue(date)), clock, Daily(parsed), pins)));

        var folder = new Argument<string>("FOLDER") { Description = "A day folder." };
        var outDir = new Option<string?>("--out") { Description = "Where the files and the rehearsal's book go.", HelpName = "DIR", Required = true };
        var final = new Option<bool>("--final") { Description = "Answer no, with exit code 1, while a van is not closed." };
        var rehearse = new Command("rehearse", "Plays a day folder's evening on a fresh book, prints the bay wall, writes all files.") { folder, outDir, final };
        rehearse.SetAction(parsed => Guarded(() => RehearseCommand.Run(parsed.GetValue(folder)!, Path(parsed, outDir)!, Path(parsed, book), DateOf(parsed.GetValue(date)), parsed.GetValue(final))));
        root.Add(rehearse);

        var load = new Command("load", "Sets up the book from a day folder, or brings it up to one.") { folder };
        load.SetAction(parsed => Guarded(() => LoadCommand.Run(parsed.GetValue(folder)!, FolderOf(parsed), DateOf(parsed.GetValue(date)), clock, Daily(parsed), pins)));
        root.Add(load);

        var lead = new Argument<string>("LEAD") { Description = "The code of a lead." };
        var first = new Command("first-pin", "Issues a lead's PIN and prints it once, while no other lead of the book has one that works.") { lead };
        first.SetAction(parsed => Guarded(() => FirstPinCommand.Run(parsed.GetValue(lead)!, FolderOf(parsed), pins, clock)));
        root.Add(first);

        var wall = new Command("wall", "Prints the bay wall.") { final };
        wall.SetAction(parsed => Guarded(() =>
        {
            var depot = Book.Open(FolderOf(parsed), DateOf(parsed.GetValue(date))).Depot;
            Console.Out.Write(WallText.Of(depot, Restock.RestockPlan.For(depot)));
            return parsed.GetValue(final) && Output.RefusesFinal(depot) ? ExitCode.No : ExitCode.Done;
        }));
        root.Add(wall);

        foreach (var name in Output.Files.Keys.Where(f => f != "wall"))
        {
            var file = new Option<string?>("--out") { Description = "The file to write; - is standard output.", HelpName = "FILE", Required = true };
            var export = new Command(name, $"Writes {name}.csv.") { file, final };
            export.SetAction(parsed => Guarded(() =>
            {
                var depot = Book.Open(FolderOf(parsed), DateOf(parsed.GetValue(date))).Depot;
                if (parsed.GetValue(final) && Output.RefusesFinal(depot))
                {
                    return ExitCode.No;
                }

                Output.Write(Path(parsed, file)!, Output.Files[name](depot, ArchiveCommand.Of(FolderOf(parsed), clock)));
                return ExitCode.Done;
            }));
            root.Add(export);
        }

        var pickDir = new Option<string?>("--out") { Description = "The folder for the sheets.", HelpName = "DIR", Required = true };
        var picks = new Command("picks", "Writes a pick sheet for every van as text, and all in picks.html.") { pickDir };
        picks.SetAction(parsed => Guarded(() => PicksCommand.Run(Book.Open(FolderOf(parsed), DateOf(parsed.GetValue(date))).Depot, Path(parsed, pickDir)!)));
        root.Add(picks);

        var morningDir = new Option<string?>("--out") { Description = "The folder for the sheets.", HelpName = "DIR", Required = true };
        var morning = new Command("morning", "Writes the morning sheet: a page for the depot and one for every van as text, and all in morning.html.") { morningDir };
        morning.SetAction(parsed => Guarded(() => MorningCommand.Run(Book.Open(FolderOf(parsed), DateOf(parsed.GetValue(date))).Depot, Path(parsed, morningDir)!)));
        root.Add(morning);

        var photoDir = new Option<string?>("--out") { Description = "The folder for the pictures.", HelpName = "DIR", Required = true };
        var photos = new Command("photos", "Writes all attached pictures out again, byte for byte, by date and van.") { photoDir };
        photos.SetAction(parsed => Guarded(() => PhotosCommand.Run(FolderOf(parsed), DateOf(parsed.GetValue(date)), Path(parsed, photoDir)!, clock)));
        root.Add(photos);

        var auditFile = new Option<string?>("--out") { Description = "The file to write; - is standard output.", HelpName = "FILE", Required = true };
        var audit = new Command("audit", "Writes audit.csv: every entry of the book, or of --date: who did what when.") { auditFile };
        audit.SetAction(parsed => Guarded(() => AuditCommand.Run(FolderOf(parsed), DateOf(parsed.GetValue(date)), Path(parsed, auditFile)!)));
        root.Add(audit);

        AddKeeping(root, FolderOf, clock);
        return root;
    }

    /// <summary>The commands that keep the book: check, backup, restore, archive.</summary>
    private static void AddKeeping(RootCommand root, Func<ParseResult, BookFolder> folderOf, TimeProvider clock)
    {
        var repair = new Option<bool>("--repair") { Description = "Save every good entry into a new book. The damaged one is only read." };
        var newBook = new Option<string?>("--out") { Description = "The folder of the new book, for --repair.", HelpName = "NEWBOOK" };
        var check = new Command("check", "Verifies the book: numbering, checksums, every entry lawful, the ledger balanced.") { repair, newBook };
        check.SetAction(parsed => Guarded(() => (parsed.GetValue(repair), Path(parsed, newBook)) switch
        {
            (true, { } to) => RepairCommand.Run(folderOf(parsed), to, clock),
            (false, null) => CheckCommand.Run(folderOf(parsed)),
            (true, null) => throw new UsageException("check --repair needs --out: found nothing, allowed the name of a folder that does not exist."),
            _ => throw new UsageException("check writes nothing without --repair. Add --repair, or leave --out away."),
        }));
        root.Add(check);

        var backupFile = new Option<string?>("--out") { Description = "The file to write; one that exists is never replaced.", HelpName = "FILE", Required = true };
        var backup = new Command("backup", "Writes the whole book into one file, while kiosks may go on.") { backupFile };
        backup.SetAction(parsed => Guarded(() => BackupCommand.Write(folderOf(parsed), Path(parsed, backupFile)!, clock)));
        root.Add(backup);

        var file = new Argument<string>("FILE") { Description = "A backup." };
        var restore = new Command("restore", "Makes the book of a backup in a folder that does not exist.") { file };
        restore.SetAction(parsed => Guarded(() => BackupCommand.Restore(folderOf(parsed), parsed.GetValue(file)!)));
        root.Add(restore);

        var archive = new Command("archive", "Makes the searchable archive anew from the pages.");
        archive.SetAction(parsed => Guarded(() => ArchiveCommand.Run(folderOf(parsed), clock)));
        root.Add(archive);
    }

    /// <summary>A path given on the command line; null: none.</summary>
    private static string? Path(ParseResult parsed, Option<string?> option) => parsed.GetValue(option) is { Length: 0 }
        ? throw new UsageException($"{option.Name} is empty: found nothing, allowed the name of a folder or file.")
        : parsed.GetValue(option);

    private static DateOnly? DateOf(string? text) => text is null
        ? null
        : IsoDate.TryParse(text, out var date)
            ? date
            : throw new UsageException($"--date is no date: found \"{text}\", allowed YYYY-MM-DD.");

    private static int Guarded(Func<int> run)
    {
        try
        {
            return run();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Output.CannotSay(e);
        }
        catch (UsageException e)
        {
            Say.Wrong(e.Message);
            return ExitCode.BadInput;
        }
        catch (BookException e)
        {
            Say.Wrong(e.Message);
            return ExitCode.NoBook;
        }
    }
}
