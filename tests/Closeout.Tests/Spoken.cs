using System.Text;

namespace Closeout.Tests;

/// <summary>What a command of this process said: the console of each asynchronous flow apart, so that tests can run side by side.</summary>
internal sealed record Spoken(int Code, string Out, string Err)
{
    private static readonly AsyncLocal<(StringWriter Out, StringWriter Err)?> Mine = new();

    static Spoken()
    {
        Console.SetOut(new Ear(Console.Out, m => m.Out));
        Console.SetError(new Ear(Console.Error, m => m.Err));
    }

    public static Spoken By(Func<int> command)
    {
        var (said, erred) = (new StringWriter(), new StringWriter());
        Mine.Value = (said, erred);
        try
        {
            return new(command(), said.ToString(), erred.ToString());
        }
        finally
        {
            Mine.Value = null;
        }
    }

    private sealed class Ear(TextWriter otherwise, Func<(StringWriter Out, StringWriter Err), StringWriter> which) : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        private TextWriter Writer => Mine.Value is { } mine ? which(mine) : otherwise;

        public override void Write(char value) => Writer.Write(value);

        public override void Write(string? value) => Writer.Write(value);
    }
}
