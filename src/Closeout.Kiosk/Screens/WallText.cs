namespace Closeout.Screens;
public static class WallText { public static string Of(DayBook.Depot d, Restock.RestockPlan p) => "wall\n"; }
