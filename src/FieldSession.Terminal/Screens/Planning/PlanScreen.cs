using System.Collections.Immutable;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>The plan screen: a sheet of fields and segments, a box for the cell under the cursor, and the wires between them.</summary>
internal sealed class PlanScreen : TypingScreen
{
    private readonly TypingBox _box;
    private int _row;
    private int _column;
    private string? _message;
    private int? _remark;
    private OrdersSight? _orders;
    private bool _isWarned;

    /// <summary>The screen on a plan folder.</summary>
    public PlanScreen(Desk desk)
        : base(desk)
    {
        _box = new TypingBox { Pressed = OnNamed };
        Lay(_box);
    }

    private IPlanTable? Plan => Desk.PlanTable;

    private PlanSight? Sight => Plan is null ? null : new PlanSight(Plan.Sheet, _row, _column, _message, _remark);

    /// <inheritdoc/>
    protected override void Draw()
    {
        if (Sight is not { } sight)
        {
            _box.Visible = false;
            Paper.Show([PageRow.Blank, PageRow.Of(PlanScreenWords.PlanIsFixed)], Palette);
            return;
        }

        PlanPageWords words = _orders is { } orders
            ? PlanPage.Of(orders, Frame.Width, Frame.Height)
            : PlanPage.Of(sight, Frame.Width, Frame.Height);
        Paper.Show(words.Rows, Palette);
        (_box.Y, _box.X, _box.Width) = words.Box;
    }

    private bool OnNamed(Key key)
    {
        if (IsOfTheProgram(key))
        {
            return true;
        }

        if (Plan is null || Desk.Keys.On(ScreenName.Plan).FirstOrDefault(row => row.Has(key)) is not { Deed: KeyDeed.Plan } found)
        {
            return false;
        }

        bool isOfTheBox = found.Line is "left" or "right" or "home" or "end";
        if (isOfTheBox && _box.Text.Length > 0)
        {
            return false;
        }

        _message = null;
        if (_orders is { } orders)
        {
            Choose(found.Line, orders, Plan);
        }
        else
        {
            _remark = found.Line == "look" ? _remark : null;
            Do(found.Line, Plan);
        }

        Draw();
        return true;
    }

    private bool IsOfTheProgram(Key key) => IsLeaving(key) || AsksHelp(key);

    // what is not written would be lost: the key has to be pressed twice
    private bool IsLeaving(Key key)
    {
        bool isFirst =
            !_isWarned && Plan is { Sheet.IsChanged: true } && Desk.Keys.Rows.Any(row => row.Deed == KeyDeed.Leave && row.Has(key));
        _isWarned = isFirst;
        if (isFirst)
        {
            _message = PlanScreenWords.NotWrittenYet;
            Draw();
        }

        return isFirst;
    }

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
            case "look":
                Look(plan.Sheet);
                break;
            case "orders":
                Propose(plan);
                break;
            case "add" or "copy" or "delete" or "raise" or "lower":
                DoSegment(act, plan);
                break;
            default:
                Go(act, plan.Sheet);
                break;
        }
    }

    private void DoSegment(string act, IPlanTable plan)
    {
        switch (act)
        {
            case "add" or "copy":
                (_row, _column) = (plan.Add(_row, act == "copy"), 0);
                break;
            case "delete" when Sight!.IsOnSegment:
                plan.Delete(_row);
                _row = Math.Max(0, Math.Min(_row, plan.Sheet.FirstLimit - 1));
                _column = Sight!.IsOnSegment ? _column : 0;
                break;
            case "raise" or "lower":
                _row = plan.Move(_row, act == "raise" ? -1 : 1);
                break;
        }
    }

    // Enter stores what is in the box and goes on; a lone "-" empties the cell.
    private void Store(IPlanTable plan)
    {
        string typed = _box.Text.Trim();
        int fields = plan.Sheet.FirstSegment;
        if (typed.Length > 0)
        {
            plan.Set(_row, _column, typed == "-" ? "" : typed);
            _box.Put("");
        }

        // other units bring other fields: what is below moves with them
        _row += _row >= fields ? plan.Sheet.FirstSegment - fields : 0;
        Go(_column < plan.Sheet.CellsOf(_row) - 1 ? "right" : "down", plan.Sheet);
    }

    private void Look(PlanSheet sheet)
    {
        if (sheet.Remarks.IsEmpty)
        {
            _message = PlanScreenWords.NothingToFix;
            return;
        }

        _remark = _remark is { } last ? (last + 1) % sheet.Remarks.Length : 0;
        (_row, _column) = sheet.Remarks[_remark.Value].Row is { } row ? (row, 0) : (_row, _column);
    }

    private void Propose(IPlanTable plan)
    {
        ImmutableArray<OrderSight> orders = plan.Orders();
        _box.Put("");
        _orders = orders.IsEmpty ? null : new OrdersSight(orders, Math.Min(1, orders.Length - 1), plan.OrdersRestOn) { Road = plan.Road };
        _message = orders.IsEmpty ? PlanScreenWords.OrdersNeedARoute : null;
    }

    private void Choose(string act, OrdersSight orders, IPlanTable plan)
    {
        if (act == "clear")
        {
            _orders = null;
            _box.Put("");
        }
        else if (act == "store")
        {
            Take(orders, plan);
        }
        else
        {
            int page = Math.Max(1, Frame.Height - PlanPage.TopRows - 2);
            _orders = orders with { Message = null, Chosen = Stepped(orders.Chosen, act, page, orders.Orders.Length) };
        }
    }

    private void Take(OrdersSight orders, IPlanTable plan)
    {
        string[] typed = _box.Text.Trim().Split(' ', 2);
        int? number = typed[0].Length == 0 ? orders.Chosen : Journal.Typed.Count(typed[0]);
        _box.Put("");
        if (number is not { } taken || taken >= orders.Orders.Length)
        {
            _orders = orders with { Message = PlanScreenWords.NoSuchOrder(orders.Orders.Length - 1) };
            return;
        }

        string? wrong = taken == 0 ? null : plan.TakeOrder(taken, typed.Length > 1 ? typed[1] : "");
        _orders = wrong is null ? null : orders with { Message = wrong };
        _message = taken == 0 ? null : PlanScreenWords.OrderTaken(taken, string.Join(' ', orders.Orders[taken].Order));
    }

    private void Go(string way, PlanSheet sheet)
    {
        int before = _column;
        int page = Math.Max(1, Frame.Height - PlanPage.TopRows - 1);
        _row = way == "part" ? NextPart(sheet) : Stepped(_row, way, page, sheet.Rows);
        int last = sheet.CellsOf(_row) - 1;
        bool isNewLine = way is "part" or "home" or "end" || (way == "down" && before == last);
        _column = isNewLine
            ? 0
            : Math.Clamp(
                before
                    + (
                        way == "right" ? 1
                        : way == "left" ? -1
                        : 0
                    ),
                0,
                last
            );
    }

    private int NextPart(PlanSheet sheet) =>
        sheet.PartOf(_row) switch
        {
            SheetPart.Field => sheet.FirstSegment,
            SheetPart.Segment => sheet.FirstLimit,
            _ => 0,
        };

    private static int Stepped(int at, string way, int page, int rows)
    {
        int to = way switch
        {
            "up" => at - 1,
            "down" => at + 1,
            "pageup" => at - page,
            "pagedown" => at + page,
            "home" => 0,
            "end" => rows - 1,
            _ => at,
        };
        return Math.Clamp(to, 0, rows - 1);
    }
}
