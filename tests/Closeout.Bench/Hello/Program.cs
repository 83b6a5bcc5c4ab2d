using Terminal.Gui.App;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

// A window with a line of text in it, below which nothing is drawn.
Application.MaximumIterationsPerSecond = 60;
using IApplication app = Application.Create().Init("ansi");
using var window = new Window();
window.Add(new Label { Text = "Hello, terminal", Y = Pos.AnchorEnd(1) });
app.Run(window);
