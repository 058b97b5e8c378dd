using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Tests.Making;

/// <summary>A route of eleven segments with all kinds of surface, and a plan of five runs on it.</summary>
internal static class ARoute
{
    public static Plan Plan =>
        ADay.ShortPlan with
        {
            StudyName = "QW-0114",
            Order = [new Place(0), new Place(1), new Place(0), new Place(1), new Place(0)],
            Route =
            [
                Of(1, "Quillmere entry", "smooth", 50, 300),
                Of(2, "Tarnholt road", "smooth", 80, 900) with
                {
                    StartMark = "white post after the mill",
                    NominalDb = 61,
                },
                Of(3, "Sallowheath lane", "coarse", 60, 700),
                Of(4, "Dellinbrook joint", "impact", 50, 60),
                Of(5, "Ferrowdyke slabs", "concrete", 80, 800),
                Of(6, "Wendlerow patches", "rough", 50, 450),
                Of(7, "Harrinvik viaduct, 3 joints", "impact", 80, 220),
                Of(8, "Carrowedge", "coarse", 90, 1200),
                Of(9, "Ennetway", "smooth", 100, 1500),
                Of(10, "Millrasp street", "rough", 40, 250),
                Of(11, "Copsen cobbles", "cobble", 30, 150),
            ],
            Phrases = ["hollow ring", "grit"],
        };

    /// <summary>Two runs driven, the third at its fourth segment; made up, after the plan of the Quillmere ring.</summary>
    public static ADay ThirdRun() => Driven().Typed("run 417", "5356", "6062 t", "6365");

    /// <summary>Two runs driven.</summary>
    public static ADay Driven() =>
        new ADay(Plan)
            .Ready()
            .Typed("run 417", "5355", "6062", "6265", "699", "6468", "6166", "732", "6971", "6367 t van alongside", "5861", "6569")
            .Typed("run 862", "5457", "6369 t truck in next lane", "6466", "713", "6568", "6266", "744", "7376 t", "6264", "5861", "6671");

    private static Segment Of(int number, string name, string kind, double kmh, double metres) =>
        new(number, name, SegmentKind.Of(kind), Speed.FromKmh(kmh), Distance.FromMetres(metres));
}
