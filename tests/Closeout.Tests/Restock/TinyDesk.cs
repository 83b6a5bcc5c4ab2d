using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Turning;
using FluentAssertions;

namespace Closeout.Tests.Restock;

/// <summary>Plays stock commands on a depot, as <see cref="TinyEvening"/> plays those of a close-out.</summary>
internal static class TinyDesk
{
    public static readonly DateOnly Thursday = Tiny.Wednesday.AddDays(1);
    public static readonly Code<Item> Lamp = Tiny.Lamp.Code;

    /// <summary>All three vans signed, nothing counted anew.</summary>
    public static Depot AllClosed(this Depot depot) =>
        new[] { Tiny.B1, Tiny.B2, Tiny.B3 }.Aggregate(depot, (d, van) => d.At(van, Step.Closed));

    public static Depot Next(this Depot depot, DateOnly date) =>
        Depot.Open(new Recorded(depot.Number + 1, Tiny.FiveOClock, NextPage.After(depot, date)));

    public static ChangePlan Change(OverrideKind kind, Code<Van> van, int units = 0, Code<Item>? item = null, DateOnly? date = null) =>
        new(kind, van, kind == OverrideKind.Exclude ? null : item ?? Lamp, date ?? Thursday, units, "open house", Tiny.Lead);

    /// <summary>The van's line of an item; null: none.</summary>
    public static RestockLine? Line(this Depot depot, Code<Van> van, Code<Item>? item = null) =>
        RestockPlan.For(depot).Lines.FirstOrDefault(l => l.Van.Code == van && l.Item.Code == (item ?? Lamp));

    /// <summary>The units that the plan gives the van of an item.</summary>
    public static int Given(this Depot depot, Code<Van> van, Code<Item>? item = null) => depot.Line(van, item)?.Units ?? 0;

    /// <summary>Take what the plan says, all of the van's lines.</summary>
    public static LoadVan AsPlanned(this Depot depot, Code<Van> van) => new(
        van, [.. RestockPlan.For(depot).Lines.Where(l => l.Van.Code == van && l.Units > 0).Select(l => new Taken(l.Item.Code, l.Sealed, l.FromBin + l.FromOpened))], Tiny.T1);
}
