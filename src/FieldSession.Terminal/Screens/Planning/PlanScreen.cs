using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>The plan screen: a sheet of fields and segments, a box for the cell under the cursor, and the wires between them.</summary>
internal sealed class PlanScreen : Screen
{
    private readonly Desk _desk;
    private readonly PageView _page = new() { Width = Dim.Fill(), Height = Dim.Fill() };
    private readonly PlanBox _box;
    private Palette _palette;
    private int _row;
    private int _column;
    private string? _message;

    /// <summary>The screen on a plan folder.</summary>
    public PlanScreen(Desk desk)
    {
        _desk = desk;
        _palette = desk.Palette;
        _box = new PlanBox { Named = OnNamed };
        Add(_page, _box);
    }

    private IPlanTable? Plan => _desk.PlanTable;

    private PlanSight? Sight => Plan is null ? null : new PlanSight(Plan.Sheet, _row, _column, _message);

    /// <inheritdoc/>
    public override void Enter() => _box.SetFocus();

    /// <inheritdoc/>
    public override void Refresh(Palette palette)
    {
        _palette = palette;
        _box.SetScheme(palette.SchemeOf(Ink.Strong));
        Draw();
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in System.Drawing.Rectangle frame)
    {
        base.OnFrameChanged(in frame);

        // Terminal.Gui calls this before the constructor has run.
        if (_box is not null)
        {
            Draw();
        }
    }

    private void Draw()
    {
        if (Sight is not { } sight)
        {
            _box.Visible = false;
            _page.Show([PageRow.Blank, PageRow.Of(" The plan of a study that is begun stands. 'fieldsession plan PLAN_DIR' edits a plan.")], _palette);
            return;
        }

        PlanWords words = PlanPage.Of(sight, Frame.Width, Frame.Height);
        _page.Show(words.Rows, _palette);
        (_box.Y, _box.X, _box.Width) = words.Box;
    }

    private bool OnNamed(Key key)
    {
        if (Plan is null || _desk.Keys.On(KeyTable.Plan).FirstOrDefault(row => IsOneOf(row, key)) is not { Deed: KeyDeed.Plan } found)
        {
            return false;
        }

        bool isAcross = found.Line is "left" or "right";
        if (isAcross && _box.Text.Length > 0)
        {
            return false;
        }

        _message = null;
        Do(found.Line, Plan);
        Draw();
        return true;
    }

    private static bool IsOneOf(KeyRow row, Key key) => row.Keys.Any(name => Key.TryParse(name, out Key? known) && known == key);

    private void Do(string act, IPlanTable plan)
    {
        switch (act)
        {
            case "store":
                Store(plan);
                break;
            case "edit":
                _box.Put(Sight!.Text);
                break;
            case "clear":
                _box.Put("");
                break;
            case "save":
                _message = plan.Save();
                break;
            case "up" or "down" or "left" or "right":
                Go(act, plan.Sheet);
                break;
            default:
                DoSegment(act, plan);
                break;
        }
    }

    private void DoSegment(string act, IPlanTable plan)
    {
        switch (act)
        {
            case "add" or "copy":
                bool isOnSegment = Sight!.IsOnSegment;
                plan.Add(_row, act == "copy");
                (_row, _column) = (isOnSegment ? _row + 1 : plan.Sheet.Rows - 1, 0);
                break;
            case "delete" when Sight!.IsOnSegment:
                plan.Delete(_row);
                _row = Math.Min(_row, plan.Sheet.Rows - 1);
                _column = _row < plan.Sheet.Fields.Length ? 0 : _column;
                break;
            case "raise" or "lower":
                _row = plan.Move(_row, act == "raise" ? -1 : 1);
                break;
        }
    }

    // Enter stores what stands in the box and goes on; a lone "-" empties the cell.
    private void Store(IPlanTable plan)
    {
        string typed = _box.Text.Trim();
        if (typed.Length > 0)
        {
            plan.Set(_row, _column, typed == "-" ? "" : typed);
            _box.Put("");
        }

        Go(Sight!.IsOnSegment && _column < plan.Sheet.Columns.Length - 1 ? "right" : "down", plan.Sheet);
    }

    private void Go(string way, PlanSheet sheet)
    {
        int before = _column;
        _row = Math.Clamp(_row + Step(way, "down", "up"), 0, sheet.Rows - 1);
        int last = _row < sheet.Fields.Length ? 0 : sheet.Columns.Length - 1;
        bool isNewLine = way == "down" && before == last;
        _column = isNewLine ? 0 : Math.Clamp(before + Step(way, "right", "left"), 0, last);
    }

    private static int Step(string way, string forward, string back) => way == forward ? 1 : way == back ? -1 : 0;
}
