using System.Reflection;
using Closeout.Screens.Forms;

namespace Closeout.Tests.Screens;

/// <summary>Every form of the desks, wherever it is declared.</summary>
internal static class AllForms
{
    public static IReadOnlyList<DeskForm> Of() =>
    [
        .. typeof(DeskForm).Assembly.GetTypes()
            .SelectMany(t => t.GetProperties(BindingFlags.Static | BindingFlags.Public))
            .Where(f => f.PropertyType == typeof(DeskForm))
            .Select(f => (DeskForm)f.GetValue(null)!),
    ];
}
