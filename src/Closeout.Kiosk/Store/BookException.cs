namespace Closeout.Store;

/// <summary>The book cannot be used now: in use, unreadable, not writable, or damaged. Nothing was written. It says what to do.</summary>
public class BookException(string message, Exception? inner = null) : Exception(message, inner)
{
    /// <summary>What to do about a damaged book. Neither way writes to the damaged one.</summary>
    public static string Remedy =>
        T(
            "Bring back the newest backup with: closeout restore FILE --book NEWFOLDER; or keep every good entry with: closeout --book "
                + "THISBOOK check --repair --out NEWFOLDER");

    /// <summary>A fault in a book, and what to do about it.</summary>
    public static BookException Damaged(string fault, Exception? inner = null) => new($"{fault} {Remedy}", inner);

    /// <summary>What to do when a file of a book cannot be opened for writing. What is no file is in the way.</summary>
    public static string MakeRoom(Exception said) => said is NoPlainFileException
        ? T("Nothing was recorded; take it away and try again.")
        : T("Nothing was recorded; make the folder writable, with room, and try again.");

    /// <summary>Does what the system may refuse.</summary>
    /// <param name="sentence">What is told then, by what the system said.</param>
    /// <exception cref="BookException">The system refused it.</exception>
    public static T Telling<T>(Func<T> act, Func<Exception, string> sentence)
    {
        try
        {
            return act();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException(sentence(e), e);
        }
    }
}

/// <summary>A backup is damaged, or is none. The message says what to do.</summary>
public sealed class BackupException(string message, Exception? inner = null) : BookException(message, inner);

/// <summary>Whole, and written by another version of the program: no damage, and nothing that could be repaired.</summary>
public sealed class OtherVersionException(string message) : FormatException(message);
