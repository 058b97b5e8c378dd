using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The ratings that are not covered.</summary>
internal static class RatingsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<(SeatRating Rating, Run Run)>(
            "ratings",
            "What somebody gave for one attribute after a run, 1 to 10 in quarter points: one row a rating. Covered ones are left out.",
            [
                Column.Text<(SeatRating Rating, Run Run)>("person", "who rates", r => r.Rating.Person).Always,
                Column.Text<(SeatRating Rating, Run Run)>("seat", "where they sat", r => r.Rating.Seat).Always,
                Column.Count<(SeatRating Rating, Run Run)>("run", "run that is rated", r => r.Rating.Run).Always,
                Column.Text<(SeatRating Rating, Run Run)>("code", "code of the run", r => r.Run.Code.Digits).Always,
                Column.Text<(SeatRating Rating, Run Run)>("attribute", "what is rated", r => r.Rating.Attribute).Always,
                Column
                    .Number<(SeatRating Rating, Run Run)>(
                        "score",
                        "points",
                        "what they give; the reference code is 7",
                        r => r.Rating.Score.Points
                    )
                    .Always,
                Column.Count<(SeatRating Rating, Run Run)>("line", "journal line", r => r.Rating.Mark.Place).Always,
                Column.Time<(SeatRating Rating, Run Run)>("at", "when it was stored", r => r.Rating.Mark.At).Always,
                Column
                    .YesNo<(SeatRating Rating, Run Run)>(
                        "typed_later",
                        "whether it was logged on paper and typed in afterwards",
                        r => r.Rating.Mark.IsTypedLater
                    )
                    .Always,
            ],
            source => RatingCover.Open(source.Study).Select(rating => (rating, source.Study.Runs[rating.Run - 1]))
        )
        {
            Key = ["line"],
            Links = [new("run", "runs", "run"), new("code", "codes", "code")],
        };
}
