using Closeout.Store;
namespace Closeout.Commands;
public static class KioskCommand { public static int Run(BookFolder f, DateOnly? d, TimeProvider c) => 2; }
