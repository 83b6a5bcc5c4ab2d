using Closeout.Store;

namespace Closeout.Screens.Parts;

/// <summary>All that an act may touch.</summary>
/// <param name="Seats">Null: there is no other kiosk.</param>
public sealed record World(Desk Desk, Archive Archive, Attachments Attachments, VanSeats? Seats, Pins Pins)
{
    /// <summary>Who walks a van at another kiosk, and what to do; null: nobody.</summary>
    public string? Elsewhere(Code<Van> van) => Seats?.Elsewhere(van) is { } holder ? WalkedAt(van, holder) : null;

    /// <summary>The sentence for a van that somebody else walks.</summary>
    public string WalkedAt(Code<Van> van, string holder) =>
        T($"{van} {Desk.Depot.Setup.Van(van).Name} is being closed out at {holder}. Go on there, or press Esc there first.");

    /// <summary>The book as it stands now, for a screen that follows an act.</summary>
    public Scene Scene => new(Desk.Tonight, Desk.Now, "");
}

/// <summary>What a key asks of the world.</summary>
public abstract record Act
{
    /// <summary>In whose name it is done: that person's PIN is asked first; null: in nobody's.</summary>
    public Code<Technician>? By { get; init; }

    /// <summary>Whether it is a signature: then the PIN is asked although the person is known.</summary>
    public bool IsSignature { get; init; }

    /// <summary>What of the PIN was typed already.</summary>
    public string Typed { get; init; } = "";

    /// <summary>What whoever types the PIN does by it, after the name.</summary>
    public string Does { get; init; } = T("confirms what was typed");

    /// <summary>Does it.</summary>
    /// <param name="from">The screen that asked for it.</param>
    /// <exception cref="BookException">It could not be done.</exception>
    public abstract Reply Do(World world, Screen from);
}

/// <summary>Record these, one after the other, up to the first refusal.</summary>
/// <param name="Done">The sentence that says so; empty: the screen that follows says enough.</param>
public sealed record RecordAct(IReadOnlyList<ICommand> Commands, string Done = "") : Act
{
    public override Reply Do(World world, Screen from)
    {
        foreach (var command in Commands)
        {
            if (world.Desk.Record(command) is { } refusal)
                return from.Refused(world.Scene, command, refusal);
        }

        return from.Recorded(world.Scene, Commands, Done) with { IsDone = true };
    }
}

/// <summary>Show a screen that is made from more than the open page.</summary>
public sealed record OpenAct(Func<World, Screen> Open) : Act
{
    public override Reply Do(World world, Screen from) => Open(world);
}
