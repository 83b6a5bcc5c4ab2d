using Closeout.Screens.Parts;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Closeout.Screens;

/// <summary>
/// The one window: passes keys to the session and draws its sheet. All that can be decided without a terminal is decided elsewhere.
/// </summary>
public sealed class KioskWindow : Runnable
{
    private readonly KioskSession session;
    private readonly Paint paint;
    private Sheet? shown;

    public KioskWindow(KioskSession session, Paint paint)
    {
        (this.session, this.paint) = (session, paint);
        session.Draw = DrawNow;
        session.DropsTypedAhead = true;
        CanFocus = true;
        Width = Dim.Fill();
        Height = Dim.Fill();
    }

    /// <summary>Takes in what others wrote, and draws when the screen shows anything else by it, or by the minute.</summary>
    public void Tick()
    {
        if (session.Refresh())
            SetNeedsDraw();
    }

    /// <summary>The loop draws once a key is done with; what takes long says so before.</summary>
    private void DrawNow()
    {
        SetNeedsDraw();
        App?.LayoutAndDraw();
        App?.Driver?.Refresh();
    }

    /// <summary>A tap or a click does what the keys of that place do.</summary>
    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.IsSingleClicked && mouse.Position is { } at && shown is { } sheet)
        {
            foreach (var key in sheet.Taps.At(at.Y, at.X))
                Give(key);
        }

        return true;
    }

    private void Give(Keystroke stroke)
    {
        session.Press(stroke);
        if (session.IsDone)
            App!.RequestStop(this);

        SetNeedsDraw();
    }

    protected override bool OnKeyDown(Key key)
    {
        if (Translate(key) is { } stroke)
            Give(stroke);

        // No other binding of the library gets a key: Esc would leave, and a stray Ctrl+Z would suspend.
        return true;
    }

    /// <summary>The library asks terminals to mark what is pasted, so it does not come as keys.</summary>
    public void Paste(string text)
    {
        session.Paste(text);
        SetNeedsDraw();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var sheet = shown = session.Show(Viewport.Width, Viewport.Height);
        for (var row = 0; row < sheet.Height; row++)
        {
            foreach (var (column, text, look) in sheet.Runs(row))
            {
                SetAttribute(paint.Of(look));
                Move(column, row);
                AddStr(paint.HasShapes ? text : Shapes.Plain(text));
            }
        }

        var caret = sheet.Caret is { } at && at.Row < Viewport.Height && at.Column < Viewport.Width
            ? new Cursor { Position = ViewportToScreen(new System.Drawing.Point(at.Column, at.Row)), Style = CursorStyle.BlinkingBar }
            : new Cursor { Position = null };
        if (!Equals(caret, Cursor))
            Cursor = caret;

        return true;
    }

    private static Keystroke? Translate(Key key)
    {
        if (key == Key.Q.WithCtrl || key == Key.C.WithCtrl)
            return new(Press.Quit);

        var named = Named(key);
        if (named is { } press)
            return new(press);

        return key.IsCtrl || key.IsAlt ? null : key.AsRune.Value switch
        {
            > char.MaxValue => new(Press.Beyond),
            >= ' ' and not '\u007f' and var value => new(Press.Character, (char)value),
            _ => null,
        };
    }

    private static Press? Named(Key key) => key switch
    {
        _ when key == Key.Enter => Press.Enter,
        _ when key == Key.Esc => Press.Escape,
        _ when key == Key.CursorUp => Press.Up,
        _ when key == Key.CursorDown => Press.Down,
        _ when key == Key.Tab => Press.Tab,
        _ when key == Key.Tab.WithShift => Press.Up,
        _ when key == Key.CursorLeft => Press.Left,
        _ when key == Key.CursorRight => Press.Right,
        _ when key == Key.CursorLeft.WithCtrl => Press.WordLeft,
        _ when key == Key.CursorRight.WithCtrl => Press.WordRight,
        _ when key == Key.Backspace => Press.Backspace,
        _ when key == Key.Delete => Press.Delete,
        _ when key == Key.PageUp => Press.PageUp,
        _ when key == Key.PageDown => Press.PageDown,
        _ when key == Key.Home => Press.Home,
        _ when key == Key.End => Press.End,
        _ when key == Key.F1 => Press.F1,
        _ when key == Key.F2 => Press.F2,
        _ when key == Key.F3 => Press.F3,
        _ when key == Key.F4 => Press.F4,
        _ when key == Key.F5 => Press.F5,
        _ when key == Key.F6 => Press.F6,
        _ when key == Key.F7 => Press.F7,
        _ when key == Key.F8 => Press.F8,
        _ when key == Key.F9 => Press.F9,
        _ => null,
    };
}
