using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>What the ear says on the blind summary, by code only: forced choices first, then ratings.</summary>
internal static class EarBlock
{
    /// <summary>The rows; none where the ear says nothing.</summary>
    public static IEnumerable<PageRow> Rows(ReviewSight sight, int columns)
    {
        EarFindings ear = sight.Ear;
        return ear.IsEmpty
            ? []
            :
            [
                PageRow.Blank,
                PageRow.Of("THE EAR", Ink.Strong),
                .. Sentences(ear).SelectMany(words => Wrapped.Lines(words, columns - 2).Select((line, place) => PageRow.Of(place == 0 ? "- " : "  ", Ink.Quiet).And(line))),
            ];
    }

    private static IEnumerable<string> Sentences(EarFindings ear) =>
    [
        .. ear.Choices.Select(choice => $"set {choice.Set}: {ChoiceWords.Sentence(choice)}"),
        .. ear.Ratings.Select(rating => $"{rating.Attribute}, {rating.Code} minus {rating.Reference}: {EarWords.Points(rating.MeanPoints)} points{(rating.CanDecide ? $"; {EarWords.Test(rating)}" : "")}"),
        .. EarWords.About(ear.Ratings),
        .. ear.Agreements.Select(EarWords.Agreement),
        .. ear.Covered > 0 ? [ReviewScreenWords.RatingsCovered(ear.Covered)] : Array.Empty<string>(),
    ];
}
