using Closeout.Bench.Kiosk;
using Closeout.Bench.Plan;
using Closeout.Bench.Year;

// Measures and simulates. Prints ratios of things measured side by side in one run; nothing here passes or fails.
//   dotnet run -c Release --project tests/Closeout.Bench -- plan | year | start | append | opening | wall
// plan takes the name of one part (floor, evening, solver, growth) after it, year (ratios, bookings, drift, handling), and then a number of seeds;
// without one they run all.

switch (args)
{
    case ["plan"]:
        FloorBench.Run();
        EveningBench.Run();
        SolverBench.Run();
        GrowthBench.Run();
        return 0;
    case ["plan", "floor"]:
        FloorBench.Run();
        return 0;
    case ["plan", "evening"]:
        EveningBench.Run();
        return 0;
    case ["plan", "once", var part, var folder]:
        EveningBench.Once(part, folder);
        return 0;
    case ["plan", "solver"]:
        SolverBench.Run();
        return 0;
    case ["plan", "growth"]:
        GrowthBench.Run();
        return 0;
    case ["year"]:
        YearBench.Run();
        return 0;
    case ["year", "ratios" or "bookings" or "drift" or "handling"]:
        YearBench.Run(args[1]);
        return 0;
    case ["year", "ratios" or "bookings" or "drift" or "handling", var seeds] when int.TryParse(seeds, out var n) && n > 0:
        YearBench.Run(args[1], n);
        return 0;
    case ["start"]:
        StartBench.Run();
        return 0;
    case ["append"]:
        AppendBench.Run();
        return 0;
    case ["opening"]:
        OpeningBench.Run();
        return 0;
    case ["wall"]:
        WallBench.Run();
        return 0;
    default:
        Console.Error.WriteLine(
            "plan [floor | evening | solver | growth], year [ratios | bookings | drift | handling [seeds]], start, append, opening or wall");
        return 2;
}
