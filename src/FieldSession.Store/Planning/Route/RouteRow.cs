using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Measures;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>One row of the route, its fields asked for by the column's name.</summary>
internal sealed class RouteRow(ImmutableList<string> header, string[] fields, int line, Troubles troubles)
{
    private const double MostKmh = Speed.HighestKmh;
    private const double MostMetres = 1e6;
    private const int LongestText = 120;

    private bool _isGood = true;

    /// <summary>Line of the file in which the row begins.</summary>
    public int Line => line;

    /// <summary>Whether no field holds anything.</summary>
    public bool IsEmpty => fields.All(string.IsNullOrWhiteSpace);

    /// <summary>The segment; null with troubles where the row is none.</summary>
    public Segment? ToSegment(int number)
    {
        if (fields.Length > header.Count)
        {
            Refuse(null, PlanFolderWords.RowHasMoreFieldsThanHeader(fields, header), PlanFolderWords.QuoteNameWithComma);
            return null;
        }

        string? name = Text("segment", isNeeded: true);
        SegmentKind? kind = Kind();
        double? kmh = Quantity("speed", ("kmh", 1, MostKmh), ("mph", Speed.KmPerMile, MostKmh), isNeeded: true);
        double? metres = Quantity("length", ("m", 1, MostMetres), ("mi", Speed.KmPerMile * 1000, MostMetres), isNeeded: true);
        Segment? segment =
            name is { } && kind is { } && kmh is { } && metres is { }
                ? new Segment(number, name, kind.Value, Speed.FromKmh(kmh.Value), Distance.FromMetres(metres.Value))
                : null;
        Segment? whole = WithRest(segment, kmh);
        return _isGood ? whole : null;
    }

    /// <summary>Refuses the row or one of its columns.</summary>
    public void Refuse(string? column, string what, string allowed)
    {
        _isGood = false;
        troubles.Refuse(PlanFile.Route, line, column, what, allowed);
    }

    private Segment? WithRest(Segment? segment, double? kmh)
    {
        double? limitKmh = Quantity("limit", ("kmh", 1, MostKmh), ("mph", Speed.KmPerMile, MostKmh), isNeeded: false);
        if (kmh > limitKmh + 1e-6)
        {
            Refuse(null, PlanFolderWords.SpeedIsAboveLimit, PlanFolderWords.PlanSpeedBelowLimit);
        }

        double? nominalDb = Number("nominal_db", 1, LevelRange.HighestDb);
        string? startMark = Text("start_mark", isNeeded: false);
        string? phrase = Text("phrase", isNeeded: false);
        Speed? limit = limitKmh is null ? null : Speed.FromKmh(limitKmh.Value);
        return segment is null ? null : segment with { Limit = limit, NominalDb = nominalDb, StartMark = startMark, Phrase = phrase };
    }

    private SegmentKind? Kind()
    {
        string? word = Text("kind", isNeeded: true);
        string reading = Field("class").ToLowerInvariant();
        if (reading is not ("" or "steady" or SegmentKind.ImpactWord))
        {
            Refuse("class", PlanFolderWords.ClassIsUnknown(reading), PlanFolderWords.ClassForm);
        }

        SegmentKind? kind = word is null ? null : SegmentKind.Of(word);
        if (kind is { IsImpact: true } && reading == "steady")
        {
            Refuse("class", PlanFolderWords.ImpactIsReadAsPeak, PlanFolderWords.LeaveClassEmpty);
        }

        return kind is null || reading.Length == 0 ? kind : kind.Value with { IsImpact = reading == SegmentKind.ImpactWord };
    }

    private string? Text(string column, bool isNeeded)
    {
        string text = Field(column);
        if (text.Length == 0 && isNeeded)
        {
            Refuse(column, PlanFolderWords.SegmentLacksText(column == "segment" ? "name" : column), "write one");
        }

        if (text.Length > LongestText || !SealableText.IsVisible(text))
        {
            Refuse(column, PlanFolderWords.TextIsTooLongOrInvisible, PlanFolderWords.TextForm(LongestText));
        }

        return text.Length == 0 ? null : text;
    }

    private double? Quantity(
        string what,
        (string Unit, double Factor, double Most) one,
        (string Unit, double Factor, double Most) other,
        bool isNeeded
    )
    {
        string first = $"{what}_{one.Unit}";
        string second = $"{what}_{other.Unit}";
        bool isFirst = Field(first).Length > 0;
        bool isSecond = Field(second).Length > 0;
        if (isFirst && isSecond)
        {
            Refuse(second, PlanFolderWords.SegmentHasTwoValues(what), $"fill {first} or {second}");
        }
        else if (!isFirst && !isSecond && isNeeded)
        {
            Refuse(header.Contains(first) ? first : second, PlanFolderWords.SegmentLacksNumber(what), PlanFolderWords.WriteNumberWithPoint);
        }

        (string unit, double factor, double most) = isFirst ? one : other;
        return Number($"{what}_{unit}", factor, most);
    }

    private double? Number(string column, double factor, double most)
    {
        string text = Field(column);
        if (text.Length == 0)
        {
            return null;
        }

        string allowed = PlanFolderWords.NumberForm((most / factor).ToString("0.#", CultureInfo.InvariantCulture));
        const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (!double.TryParse(text, Plain, CultureInfo.InvariantCulture, out double number) || !double.IsFinite(number))
        {
            Refuse(column, PlanFolderWords.IsNoNumber(text), allowed);
            return null;
        }

        if (number * factor > 0 && number * factor <= most)
        {
            return number * factor;
        }

        Refuse(column, $"{Troubles.Quoted(text)} can't be", allowed);
        return null;
    }

    private string Field(string column)
    {
        int index = header.IndexOf(column);
        return index >= 0 && index < fields.Length ? fields[index].Trim() : "";
    }
}
