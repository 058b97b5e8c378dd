using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>When legs were driven: one car is in one place at a time.</summary>
public static class LegTimes
{
    /// <summary>Whether two legs say one and the same thing: car, day, code, way, energy and start.</summary>
    public static bool IsSame(LegFigures one, LegFigures other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return IsOneCar(one, other) && one.Code == other.Code && one.Distance == other.Distance && one.Energy == other.Energy && one.At == other.At;
    }

    /// <summary>Whether one car would have been on two legs at once. Without start times that can't be told; without lengths of time a start within is enough.</summary>
    public static bool Overlap(LegFigures one, LegFigures other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        if (!IsOneCar(one, other) || one.At is not { } a || other.At is not { } b)
        {
            return false;
        }

        (double startA, double startB) = (a.ToTimeSpan().TotalMinutes, b.ToTimeSpan().TotalMinutes);
        return startA.Equals(startB) || (startA < startB + (other.LastingMinutes ?? 0) && startB < startA + (one.LastingMinutes ?? 0));
    }

    /// <summary>The time of a leg in words, such as "09:10 to 11:23".</summary>
    public static string InWords(LegFigures leg)
    {
        ArgumentNullException.ThrowIfNull(leg);
        if (leg.At is not { } at)
        {
            return EnergyDrivingWords.TimeNotNoted;
        }

        string start = $"{at:t}";
        return leg.LastingMinutes is { } minutes ? $"{start} to {at.AddMinutes(minutes):t}" : $"from {start}";
    }

    private static bool IsOneCar(LegFigures one, LegFigures other) => one.Day == other.Day && CrewMember.SamePerson(one.Car, other.Car);
}
