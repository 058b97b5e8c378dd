using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// A place as it is typed at a stop: run and segment, such as <c>2.5</c>, or <c>2.5.1</c> for the first of several readings.
/// </summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Take">Which reading of the segment, from 1; null: the last.</param>
public readonly record struct ReadingPlace(int Run, int Segment, int? Take = null)
{
    /// <summary>The place that a typed word means; null: none.</summary>
    public static ReadingPlace? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int?[] numbers = [.. text.Split('.').Select(Typed.Count)];
        return numbers switch
        {
            [{ } run, { } segment] => new ReadingPlace(run, segment),
            [{ } run, { } segment, { } take] => new ReadingPlace(run, segment, take),
            _ => null,
        };
    }

    /// <summary>The reading that is there; null: none.</summary>
    public Reading? In(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (!study.HasRun(Run))
        {
            return null;
        }

        Reading[] takes = study.Runs[Run - 1].ReadingsOn(Segment);
        return Take is { } take ? takes.ElementAtOrDefault(take - 1) : takes.LastOrDefault();
    }

    /// <summary>The study with the reading that is there changed.</summary>
    public Study With(Study study, Func<Reading, Reading> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (In(study) is not { } reading)
        {
            return study;
        }

        Run driven = study.Runs[Run - 1];
        return study with
        {
            Runs = study.Runs.SetItem(Run - 1, driven with { Passages = driven.Passages.Replace(reading, change(reading)) }),
        };
    }

    /// <summary>The place in words, such as "run 2, 5 Ferrowdyke slabs".</summary>
    public string InWords(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string name = study.Plan is { } plan && Segment >= 1 && Segment <= plan.Route.Count ? $" {plan.Route[Segment - 1].Name}" : "";
        return $"run {Run}, {Segment}{name}";
    }

    /// <inheritdoc/>
    public override string ToString() => Take is { } take ? $"{Run}.{Segment}.{take}" : $"{Run}.{Segment}";
}
