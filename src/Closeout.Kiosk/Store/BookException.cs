using Closeout.Words;

namespace Closeout.Store;

/// <summary>The book cannot be used now: in use, unreadable, not writable, or damaged. Nothing was written. The message says what to do.</summary>
public class BookException(string message, Exception? inner = null) : Exception(message, inner)
{
    /// <summary>What to do about what the system said of a file of the book: what is no file is in the way, and nothing else helps.</summary>
    public static string Do(Exception said, string usually) => said is NoPlainFileException ? "take it away and try again" : usually;

    /// <summary>What to do about a damaged book. Neither way writes to the damaged one.</summary>
    public const string Remedy =
        "Bring back the newest backup with: closeout restore FILE --book NEWFOLDER; or keep every good entry with: closeout --book THISBOOK check --repair --out NEWFOLDER";
}

/// <summary>A backup is damaged, or is none. The message says what to do.</summary>
public sealed class BackupException(string message, Exception? inner = null) : BookException(message, inner);

/// <summary>Whole, and written by another version of the program: no damage, and nothing that could be repaired.</summary>
public sealed class OtherVersionException(string message) : FormatException(message);
