using System.Diagnostics;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using FluentAssertions;

namespace Closeout.Tests.Html;

/// <summary>A real browser without a display, asked over its DevTools protocol what it made of a page.</summary>
/// <remarks>https://chromedevtools.github.io/devtools-protocol/: domains Target, Page, Emulation, Runtime.</remarks>
public sealed partial class Browser : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly TempFolder folder = new();
    private readonly ClientWebSocket socket = new();
    private readonly Lazy<string> session;
    private Process? process;
    private int calls;

    public Browser() => session = new(Begin);

    /// <summary>Opens a page in a window of that size, in a light or a dark system.</summary>
    public void Open(string html, int width, int height, bool dark)
    {
        var file = folder[$"{Guid.NewGuid():N}.html"];
        File.WriteAllText(file, html);
        Call("Emulation.setDeviceMetricsOverride", new { width, height, deviceScaleFactor = 1, mobile = false });
        Call("Emulation.setEmulatedMedia", new { features = new[] { new { name = "prefers-color-scheme", value = dark ? "dark" : "light" } } });
        Call("Page.navigate", new { url = new Uri(file).AbsoluteUri });
        SpinWait.SpinUntil(
            () => Ask($"document.readyState === 'complete' && location.href.endsWith('{Path.GetFileName(file)}')").GetBoolean(), Patience).Should().BeTrue();
    }

    /// <summary>What an expression comes to in the page.</summary>
    public JsonElement Ask(string expression)
    {
        var answer = Call("Runtime.evaluate", new { expression, returnByValue = true });
        answer.TryGetProperty("exceptionDetails", out var fault).Should().BeFalse(fault.ToString());
        return answer.GetProperty("result").GetProperty("value");
    }

    /// <summary>How many sheets of paper it prints on, in the size that the page asks for.</summary>
    public int Sheets()
    {
        var pdf = Call("Page.printToPDF", new { preferCSSPageSize = true, printBackground = true }).GetProperty("data").GetBytesFromBase64();
        return SheetOfPaper().Count(Encoding.Latin1.GetString(pdf));
    }

    public void Dispose()
    {
        socket.Dispose();
        if (process is { HasExited: false })
            process.Kill(entireProcessTree: true);

        process?.WaitForExit();
        process?.Dispose();
        folder.Dispose();
    }

    private string Begin()
    {
        // Its sandbox wants more rights than a test has; only pages of ours are opened.
        process = Process.Start(new ProcessStartInfo("chromium",
        [
            "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--hide-scrollbars", "--no-first-run",
            "--remote-debugging-port=0", $"--user-data-dir={folder["profile"]}", "about:blank",
        ]) { RedirectStandardError = true })!;
        var (address, said) = ("", new StringBuilder());
        while (address.Length == 0 && process.StandardError.ReadLine() is { } line)
            address = Listening().Match(said.AppendLine(line) is not null ? line : "").Groups[1].Value;

        address.Should().NotBeEmpty($"the browser begins: {said}");
        _ = process.StandardError.ReadToEndAsync();
        socket.ConnectAsync(new Uri(address), default).GetAwaiter().GetResult();
        var target = Send("Target.createTarget", new { url = "about:blank" }, null).GetProperty("targetId").GetString();
        return Send("Target.attachToTarget", new { targetId = target, flatten = true }, null).GetProperty("sessionId").GetString()!;
    }

    private JsonElement Call(string method, object parameters) => Send(method, parameters, session.Value);

    private JsonElement Send(string method, object parameters, string? sessionId)
    {
        var id = ++calls;
        using var patience = new CancellationTokenSource(Patience);
        var told = JsonSerializer.SerializeToUtf8Bytes(sessionId is null ? new { id, method, @params = parameters } : (object)new { id, method, @params = parameters, sessionId });
        socket.SendAsync(told, WebSocketMessageType.Text, true, patience.Token).GetAwaiter().GetResult();
        while (true)
        {
            var answer = Receive(patience.Token);
            if (answer.TryGetProperty("id", out var of) && of.GetInt32() == id)
                return answer.TryGetProperty("result", out var result) ? result : throw new InvalidOperationException($"{method}: {answer}");
        }
    }

    private JsonElement Receive(CancellationToken patience)
    {
        using var bytes = new MemoryStream();
        var buffer = new byte[64 * 1024];
        WebSocketReceiveResult piece;
        do
        {
            piece = socket.ReceiveAsync(buffer, patience).GetAwaiter().GetResult();
            bytes.Write(buffer, 0, piece.Count);
        }
        while (!piece.EndOfMessage);

        return JsonDocument.Parse(bytes.ToArray()).RootElement;
    }

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex SheetOfPaper();

    [GeneratedRegex("DevTools listening on (ws://.*)$")]
    private static partial Regex Listening();
}
