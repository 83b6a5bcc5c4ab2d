namespace Closeout.Faults.Machine;

/// <summary>A program with a mount table of its own: what it mounts nobody else sees, and it goes with the program.</summary>
public static class OwnMounts
{
    /// <summary>The words before the program's. Root may at once; anybody else as the root of a user namespace of his or her own, where the system allows one.</summary>
    public static string[] Words => Environment.IsPrivilegedProcess ? ["unshare", "--mount"] : ["unshare", "--map-root-user", "--mount"];
}
