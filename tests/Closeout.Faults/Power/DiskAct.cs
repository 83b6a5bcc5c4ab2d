namespace Closeout.Faults.Power;

/// <summary>One thing that a program asked of the disk, or said, in the order in which it happened. Paths are below the recorded folder; empty: that folder.</summary>
internal abstract record DiskAct;

/// <summary>A file that was not there is there, empty.</summary>
internal sealed record Created(string Path) : DiskAct;

/// <summary>Bytes were written at an offset.</summary>
internal sealed record Wrote(string Path, long Offset, byte[] Bytes) : DiskAct;

/// <summary>A file was cut, or grew by zeros.</summary>
internal sealed record Sized(string Path, long Length) : DiskAct;

/// <summary>fsync of a file, or of the names in a folder.</summary>
internal sealed record Flushed(string Path) : DiskAct;

internal sealed record Renamed(string From, string To) : DiskAct;

/// <summary>A file or an empty folder went.</summary>
internal sealed record Removed(string Path) : DiskAct;

internal sealed record FolderMade(string Path) : DiskAct;

/// <summary>The program said on standard output that everything up to this entry is recorded.</summary>
internal sealed record Acknowledged(int Number) : DiskAct;
