using Closeout.Commands;

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
