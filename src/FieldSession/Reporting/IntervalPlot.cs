namespace FieldSession.Reporting;

/// <summary>A plot of differences with their intervals beside the margin; how it is drawn is for others to say.</summary>
/// <param name="Unit">Unit of the numbers, such as "%".</param>
/// <param name="Margin">The margin: differences within plus or minus this do not matter; above 0.</param>
/// <param name="Intervals">What is drawn, a line each.</param>
public sealed record IntervalPlot(string Unit, double Margin, IReadOnlyList<PlottedInterval> Intervals) : ReportBlock;

/// <summary>One line of a plot.</summary>
/// <param name="Name">What the line is about.</param>
/// <param name="Value">The difference.</param>
/// <param name="Low">Lower end of its 95 % interval.</param>
/// <param name="High">Upper end.</param>
public sealed record PlottedInterval(string Name, double Value, double Low, double High);
