using System.Security.Cryptography;
using System.Text;
using LiteDB;

namespace Closeout.Store;

/// <summary>
/// The archive's files. The database has no checksums of its own, and flipped bytes in it give wrong answers without a word;
/// so SHA-256 and length of the whole file stand beside it, and one that does not fit is not believed.
/// </summary>
internal sealed record ArchiveFiles(string Folder)
{
    /// <summary>The most bytes of the database, which is read whole for its checksum: twenty times five years of a hundred vans.</summary>
    private const long MostBytes = 16L << 30;

    private string Database => Path.Combine(Folder, "closeout.db");
    private string Log => Path.Combine(Folder, "closeout-log.db");
    private string Seal => Path.Combine(Folder, "closeout.db.sha256");
    public string Lock => Path.Combine(Folder, "lock");

    public bool Exist => Path.Exists(Database) || Path.Exists(Log);

    /// <exception cref="NoPlainFileException">In the place of one of them is no plain file.</exception>
    public void MustBePlain() => Array.ForEach([Database, Log, Seal], PlainFile.Refuse);

    /// <summary>Whether the database is the one that was sealed. A log was left by a program that died, and has no checksum.</summary>
    public bool AreAsLeft => Disk.Try(
        () =>
        {
            using var file = PlainFile.Open(Database, MostBytes);
            var told = Encoding.ASCII.GetString(PlainFile.Read(Seal, BookFolder.MostText));
            return new FileInfo(Log) is not { Exists: true, Length: > 0 }
                && told.EndsWith(Length(file), StringComparison.Ordinal)
                && told == Sum(file);
        },
        otherwise: false);

    /// <summary>Opens the database, or makes it.</summary>
    /// <exception cref="InvalidDataException">It was made by another version of this program.</exception>
    public LiteDatabase Connect()
    {
        // Made by us, so that they are for the owner alone.
        Array.ForEach([Database, Log], f => Disk.Own(f, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None).Dispose());
        return Fitting(new LiteDatabase($"Filename=\"{Path.GetFullPath(Database)}\";Connection=direct;Collation=/Ordinal"));
    }

    /// <summary>Opens the database to look only: by a stream that cannot be written, its log in memory. Nothing is changed.</summary>
    /// <exception cref="InvalidDataException">It was made by another version of this program.</exception>
    public T Look<T>(Func<LiteDatabase, T> look)
    {
        // The library does not close a stream that it was given.
        using var file = PlainFile.Open(Database, MostBytes);
        using var db = Fitting(new LiteDatabase(file, mapper: null, new MemoryStream()));
        return look(db);
    }

    private static LiteDatabase Fitting(LiteDatabase db)
    {
        if (ArchiveState.Fits(db))
            return db;

        db.Dispose();
        throw new InvalidDataException("an archive of another shape");
    }

    /// <summary>Sealed once the database is closed. A program that dies before leaves a seal that does not fit.</summary>
    public void SetSeal()
    {
        using var file = PlainFile.Open(Database, MostBytes);
        Disk.WriteWhole(Seal, Encoding.ASCII.GetBytes(Sum(file)), own: true);
    }

    public void PutAside()
    {
        foreach (var file in new[] { Database, Log }.Where(File.Exists))
            File.Move(file, file + ".damaged", overwrite: true);
    }

    /// <summary>Both together: a log without its database would be taken for the next one's.</summary>
    public void Delete()
    {
        File.Delete(Database);
        File.Delete(Log);
    }

    /// <summary>Its length is told too: what is longer or shorter need not be read to the end.</summary>
    private static string Sum(FileStream file) =>
        Convert.ToHexStringLower(SHA256.HashData(new BufferedStream(file, 1 << 20))) + Length(file);

    private static string Length(FileStream file) => FormattableString.Invariant($" {file.Length}");
}
