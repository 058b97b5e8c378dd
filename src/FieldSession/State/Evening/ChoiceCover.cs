namespace FieldSession.State;

/// <summary>When what was chosen in a set of trials may be shown.</summary>
public static class ChoiceCover
{
    /// <summary>Whether what was chosen may be shown: at the planned end, or once no trial of it can be made any more.</summary>
    public static bool IsShown(this ChoiceSet set, Study study)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(study);
        return set.IsComplete || (set.IsFromRecordings ? study.Opening is not null : study.DataFrozen);
    }
}
