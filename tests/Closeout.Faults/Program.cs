using Closeout.Faults;

// Reliability figures: each subcommand breaks something many times and prints one line of what came of it.
//   dotnet run -c Release --project tests/Closeout.Faults -- power [--rounds N] [--seed S]
// Exit code 1: something acknowledged was lost, or a book does not open. docs/reliability.md has the figures.

return FaultsCommand.Run(args);
