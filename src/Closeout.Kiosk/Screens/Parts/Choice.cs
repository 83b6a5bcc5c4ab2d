namespace Closeout.Screens.Parts;

/// <summary>Something to choose in a field.</summary>
/// <param name="Text">What the field then holds: a code, or words.</param>
/// <param name="Name">What people call it; empty: the same.</param>
public readonly record struct Choice(string Text, string Name = "");
