using FieldSession.Archiving;

namespace FieldSession.Store.Exports.Tables;

/// <summary>How well the study repeated: what its archive keeps of it.</summary>
internal static class RepeatabilityTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<ArchivedScatter>(
            "repeatability",
            "How well runs and readings repeated: one row a class of segments or kind of surface, without floor and prior.",
            [
                Column.Text<ArchivedScatter>("scatter_of", "all, steady, impact, ring, or a kind of surface", s => s.Group).Always,
                Column.YesNo<ArchivedScatter>("is_kind", "whether it is a kind of surface", s => s.IsKind).Always,
                Column.Number<ArchivedScatter>("nu_run", "degrees of freedom", "of s_run", s => s.NuRun).Always,
                Column.Number<ArchivedScatter>(
                    "s_run",
                    "dB",
                    "run-to-run standard deviation of the run means; empty: no degrees of freedom",
                    s => s.SRunDb
                ),
                Column.Number<ArchivedScatter>("kbar", "share", "of the reading variance that enters a run mean", s => s.Kbar).Always,
                Column.Number<ArchivedScatter>("nu_e", "degrees of freedom", "of s_e", s => s.NuE).Always,
                Column.Number<ArchivedScatter>(
                    "s_e",
                    "dB",
                    "standard deviation of a reading about its run and segment; empty: no degrees of freedom",
                    s => s.SEDb
                ),
            ],
            source => ArchivedScatter.Of(source.Study)
        )
        {
            Key = ["scatter_of", "is_kind"],
        };
}
