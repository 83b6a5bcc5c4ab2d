namespace Closeout.Commands;

/// <summary>The arguments cannot be followed; the message says what was found and what is allowed.</summary>
public sealed class UsageException(string message) : Exception(message);
