namespace Closeout.Commands;

/// <summary>The exit codes of the contract.</summary>
public static class ExitCode
{
    public const int Done = 0;

    /// <summary>The answer is no: a check failed, a van is not closed under --final.</summary>
    public const int No = 1;

    /// <summary>Bad input or usage.</summary>
    public const int BadInput = 2;

    /// <summary>The book is in use, or cannot be read or written.</summary>
    public const int NoBook = 3;
}
