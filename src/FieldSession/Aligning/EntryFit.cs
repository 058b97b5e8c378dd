namespace FieldSession.Aligning;

/// <summary>How a typed reading fits the log beside it.</summary>
public enum EntryFit
{
    /// <summary>It fits.</summary>
    Fits,

    /// <summary>It is ten off: a digit of the tens was misread or mistyped.</summary>
    TenOff,

    /// <summary>It fits once the digits of one end are swapped.</summary>
    DigitsSwapped,

    /// <summary>It does not fit, and no usual slip explains it.</summary>
    DoesNotFit,

    /// <summary>The log holds nothing there.</summary>
    NotHeard,
}
