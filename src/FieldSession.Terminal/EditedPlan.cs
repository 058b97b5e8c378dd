using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Measures;
using FieldSession.Store.Planning;

namespace FieldSession.Terminal;

/// <summary>The plan folder behind the plan screen: every change is judged at once, nothing is written until it is saved.</summary>
internal sealed class EditedPlan : IPlanTable
{
    private readonly string _folder;
    private PlanPages _pages;
    private bool _isChanged;

    /// <summary>The table on a folder, which may be empty or not be there yet.</summary>
    public EditedPlan(string folder)
    {
        _folder = folder;
        _pages = PlanPages.Open(folder);
        Sheet = Laid();
    }

    /// <inheritdoc/>
    public PlanSheet Sheet { get; private set; }

    private static ImmutableArray<PlanField> Fields => PlanField.All;

    /// <inheritdoc/>
    public void Set(int row, int column, string text)
    {
        int segment = row - Fields.Length;
        Change(segment < 0
            ? _pages.With(Fields[row], text)
            : _pages with { Rows = _pages.Rows.SetItem(segment, _pages.Rows[segment].SetItem(column, text.Trim())) });
    }

    /// <inheritdoc/>
    public void Add(int afterRow, bool isCopy)
    {
        int segment = afterRow - Fields.Length;
        bool copies = isCopy && segment >= 0;
        ImmutableArray<string> added = copies ? _pages.Rows[segment] : [.. _pages.Columns.Select(_ => "")];
        added = copies ? added.SetItem(0, NewName(added[0])) : added;
        Change(_pages with { Rows = _pages.Rows.Insert(segment < 0 ? _pages.Rows.Count : segment + 1, added) });
    }

    /// <inheritdoc/>
    public void Delete(int row)
    {
        int segment = row - Fields.Length;
        if (segment >= 0)
        {
            Change(_pages with { Rows = _pages.Rows.RemoveAt(segment) });
        }
    }

    /// <inheritdoc/>
    public int Move(int row, int by)
    {
        int segment = row - Fields.Length;
        int to = segment + by;
        if (segment < 0 || to < 0 || to >= _pages.Rows.Count)
        {
            return row;
        }

        Change(_pages with { Rows = _pages.Rows.RemoveAt(segment).Insert(to, _pages.Rows[segment]) });
        return row + by;
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
        return problems == 0 ? $"written to {_folder}; 'start {_folder} STUDY' makes the study" : $"written to {_folder}; {problems} to mend before it can be driven";
    }

    private void Change(PlanPages pages)
    {
        _pages = pages;
        _isChanged = true;
        Sheet = Laid();
    }

    private PlanSheet Laid()
    {
        PlanReading reading = _pages.Judged();
        return new PlanSheet
        {
            Fields = [.. Fields.Select(field => (field.Label, _pages.TextOf(field)))],
            Columns = _pages.Columns,
            Segments = _pages.Rows,
            Seconds = [.. _pages.Rows.Select(SecondsOf)],
            Remarks = [.. reading.Problems.Select(problem => Remark(problem, true)), .. reading.Warnings.Select(warning => Remark(warning, false))],
            IsChanged = _isChanged,
        };
    }

    // the route is written with its header in line 1 and a segment a line
    private PlanRemark Remark(PlanProblem problem, bool isProblem)
    {
        bool isRoute = problem.File == "route.csv";
        int? row = problem.Line switch
        {
            null => null,
            > 1 and { } line when isRoute => Fields.Length + line - 2,
            { } line when !isRoute && _pages.FieldAt(line) is { } field => Fields.IndexOf(field),
            _ => null,
        };
        return new PlanRemark(row, $"{problem.What}; {problem.Allowed}", isProblem);
    }

    private double? SecondsOf(ImmutableArray<string> row)
    {
        double speed = Number(row[2]) * (_pages.IsImperial ? Speed.KmPerMile : 1);
        double metres = Number(row[3]) * (_pages.IsImperial ? Speed.KmPerMile * 1000 : 1);
        return speed > 0 && metres > 0 ? metres / (speed / 3.6) : null;
    }

    private static double Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) ? number : 0;

    private string NewName(string name)
    {
        int number = 2;
        while (_pages.Rows.Any(row => string.Equals(row[0], $"{name} {number}", StringComparison.OrdinalIgnoreCase)))
        {
            number++;
        }

        return $"{name} {number}";
    }
}
