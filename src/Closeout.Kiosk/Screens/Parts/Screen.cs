namespace Closeout.Screens.Parts;

/// <summary>What a screen looks at: the depot with what is worked out of it, the moment, and what is being said to the person.</summary>
/// <param name="Said">Empty: nothing.</param>
public sealed record Scene(Tonight Tonight, DateTimeOffset Now, string Said)
{
    /// <summary>Whether what is said is that something was done.</summary>
    public bool IsDone { get; init; }

    /// <summary>Whose PIN need not be typed again at the desk; null: nobody's.</summary>
    public Known? Known { get; init; }

    public Depot Depot => Tonight.Depot;
}

/// <summary>What a key comes to: the screen from now on, perhaps a sentence, perhaps something to do in the world.</summary>
/// <param name="Said">To the person; empty: nothing.</param>
public readonly record struct Reply(Screen Screen, string Said = "", Act? Act = null)
{
    /// <summary>Whether what is said is that something was done; else that it was not, or must be seen.</summary>
    public bool IsDone { get; init; }

    public static implicit operator Reply(Screen screen) => new(screen);

    /// <summary>What is missing or refused is said, and the cursor stands in the field that it is about.</summary>
    public static Reply Lacks(Screen screen, string? field, string said) => new(screen.At(field), said);
}

/// <summary>One screen: what it holds beyond the book, what its keys do, how it is drawn, and what its help says.</summary>
public abstract record Screen
{
    /// <summary>Columns of the key line of the smallest terminal that the screens are made for.</summary>
    private const int KeyColumns = 78;

    /// <summary>The smallest terminal that the screens are made for.</summary>
    private const int LeastColumns = 80;
    private const int LeastRows = 24;

    /// <summary>The keys that work now, in the order of the key line. Of two that fit, the first is meant.</summary>
    public abstract IReadOnlyList<Binding> Bindings(Scene scene);

    /// <summary>What its help says; an empty line parts paragraphs.</summary>
    public abstract IEnumerable<string> Help(Scene scene);

    /// <summary>Draws all but the keys and what is said.</summary>
    protected abstract void Draw(Sheet sheet, Scene scene);

    /// <summary>What a key does.</summary>
    public Reply On(Scene scene, Keystroke key) => Bindings(scene).FirstOrDefault(b => b.Keys.Fit(key)) is { } binding
        ? binding.Do(key)
        : new(this);

    /// <summary>The whole screen.</summary>
    public Sheet Show(Scene scene, int width, int height)
    {
        var (sheet, keys) = (new Sheet(width, height) { Known = scene.Known }, Bindings(scene));
        Draw(sheet, scene);
        for (var row = 0; row <= keys.Max(k => k.Row); row++)
            Binding.Draw(sheet, sheet.Height - 1 - row, keys, row, KeyColumns);

        Frame.Say(sheet, scene.Said, scene.IsDone);
        if (width < LeastColumns || height < LeastRows)
        {
            sheet.Write(0, 0, new string(' ', sheet.Width));
            sheet.Badge(0, 0, T($"Too small. Make it {LeastColumns} x {LeastRows}."), Look.Stop);
        }

        return sheet;
    }

    /// <summary>The screen with the cursor in a field; without such a field as it is.</summary>
    public virtual Screen At(string? field) => this;

    /// <summary>After what it asked for was recorded.</summary>
    /// <param name="done">The sentence that says so.</param>
    public virtual Reply Recorded(Scene scene, IReadOnlyList<ICommand> commands, string done) => new(this, done);

    /// <summary>After a command of it was refused, or is asked again.</summary>
    public virtual Reply Refused(Scene scene, ICommand command, Refusal refusal) => Reply.Lacks(this, refusal.About, refusal.Text);

    /// <summary>Whether it still has anything to show: other programs may change the set-up or open the next page.</summary>
    public virtual bool Stands(Depot depot) => true;

    /// <summary>The screen kept within what there is to choose from now.</summary>
    public virtual Screen Within(Depot depot) => this;

    /// <summary>The van that is walked on it, whose seat it takes; null: none.</summary>
    public virtual Code<Van>? Walks(Depot depot) => null;

    /// <summary>Whether it asks once more for an answer that looks wrong.</summary>
    public virtual bool Asks => false;

    /// <summary>Whether nothing is half typed on it, so that the wall's function keys work here too.</summary>
    public virtual bool GivesWay => false;

    /// <summary>The van that it is of; null: of none, or of several.</summary>
    public virtual Code<Van>? About => null;

    /// <summary>Whom it is for, and in whose language it speaks; null: everybody.</summary>
    public virtual Code<Technician>? SpeaksTo(Depot depot) => null;

    /// <summary>The same in the language that is spoken now: words that it holds are those of the language in which it was made.</summary>
    public virtual Screen Retold(Depot depot) => this;

    /// <summary>What it tells of the clock beyond the minute; empty: nothing. It is drawn anew whenever this is another.</summary>
    public virtual string Counting(Scene scene) => "";

    /// <summary>After a long pause: what must not stay in sight is gone.</summary>
    public virtual Reply Rested() => this;

    /// <summary>The same with a van chosen, where vans are to choose.</summary>
    public virtual Screen Choosing(Depot depot, Code<Van> van) => this;

    /// <summary>
    /// The keys that edit a form. A character without a place in its field is refused in a sentence; what was typed stays.
    /// </summary>
    protected Binding EditKeys(Form form, Func<Form, Screen> with, string? line = null) =>
        new(Keys.Editing, line, key => form.Refuses(key) is { } why ? new Reply(with(form.Refused()), why) : with(form.Edit(key)))
        {
            Help = T("replaces; arrows, Home, End, Backspace, Delete edit"),
        };

    /// <summary>The key of the help, which every screen has.</summary>
    protected static Binding HelpKey() => HelpKey(T("help"));

    /// <param name="line">What the key line says of it; null: nothing, not the key either.</param>
    protected static Binding HelpKey(string? line) =>
        new(Keys.F(1), line, _ => throw new InvalidOperationException("the session answers F1"));
}

/// <summary>What the kiosk shows.</summary>
/// <param name="Said">A sentence to the person; empty: none.</param>
/// <param name="IsDone">Whether it says that something was done.</param>
public sealed record Model(Screen Screen, string Said = "", bool IsDone = false);
