using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>How a forced choice is put.</summary>
public enum ChoiceKind
{
    /// <summary>Two presentations, one of each code: which one is more so? Right by chance: one half.</summary>
    Paired,

    /// <summary>Three presentations, two of one code and one of the other: which is the odd one? Right by chance: one third.</summary>
    Triangle,
}

/// <summary>What is fixed before the first choice of a set of trials.</summary>
/// <param name="Kind">How it is put.</param>
/// <param name="First">A code: A in the presentations.</param>
/// <param name="Second">The other code: B.</param>
/// <param name="Question">What is asked, such as "which is louder".</param>
/// <param name="Segment">Number of the segment it is asked on; null: any.</param>
/// <param name="Expected">The code that is expected to be chosen: the test is one-sided. Null: two-sided, or a triangle.</param>
/// <param name="DetectShare">The share of right choices that the set is to find, 0.75 (subtle) to 0.90 (plain).</param>
public sealed record ChoiceTerms(
    ChoiceKind Kind,
    SpecCode First,
    SpecCode Second,
    string Question,
    int? Segment,
    SpecCode? Expected,
    double DetectShare
)
{
    /// <summary>How many places a presentation has.</summary>
    public int Places => Kind == ChoiceKind.Triangle ? 3 : 2;

    /// <summary>Chance of a right answer by guessing.</summary>
    public double Chance => 1.0 / Places;

    /// <summary>Whether no side was named beforehand.</summary>
    public bool IsTwoSided => this is { Kind: ChoiceKind.Paired, Expected: null };

    /// <summary>"two-sided", "one-sided, 862 expected" or "triangle".</summary>
    public string Side =>
        this switch
        {
            { Kind: ChoiceKind.Triangle } => "triangle",
            { Expected: { } expected } => $"one-sided, {expected} expected",
            _ => "two-sided",
        };

    /// <summary>Whether two codes are the pair, in either order.</summary>
    public bool IsPair(SpecCode one, SpecCode other) => (First == one && Second == other) || (First == other && Second == one);
}

/// <summary>A set of forced-choice trials: planned with its number and order, stopped only by that plan.</summary>
/// <param name="Number">From 1, in the order of planning.</param>
/// <param name="Terms">What is fixed.</param>
/// <param name="Presentations">One trial each, such as "AB" or "ABA": which code comes at which place.</param>
/// <param name="Mark">Where the plan of it is in the journal.</param>
public sealed record ChoiceSet(int Number, ChoiceTerms Terms, ImmutableList<string> Presentations, LineMark Mark)
{
    /// <summary>
    /// Whether the order is shown to nobody but the one who runs the trials; false: a set of an older program, which told the codes on the
    /// screen.
    /// </summary>
    public bool IsSealed { get; init; }

    /// <summary>
    /// Whether its trials are played from recordings of the runs, after the last prediction; their order is drawn trial by trial and is
    /// nowhere before.
    /// </summary>
    public bool IsFromRecordings { get; init; }

    /// <summary>Who was shown the order, to run the trials.</summary>
    public ImmutableList<string> Runners { get; init; } = [];

    /// <summary>The choices made, in the order of the trials.</summary>
    public ImmutableList<Choice> Choices { get; init; } = [];

    /// <summary>Whether every planned trial is made.</summary>
    public bool IsComplete => Choices.Count >= Presentations.Count;

    /// <summary>Whether somebody was shown the order.</summary>
    public bool IsRunBy(string person) => Runners.Exists(runner => CrewMember.SamePerson(runner, person));

    /// <summary>Number of the trial that comes next, from 1; one beyond the last when the set is complete.</summary>
    public int NextTrial => Choices.Count + 1;

    /// <summary>The code at a place of a trial, both from 1.</summary>
    public SpecCode CodeAt(int trial, int place) => Presentations[trial - 1][place - 1] == 'A' ? Terms.First : Terms.Second;

    /// <summary>Whether the place is the odd one of a triangle trial, both from 1.</summary>
    public bool IsOdd(int trial, int place) => Presentations[trial - 1].Count(letter => letter == Presentations[trial - 1][place - 1]) == 1;
}

/// <summary>One forced choice.</summary>
/// <param name="Person">Who chose, as the plan writes the name.</param>
/// <param name="Trial">Number of the trial, from 1.</param>
/// <param name="Place">Place chosen, from 1.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Choice(string Person, int Trial, int Place, LineMark Mark)
{
    /// <summary>What the person could know of the answer before choosing.</summary>
    public ChoiceSight Sight { get; init; }

    /// <summary>The clips that were played; null: presented in the car.</summary>
    public ClipsHeard? Clips { get; init; }
}

/// <summary>The clips of one trial that was played from recordings.</summary>
/// <param name="Order">Which code came at which place, such as "AB" or "ABA".</param>
/// <param name="Segment">Number of the segment they are of.</param>
/// <param name="Runs">The run that each place was of, by its number.</param>
public sealed record ClipsHeard(string Order, int Segment, ImmutableList<int> Runs);

/// <summary>What somebody could know of the answer before choosing. Only unseen choices carry the ear's word.</summary>
public enum ChoiceSight
{
    /// <summary>Neither the meter nor a comparison of the pair, nor the order of the trial.</summary>
    Unseen,

    /// <summary>Read the meter on both codes, or could see how they compare.</summary>
    MeterSeen,

    /// <summary>Was shown the order.</summary>
    OrderSeen,
}
