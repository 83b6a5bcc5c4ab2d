using Closeout.DayBook;
using Closeout.Stock;
using Closeout.Vans;

namespace Closeout.Shifts;

/// <summary>What a command comes to: one entry, or a refusal. One entry each, so that no crash can record half of an answer.</summary>
public readonly record struct Decision(Entry? Entry, Refusal? Refusal)
{
    public static implicit operator Decision(Entry entry) => new(entry, null);

    public static implicit operator Decision(Refusal refusal) => new(null, refusal);
}

/// <summary>The rules of the close-out.</summary>
public static class Decider
{
    /// <summary>Decides a command on the book as it stands. Everything it accepts, the fold takes.</summary>
    public static Decision Decide(Depot depot, Command command)
    {
        var setup = depot.Setup;
        if (setup.Find(command.Van) is not { } van)
        {
            return Refusal.NoSuchVan(command.Van);
        }

        if (command is LiftHolds lift)
        {
            return HoldDesk.Lift(depot, van, lift);
        }

        var shift = depot.Shift(van.Code);
        if (command is ComeIn comeIn)
        {
            return shift is null ? Begin(depot, van, comeIn) : Refusal.AlreadyIn(van, shift);
        }

        if (shift is null)
        {
            return Refusal.NotIn(van);
        }

        if (shift.IsClosed)
        {
            return Refusal.AlreadyClosed(van, shift);
        }

        var step = StepOf(command);
        if (!ShiftFlow.Allows(shift.Step, ShiftFlow.Answers(step)!.Value))
        {
            return Refusal.TooEarly(van, shift.Step, step);
        }

        return command switch
        {
            CountLeftover c => Leftovers.Count(depot, shift, c),
            ConfirmLeftovers => new LeftoversConfirmed(van.Code),
            CountBoxes c => Boxes(setup, shift, c),
            ConfirmCardboard => new CardboardConfirmed(van.Code),
            LogMileage c => Odometer.Read(depot, shift, c),
            ReportDamage c => Damage(van.Code, c),
            ConfirmDamage c => new DamageConfirmed(van.Code, c.None),
            CountKit c => Kit(depot, van.Code, c),
            ConfirmKit => new KitConfirmed(van.Code),
            CheckWeekly c => Weekly(depot.Date, van.Code, c),
            Sign c => setup.Find(c.Technician) is { } signer ? new Signed(van.Code, signer.Code) : Refusal.NoSuchTechnician(c.Technician),
            _ => throw new InvalidOperationException($"no rule for {command.GetType().Name}"),
        };
    }

    /// <summary>The step that a command answers.</summary>
    public static Step StepOf(Command command) => command switch
    {
        ComeIn => Step.OnTheRoad,
        CountLeftover or ConfirmLeftovers => Step.Leftovers,
        CountBoxes or ConfirmCardboard => Step.Cardboard,
        LogMileage => Step.Mileage,
        ReportDamage or ConfirmDamage => Step.Damage,
        CountKit or ConfirmKit => Step.Kit,
        CheckWeekly => Step.Weekly,
        Sign => Step.SignOff,
        _ => throw new InvalidOperationException($"no step for {command.GetType().Name}"),
    };

    private static Decision Begin(Depot depot, Van van, ComeIn command) =>
        depot.Setup.Find(command.Technician) is { } technician
            ? new VanCameIn(
                van.Code, technician.Code, WeeklyCheck.IsDue(technician.Workdays, depot.Date, depot.Van(van.Code).WeeklyCheckedOn), SpotCount.Choose(depot, van.Code))
            : Refusal.NoSuchTechnician(command.Technician);

    private static Decision Boxes(Setup setup, Shift shift, CountBoxes command)
    {
        if (setup.Find(command.Item) is not { } item)
        {
            return Refusal.NoSuchItem(command.Item);
        }

        return command.Flattened is < 0 or > Refusal.MostAtOnce
            ? Refusal.OutOfRange("Boxes flattened", command.Flattened, 0, Refusal.MostAtOnce)
            : new BoxesCounted(shift.Van, item.Code, shift.ExpectedOf(item.Code), command.Flattened);
    }

    private static Decision Damage(Code<Van> van, ReportDamage command)
    {
        foreach (var (what, text) in new[] { ("where the damage is", command.Zone), ("what it is", command.What) })
        {
            if (string.IsNullOrWhiteSpace(text))
            {
                return Refusal.NoWords(what);
            }

            if (text.Trim().Length > Refusal.MostWords)
            {
                return Refusal.TooManyWords(what, text.Trim().Length);
            }
        }

        return new DamageFound(van, command.Zone.Trim(), command.Severity, command.What.Trim());
    }

    private static Decision Kit(Depot depot, Code<Van> van, CountKit command)
    {
        if (depot.Setup.Find(command.Piece) is not { } piece)
        {
            return Refusal.NoSuchPiece(command.Piece);
        }

        var count = command.Count ?? piece.Required;
        var most = Math.Max(Refusal.MostKit, piece.Required);
        return count < 0 || count > most
            ? Refusal.OutOfRange(piece.Description, count, 0, most)
            : new KitCounted(van, piece.Code, count, command.Expires ?? KitCheck.DateOf(depot, van, piece.Code));
    }

    private static Decision Weekly(DateOnly today, Code<Van> van, CheckWeekly command)
    {
        if (command.OilChangedOn is { } oil && oil > today)
        {
            return Refusal.DateAhead("The last oil change", oil, today);
        }

        return command.Photos is < 0 or > Refusal.MostAtOnce
            ? Refusal.OutOfRange("Photos", command.Photos, 0, Refusal.MostAtOnce)
            : new WeeklyChecked(van, command.OilChangedOn, command.Photos, command.Clean);
    }
}
