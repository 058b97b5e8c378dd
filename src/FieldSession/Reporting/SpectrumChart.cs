using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Signals;

namespace FieldSession.Reporting;

/// <summary>A plot of one mean spectrum for each spec, the ring band shaded. The table of bands is beside it.</summary>
/// <param name="Title">What is plotted.</param>
/// <param name="Lines">The spectra.</param>
/// <param name="FromHz">The lowest frequency, Hz.</param>
/// <param name="StepHz">From one frequency to the next, Hz.</param>
/// <param name="Band">The band that is shaded.</param>
public sealed record SpectrumChart(string Title, IReadOnlyList<SpectrumLine> Lines, double FromHz, double StepHz, FrequencyBand Band) : ReportChart(Title)
{
    /// <inheritdoc/>
    public override bool IsEmpty => Lines.Count == 0;

    /// <inheritdoc/>
    public override string Words => $"Plot: {Title}: {string.Join("; ", Lines.Select(Said))}.";

    private string Said(SpectrumLine line)
    {
        int highest = line.LevelsDb.IndexOf(line.LevelsDb.Max());
        return RingReportWords.HighestAt(line.Name, (FromHz + (highest * StepHz)).ToString("0", CultureInfo.CurrentCulture));
    }
}

/// <summary>A line of a <see cref="SpectrumChart"/>.</summary>
/// <param name="Name">How the spec is called.</param>
/// <param name="LevelsDb">dB per Hz, lowest frequency first.</param>
/// <param name="HalfWidthsDb">Half the 95 % interval of each, dB; empty: not known.</param>
public sealed record SpectrumLine(string Name, ImmutableArray<double> LevelsDb, ImmutableArray<double> HalfWidthsDb);
