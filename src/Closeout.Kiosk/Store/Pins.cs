using System.Security.Cryptography;
using Closeout.People;

namespace Closeout.Store;

/// <summary>What the core has not: random numbers for PINs and salts, and the name of this machine.</summary>
/// <param name="iterations">The program uses the usual ones; tests use few.</param>
/// <param name="kiosk">Null: the machine's name.</param>
public sealed class Pins(int iterations = PinHash.UsualIterations, string? kiosk = null)
{
    private const int LongestName = 24;

    /// <summary>What the book calls this kiosk.</summary>
    public string Kiosk { get; } = Name(kiosk ?? Environment.MachineName);

    /// <summary>The hash of a PIN, with a salt of its own.</summary>
    public PinHash Hash(string pin) => PinHash.Of(pin, RandomNumberGenerator.GetBytes(PinHash.SaltBytes), iterations);

    /// <summary>Six digits drawn for somebody, again until they are not too easily guessed.</summary>
    public static string Draw(Technician person)
    {
        while (true)
        {
            if (PinRules.Issued(RandomNumberGenerator.GetInt32(PinRules.IssuedBelow), person) is { } pin)
                return pin;
        }
    }

    private static string Name(string name) => name.Trim() switch
    {
        "" => "kiosk",
        { Length: > LongestName } longer => longer[..LongestName],
        var whole => whole,
    };
}
