using Closeout.Cardboard;
using Closeout.Screens.Forms;
using Closeout.Screens.Parts;
using Closeout.Store;

namespace Closeout.Screens.Yard;

/// <summary>What the screen of the yard shows.</summary>
public enum YardPage
{
    Tonight,
    Weeks,
    Months,
    Days,
    Vans,
    Items,
    OtherWaste,
}

/// <summary>The yard: tonight's cardboard by van, the container, totals over time as bars, and other waste.</summary>
/// <param name="Back">The wall as it was left.</param>
/// <param name="Boxes">Boxes of the last year, from the archive.</param>
/// <param name="Streams">Other waste of the last year.</param>
public sealed record YardScreen(
    Screen Back, IReadOnlyList<DatedBoxes> Boxes, IReadOnlyList<StreamDay> Streams, YardPage Page = YardPage.Tonight, int Top = 0) : Screen
{
    public static YardScreen Open(World world, Screen back)
    {
        var today = world.Desk.Depot.Date;
        return new(back, world.Archive.Boxes(today.AddYears(-1), today), world.Archive.Streams(today.AddYears(-1), today));
    }

    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        Binding Opens(char letter, string line, DeskForm form) => new(Keys.Letter(letter), line, _ => FormScreen.Of(form, scene, this));
        return
        [
            new(Keys.Tab, T("next page"),
                _ => this with { Page = (YardPage)(((int)Page + 1) % Enum.GetValues<YardPage>().Length), Top = 0 }),
            Opens('B', T("depot's boxes"), YardForms.DepotBoxes),
            Opens('P', T("pickup"), YardForms.Pickup),
            Opens('S', T("ship waste"), YardForms.Ship),
            Opens('W', T("write off"), YardForms.WriteOff),
            HelpKey(""),
            new(Keys.Escape, "", _ => Back),
            new(Keys.Arrows, null, key => this with { Top = Scrolling.To(Top, key.Press) }),
        ];
    }

    public override bool GivesWay => true;

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T(
            "Tab goes on: tonight, weeks, months, days, vans, items, other waste. B counts the boxes of cartons opened here, P records a "
                + "pickup by the hauler, S ships an accumulation box, W writes off boxes that nobody found (a lead)."),
        "",
        T(
            "Boxes expected follow from the cartons emptied; flattened is what was counted. Weight follows from the box's size and "
                + "board, volume from the depot's own density."),
    ];

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var depot = scene.Depot;
        Frame.Head(sheet, depot, Page == YardPage.OtherWaste ? T("OTHER WASTE") : T("CARDBOARD"), IsoWeek.Name(depot.Date));
        switch (Page)
        {
            case YardPage.Tonight:
                BoxesTonight.Draw(sheet, depot, Top);
                break;
            case YardPage.OtherWaste:
                OtherWaste.Draw(sheet, depot, Streams, Top);
                break;
            default:
                BoxTotals.Draw(sheet, depot, Boxes, Over(Page), Top);
                break;
        }
    }

    private static Period Over(YardPage page) => page switch
    {
        YardPage.Weeks => Period.Week,
        YardPage.Months => Period.Month,
        YardPage.Days => Period.Day,
        YardPage.Vans => Period.Van,
        YardPage.Items => Period.Item,
        _ => throw new InvalidOperationException($"no totals on {page}"),
    };
}
