using System.Collections.Immutable;
using System.Globalization;

namespace Closeout.Screens.Parts;

/// <summary>The fields of one question, and which of them is typed in.</summary>
public sealed record Form(ImmutableList<Field> Fields, int Focus = 0)
{
    public static readonly Form None = new([]);

    public Field? Now => Focus < Fields.Count ? Fields[Focus] : null;

    public bool IsLast => Focus >= Fields.Count - 1;

    /// <summary>Whether everything is as shown.</summary>
    public bool IsUntouched => Fields.All(f => f.Typed is null);

    public Field this[string name] => Fields.First(f => f.Name == name);

    /// <summary>A character typed; null: it has no place in the field.</summary>
    public Form? Type(char c) => Now?.Takes(c) is { } field ? With(field) : null;

    /// <summary>Why a character has no place in the field; null: it has, or it is no character.</summary>
    public string? Refuses(Keystroke key) =>
        key.Press == Press.Character && Now is { } field && field.Takes(key.Character) is null ? field.Refuses(key.Character) : null;

    /// <summary>The form after a character was refused in its field.</summary>
    public Form Refused() => Now is { } field ? With(field.Refused()) : this;

    /// <summary>The form after a key of <see cref="Keys.Editing"/>; as it is where the key has no place in the field.</summary>
    public Form Edit(Keystroke key) => (key.Press == Press.Character ? Now?.Takes(key.Character) : Now?.On(key.Press)) is { } field
        ? With(field)
        : this;

    /// <summary>
    /// The cursor in the field of that name: what is typed next replaces what stands there. Without such a field it stays where it is.
    /// </summary>
    public Form At(string? name) => Fields.FindIndex(f => f.Name == name) is >= 0 and var at
        ? this with { Fields = Fields.SetItem(at, Fields[at] with { IsOffered = true, Caret = null }), Focus = at }
        : this;

    /// <summary>The first field of those that is empty; null: none is.</summary>
    public Field? Empty(params IEnumerable<string> names) => Fields.FirstOrDefault(f => names.Contains(f.Name) && f.Text.Length == 0);

    /// <summary>The form with another number shown in a field.</summary>
    public Form Shown(string name, int number) => With(this[name] with { Shown = number.ToString(CultureInfo.InvariantCulture) });

    /// <summary>
    /// The cursor so many fields on. Of the field that is left the caret is forgotten; what is typed in the other replaces what stands
    /// there.
    /// </summary>
    public Form Move(int by)
    {
        var to = Math.Clamp(Focus + by, 0, Math.Max(0, Fields.Count - 1));
        return to == Focus ? this : new(
            Fields.SetItem(Focus, Fields[Focus] with { Caret = null }).SetItem(to, Fields[to] with { IsOffered = true }), to);
    }

    public Form With(Field field) => this with { Fields = Fields.SetItem(Fields.FindIndex(f => f.Name == field.Name), field) };

    public static Form Of(params Field[] fields) => new([.. fields]);
}
