using Closeout.Words;

namespace Closeout.Commands;

/// <summary>
/// The one way by which a command says a sentence. Names of files, of people and of whatever a day folder or a book holds stand
/// in them, and none of those may steer the terminal.
/// </summary>
public static class Say
{
    /// <summary>A line on standard output.</summary>
    public static void Done(string sentence) => Console.Out.WriteLine(Harmless.Line(sentence));

    /// <summary>A line on standard error.</summary>
    public static void Wrong(string sentence) => Console.Error.WriteLine(Harmless.Line(sentence));
}
