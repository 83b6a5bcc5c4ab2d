using System.ComponentModel;
using System.Diagnostics;
using Closeout.Faults.Machine;
using Xunit;

namespace Closeout.Tests;

/// <summary>
/// A test that needs more of the machine than .NET, see <see cref="Needs"/>. Where it is missing the test is left out, with a
/// sentence.
/// </summary>
public sealed class NeedsFactAttribute : FactAttribute
{
    public NeedsFactAttribute(params string[] needs) => Skip = Needs.LeftOut(needs);
}

/// <summary>The same for a test of several cases, which are left out as one.</summary>
public sealed class NeedsTheoryAttribute : TheoryAttribute
{
    public NeedsTheoryAttribute(params string[] needs) => Skip = Needs.LeftOut(needs);
}

/// <summary>
/// What tests need of the machine, and the one place that knows how to look for it. Each is looked for once, when tests are
/// discovered.
/// </summary>
internal static class Needs
{
    /// <summary>A pseudo-terminal whose processes are seen in <c>/proc</c> and heed a hang-up, whoever started the tests.</summary>
    public const string Terminal = "a terminal";
    public const string Strace = "strace";

    /// <summary>Mounts that nobody else sees.</summary>
    public const string Mounts = "mounts of its own";

    /// <summary>Somebody whom the modes of files stop: whoever runs the tests, or root without the right to pass them over.</summary>
    public const string OrdinaryUser = "an ordinary user";
    public const string Pipe = "mkfifo";
    public const string Shell = "sh";
    public const string Linux = "Linux";

    /// <summary>A browser that draws without a display and tells what it drew.</summary>
    public const string Chromium = "chromium";

    /// <summary>Names, modes and links of files as Unix has them.</summary>
    public const string Unix = "Unix";

    /// <summary>The words before a program that is to run as an ordinary user.</summary>
    public static readonly string[] AsOrdinaryUser =
        Environment.IsPrivilegedProcess ? ["setpriv", "--bounding-set", "-dac_override,-dac_read_search"] : [];

    private static readonly Dictionary<string, Lazy<string?>> Missing = new()
    {
        [Terminal] = new(() => OnLinux() ?? Tool("script", "bsdutils") ?? Tool("stty", "coreutils") ?? Tool("sh", "dash")
            ?? Works(["env", "--default-signal=HUP", "true"], "an env that resets signals (Debian: coreutils 8.31 or later)")),
        [Strace] = new(() => OnLinux() ?? Tool("strace", "strace")
            ?? Works(["strace", "-f", "-o", "/dev/null", "true"], "the right to trace a program")),
        [Mounts] = new(() => OnLinux() ?? Tool("unshare", "util-linux") ?? Tool("mount", "mount") ?? Tool("sh", "dash")
            ?? Works(
                [.. OwnMounts.Words, "mount", "-t", "tmpfs", "tmpfs", Path.GetTempPath()],
                "the right to mount (root has it, others where user namespaces are allowed)")),
        [OrdinaryUser] = new(() => OnUnix() ?? Tool("chmod", "coreutils") ?? (Environment.IsPrivilegedProcess
            ? Tool("setpriv", "util-linux") ?? Works([.. AsOrdinaryUser, "true"], "for root the right to give up a right")
            : null)),
        [Pipe] = new(() => OnUnix() ?? Tool("mkfifo", "coreutils")),
        [Shell] = new(() => OnUnix() ?? Tool("sh", "dash")),
        [Linux] = new(OnLinux),
        [Chromium] = new(() => Tool("chromium", "chromium")),
        [Unix] = new(OnUnix),
    };

    /// <summary>Null: all of it is there; else why the test is left out.</summary>
    public static string? LeftOut(params string[] needs) =>
        needs.Select(n => Missing[n].Value).FirstOrDefault(m => m is not null) is { } missing ? $"Left out: needs {missing}." : null;

    private static string? OnLinux() => OperatingSystem.IsLinux() ? null : "Linux";

    private static string? OnUnix() => OperatingSystem.IsWindows() ? "Linux or another Unix" : null;

    /// <param name="package">Where Debian has it.</param>
    private static string? Tool(string name, string package) =>
        ExitCode(name, "--version") is null ? $"{name} (Debian: {package}), which is not on this machine" : null;

    private static string? Works(string[] words, string what) =>
        ExitCode(words) == 0 ? null : $"{what}, and `{string.Join(' ', words)}` does not work on this machine";

    /// <summary>Null: there is no such program, or it may not be run.</summary>
    private static int? ExitCode(params string[] words)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(words[0], words[1..])
            {
                RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
            })!;
            process.StandardInput.Close();
            var err = process.StandardError.ReadToEndAsync();
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode;
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}
