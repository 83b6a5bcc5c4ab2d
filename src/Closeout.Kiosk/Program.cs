using System.Globalization;
using Closeout.Commands;

// The help is written before the arguments are read: its language is looked for first.
var language = Language.NamedIn(args);
CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language ?? "en");
return Language.Choosing(language, () =>
{
    var parsed = CommandLine.Build(TimeProvider.System).Parse(args);
    if (parsed.Errors.Count > 0)
    {
        foreach (var error in parsed.Errors)
            Say.Wrong(error.Message);

        Say.Wrong(T("Run: closeout --help"));
        return ExitCode.BadInput;
    }

    try
    {
        return parsed.Invoke(new() { EnableDefaultExceptionHandler = false });
    }
    catch (IOException e)
    {
        // The help and the version go to standard output too.
        return Say.CannotSay(e);
    }
});
