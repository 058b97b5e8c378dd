namespace FieldSession.Statistics;

/// <summary>
/// Which cells of a table have a value, seen along its longer side. Every line of the longer side keeps the places where it has none, or
/// where it has one, whichever are fewer: sums over a line then cost only as much as it departs from a full or an empty one.
/// </summary>
internal sealed class Incidence
{
    private readonly int[] _start;
    private readonly int[] _few;
    private readonly bool[] _fewHaveValue;

    private Incidence(int rows, int columns, double[] values)
    {
        RowsAreShort = rows <= columns;
        (Short, Long) = RowsAreShort ? (rows, columns) : (columns, rows);
        ShortCount = new int[Short];
        LongCount = new int[Long];
        Count(rows, columns, values);
        _fewHaveValue = new bool[Long];
        _start = new int[Long + 1];
        for (int line = 0; line < Long; line++)
        {
            _fewHaveValue[line] = 2 * LongCount[line] < Short;
            _start[line + 1] = _start[line] + (_fewHaveValue[line] ? LongCount[line] : Short - LongCount[line]);
        }

        _few = new int[_start[Long]];
        Collect(rows, columns, values);
    }

    /// <summary>Whether the rows are the shorter side.</summary>
    public bool RowsAreShort { get; }

    /// <summary>Lines of the shorter side.</summary>
    public int Short { get; }

    /// <summary>Lines of the longer side.</summary>
    public int Long { get; }

    /// <summary>Values in every line of the shorter side.</summary>
    public int[] ShortCount { get; }

    /// <summary>Values in every line of the longer side.</summary>
    public int[] LongCount { get; }

    /// <summary>Values in the table.</summary>
    public int Present { get; private set; }

    /// <summary>Whether no cell is empty.</summary>
    public bool IsComplete => Present == Short * Long;

    /// <summary>Looks through a table (row by row, NaN for a gap).</summary>
    public static Incidence Of(int rows, int columns, double[] values) => new(rows, columns, values);

    /// <summary>The few places of a line of the longer side.</summary>
    public ReadOnlySpan<int> Few(int line) => _few.AsSpan(_start[line], _start[line + 1] - _start[line]);

    /// <summary>Whether the few places are those with a value (else those without).</summary>
    public bool FewHaveValue(int line) => _fewHaveValue[line];

    /// <summary>Sum over the places of a line that have a value.</summary>
    /// <param name="line">The line of the longer side.</param>
    /// <param name="x">A number for every line of the shorter side.</param>
    /// <param name="total">The sum of all of them.</param>
    public double Sum(int line, ReadOnlySpan<double> x, double total)
    {
        double sum = 0;
        foreach (int place in Few(line))
        {
            sum += x[place];
        }

        return _fewHaveValue[line] ? sum : total - sum;
    }

    /// <summary>For every line of the shorter side the sum over the places that have a value.</summary>
    /// <param name="x">A number for every line of the longer side.</param>
    public double[] Across(ReadOnlySpan<double> x)
    {
        double[] sums = new double[Short];
        double everywhere = 0;
        for (int line = 0; line < Long; line++)
        {
            double sign = _fewHaveValue[line] ? x[line] : -x[line];
            everywhere += _fewHaveValue[line] ? 0 : x[line];
            foreach (int place in Few(line))
            {
                sums[place] += sign;
            }
        }

        for (int place = 0; place < Short; place++)
        {
            sums[place] += everywhere;
        }

        return sums;
    }

    private void Count(int rows, int columns, double[] values)
    {
        (int[] ofRow, int[] ofColumn) = RowsAreShort ? (ShortCount, LongCount) : (LongCount, ShortCount);
        for (int row = 0, at = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++, at++)
            {
                int one = double.IsNaN(values[at]) ? 0 : 1;
                ofRow[row] += one;
                ofColumn[column] += one;
                Present += one;
            }
        }
    }

    private void Collect(int rows, int columns, double[] values)
    {
        int[] next = _start[..^1];
        for (int row = 0, at = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++, at++)
            {
                int line = RowsAreShort ? column : row;
                if (double.IsNaN(values[at]) != _fewHaveValue[line])
                {
                    _few[next[line]++] = RowsAreShort ? row : column;
                }
            }
        }
    }
}
