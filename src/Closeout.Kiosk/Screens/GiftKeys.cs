using Closeout.Screens.Forms;
using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>The key of a close-out for what went from van to van on the road: did it come, or what was given away.</summary>
internal static class GiftKeys
{
    public static IEnumerable<Binding> Of(CloseoutScreen screen, Scene scene)
    {
        var q = screen.Question;
        if (MoveForms.Open(new(scene.Tonight, q.Van)).Any())
        {
            return [new(Keys.F(6), T("did it come?"), _ => FormScreen.Of(MoveForms.Came, scene, screen, q.Van))
                { Row = 1, Help = T("answers whether stock came from another van") }];
        }

        return q.At == Step.Leftovers
            ? [new(Keys.F(6), null, _ => FormScreen.Of(MoveForms.Give, scene, screen, q.Van, q.Item))
                { Help = T("given to a van") }]
            : [];
    }
}
