using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Vans;

namespace Closeout.Shifts;

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

        if (command is AttachPhoto photo)
        {
            return Attach(van, shift, photo);
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
            CountStream c => Stream(depot, shift, c),
            ConfirmCardboard => new CardboardConfirmed(van.Code),
            LogMileage c => Odometer.Read(depot, shift, c),
            ReportDamage c => Damage(depot, shift, c),
            ConfirmDamage c => new DamageConfirmed(van.Code, c.None),
            CountKit c => Kit(depot, van.Code, c),
            ConfirmKit => new KitConfirmed(van.Code),
            CheckWeekly c => Weekly(depot.Date, shift, c),
            Sign c => setup.Find(c.Technician) is { } signer ? new Signed(van.Code, signer.Code, depot.Rehearsal ? Proof.Rehearsal : Proof.Pin) : Refusal.NoSuchTechnician(c.Technician) with { About = "technician" },
            _ => throw new InvalidOperationException($"no rule for {command.GetType().Name}"),
        };
    }

    /// <summary>The step that a command answers.</summary>
    public static Step StepOf(Command command) => command switch
    {
        ComeIn => Step.OnTheRoad,
        CountLeftover or ConfirmLeftovers => Step.Leftovers,
        CountBoxes or CountStream or ConfirmCardboard => Step.Cardboard,
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
            : Refusal.NoSuchTechnician(command.Technician) with { About = "technician" };

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

    private static Decision Stream(Depot depot, Shift shift, CountStream command)
    {
        if (WasteStream.Find(command.Stream) is not { } stream || !depot.Setup.Depot.Streams.Contains(stream.Code))
        {
            return Refusal.StreamIsOff(command.Stream, depot.Setup.Depot.Streams);
        }

        if (command.Amount is < 0 or > Refusal.MostAtOnce || (!stream.IsWeighed && command.Amount != Math.Truncate(command.Amount)))
        {
            return Refusal.OutOfRange(stream.IsWeighed ? stream.Description : stream.Description + ", in whole pieces,", command.Amount, 0, Refusal.MostAtOnce);
        }

        var less = shift.StreamOf(stream.Code) - command.Amount;
        var inBox = depot.Yard.AmountOf(stream.Code);
        return less > inBox ? Refusal.BoxTooLow(stream, inBox, less) : new StreamCounted(shift.Van, stream.Code, command.Amount);
    }

    private static Decision Damage(Depot depot, Shift shift, ReportDamage command)
    {
        if ((Given.Words("where the damage is", command.Zone, "zone") ?? Given.Words("what it is", command.What, "what")) is { } silent)
        {
            return silent;
        }

        if (command.Told.Trim().Length > 0 && Given.Words("who was told", command.Told, "told") is { } wordy)
        {
            return wordy;
        }

        return new DamageFound(
            shift.Van, depot.Incidents + 1, shift.Technician, command.Zone.Trim(), command.Severity, command.What.Trim(),
            command.Drivable ?? command.Severity != Severity.Unsafe, command.Told.Trim(), command.ToldAt);
    }

    private static Decision Kit(Depot depot, Code<Van> van, CountKit command)
    {
        if (depot.Setup.Find(command.Piece) is not { } piece)
        {
            return Refusal.NoSuchPiece(command.Piece);
        }

        if (command.TestedOn is { } tested && tested > depot.Date)
        {
            return Refusal.DateAhead($"The last test of {piece.Description}", tested, depot.Date) with { About = "tested" };
        }

        var required = depot.Setup.Required(van, piece);
        var count = command.Count ?? required;
        var most = Math.Max(Refusal.MostKit, required);
        var dates = KitCheck.DatesOf(depot, van, piece.Code);
        return count < 0 || count > most
            ? Refusal.OutOfRange(piece.Description, count, 0, most)
            : new KitCounted(van, piece.Code, count, command.Expires ?? dates.Expires, command.TestedOn ?? dates.TestedOn);
    }

    private static Decision Weekly(DateOnly today, Shift shift, CheckWeekly command)
    {
        if (command.OilChangedOn is { } oil && oil > today)
        {
            return Refusal.DateAhead("The last oil change", oil, today) with { About = "oil" };
        }

        if (command.Photos is < 0 or > Refusal.MostAtOnce)
        {
            return Refusal.OutOfRange("Photos", command.Photos, 0, Refusal.MostAtOnce) with { About = "photos" };
        }

        var told = shift.Damages.Select(d => WalkRound.Find(d.Zone)).OfType<string>().ToHashSet();
        foreach (var part in command.NotInOrder ?? [])
        {
            if (WalkRound.Find(part) is not { } known || !told.Contains(known))
            {
                return Refusal.PartNotTold(part) with { About = part };
            }
        }

        return new WeeklyChecked(shift.Van, command.OilChangedOn, command.Photos, command.Clean, [.. WalkRound.Parts.Where(told.Contains)]);
    }

    private static Decision Attach(Van van, Shift shift, AttachPhoto command) => shift.Photos switch
    {
        { Count: >= Refusal.MostPhotos } => Refusal.TooManyPhotos(van, shift.Photos.Count),
        var photos when photos.Any(p => p.Sha256 == command.Sha256) => Refusal.PhotoIsThere(command.Name),
        _ => new PhotoAttached(van.Code, command.Sha256, command.Name, command.Bytes),
    };
}
