using System.Collections.Immutable;
using FieldSession.Archiving;
using FieldSession.Comparing;
using FieldSession.Planning;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Store.Planning;

namespace FieldSession.Terminal;

/// <summary>The plan folder behind the plan screen: every change is judged at once, nothing is written until it is saved.</summary>
internal sealed class EditedPlan : IPlanTable
{
    private readonly string _folder;
    private readonly Func<Plan, IReadOnlyList<ArchiveLine>> _lent;
    private readonly Func<Plan, RoadAdvice?> _road;
    private PlanPages _pages;
    private ImmutableArray<OrderProposal> _proposed = [];
    private Plan? _plan;
    private bool _isChanged;

    /// <summary>The table on a folder, which may be empty or not be there yet.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="lent">What the archive that a plan names would lend to it.</param>
    /// <param name="road">What earlier days say of its road; null: nothing.</param>
    public EditedPlan(string folder, Func<Plan, IReadOnlyList<ArchiveLine>> lent, Func<Plan, RoadAdvice?>? road = null)
    {
        _folder = folder;
        _lent = lent;
        _road = road ?? (_ => null);
        _pages = PlanPages.Open(folder);
        Sheet = Laid();
    }

    /// <inheritdoc/>
    public PlanSheet Sheet { get; private set; }

    /// <inheritdoc/>
    public void Set(int row, int column, string text) =>
        Change(
            Sheet.PartOf(row) switch
            {
                SheetPart.Field => _pages.With(_pages.Fields(_pages.Texts())[row], text),
                SheetPart.Segment => _pages with
                {
                    Rows = _pages.Rows.SetItem(
                        row - Sheet.FirstSegment,
                        _pages.Rows[row - Sheet.FirstSegment].SetItem(column, text.Trim())
                    ),
                },
                _ when column == 0 => _pages.With(AllLimits.InOrder[row - Sheet.FirstLimit].Limit, text),
                _ => _pages.WithReason(AllLimits.InOrder[row - Sheet.FirstLimit].Limit, text),
            }
        );

    /// <inheritdoc/>
    public int Add(int afterRow, bool isCopy)
    {
        bool isOnSegment = Sheet.PartOf(afterRow) == SheetPart.Segment;
        int at = isOnSegment ? afterRow - Sheet.FirstSegment + 1 : _pages.Rows.Count;
        ImmutableArray<string> added = isCopy && isOnSegment ? Copied(_pages.Rows[at - 1]) : [.. _pages.Columns.Select(_ => "")];
        Change(_pages with { Rows = _pages.Rows.Insert(at, added) });
        return Sheet.FirstSegment + at;
    }

    /// <inheritdoc/>
    public void Delete(int row)
    {
        if (Sheet.PartOf(row) == SheetPart.Segment)
        {
            Change(_pages with { Rows = _pages.Rows.RemoveAt(row - Sheet.FirstSegment) });
        }
    }

    /// <inheritdoc/>
    public int Move(int row, int by)
    {
        int segment = row - Sheet.FirstSegment;
        int to = segment + by;
        if (Sheet.PartOf(row) != SheetPart.Segment || to < 0 || to >= _pages.Rows.Count)
        {
            return row;
        }

        Change(_pages with { Rows = _pages.Rows.RemoveAt(segment).Insert(to, _pages.Rows[segment]) });
        return row + by;
    }

    /// <inheritdoc/>
    public string OrdersRestOn { get; private set; } = "";

    /// <inheritdoc/>
    public ImmutableArray<string> Road { get; private set; } = [];

    /// <inheritdoc/>
    public ImmutableArray<OrderSight> Orders()
    {
        _plan = _pages.Judged().Plan ?? WithoutOrder().Judged().Plan;
        if (_plan is not { } plan)
        {
            return [];
        }

        string[] drivers = [.. (plan.DriverOrder ?? []).Distinct(StringComparer.OrdinalIgnoreCase)];
        _proposed =
        [
            OrderProposal.In(plan),
            .. OrderProposals.Of(plan.SpecCount, null).Select(order => OrderSharing.Of(order, plan.Cars ?? [], drivers)),
        ];
        IReadOnlyList<ArchiveLine> archive = _lent(plan);
        Road = _road(plan) is { } advice ? [.. RoadWords.Of(advice)] : [];
        OrdersRestOn = OrderJudgement.BriefWords(plan, new TurnRound(), archive);
        return [.. _proposed.Select(proposal => OrderJudgement.Of(plan, proposal, new TurnRound(), archive))];
    }

    /// <inheritdoc/>
    public string? TakeOrder(int number, string drivers)
    {
        string[] names = drivers.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (names.FirstOrDefault(name => !_plan!.Crew.Any(member => CrewMember.SamePerson(member.Name, name))) is { } stranger)
        {
            return PlanEditingWords.NotInCrew(stranger, string.Join(", ", _plan!.Crew.Select(member => member.Name)));
        }

        OrderProposal proposed = _proposed[number];
        OrderProposal taken = names.Length == 0 ? proposed : OrderSharing.Of(proposed.Order, _plan!.Cars ?? [], names);
        PlanPages pages = With(_pages, "order", taken.ToString());
        pages = With(pages, "car_order", string.Join("; ", taken.Cars ?? []));
        Change(With(pages, "driver_order", string.Join("; ", taken.Drivers ?? [])));
        return null;
    }

    /// <inheritdoc/>
    public string Save()
    {
        try
        {
            _pages.Write(_folder);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            return $"not written: {broken.Message}";
        }

        _isChanged = false;
        Sheet = Laid();
        int problems = Sheet.Remarks.Count(remark => remark.IsProblem);
        return problems == 0 ? PlanEditingWords.PlanWritten(_folder) : PlanEditingWords.PlanWrittenWithProblems(_folder, problems);
    }

    private void Change(PlanPages pages)
    {
        _pages = pages;
        _isChanged = true;
        Sheet = Laid();
    }

    private PlanSheet Laid() => SheetOfPages.Of(_pages) with { IsChanged = _isChanged };

    // an order that can't be must not keep the better ones away
    private PlanPages WithoutOrder() => With(With(With(_pages, "order", "R 1 R"), "car_order", ""), "driver_order", "");

    private static PlanPages With(PlanPages pages, string name, string text) =>
        pages.With(PlanFields.All.Single(field => field.Name == name), text);

    private ImmutableArray<string> Copied(ImmutableArray<string> row)
    {
        int number = 2;
        while (_pages.Rows.Any(other => string.Equals(other[0], $"{row[0]} {number}", StringComparison.OrdinalIgnoreCase)))
        {
            number++;
        }

        return row.SetItem(0, $"{row[0]} {number}");
    }
}
