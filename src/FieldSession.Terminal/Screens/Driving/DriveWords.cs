using System.Collections.Immutable;
using FieldSession.Aligning;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What the drive page is made from.</summary>
/// <param name="Study">The study.</param>
/// <param name="Acts">The last acts.</param>
/// <param name="Comparison">The running comparison, covered where it must be.</param>
/// <param name="Message">Words about the last key or line, such as why it was refused; null: none.</param>
/// <param name="Keys">The keys.</param>
/// <param name="Held">A line that was not stored; null: none.</param>
internal sealed record DriveSight(Study Study, Acts Acts, ImmutableArray<SegmentRow> Comparison, string? Message, KeyTable Keys, HeldLine? Held = null)
{
    /// <summary>What a stream of levels shows; null: there is none.</summary>
    public StreamSight? Levels { get; init; }

    /// <summary>How the next segment and the stored figures are written.</summary>
    public LetterForm Letters { get; init; }

    /// <summary>Whether the box holds the range of the stream.</summary>
    public bool IsOffered { get; init; }
}

/// <summary>The drive screen's words, and where the entry box is among them.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Box">Row, first column and width of the entry box.</param>
internal sealed record DriveWords(ImmutableArray<PageRow> Rows, (int Row, int Column, int Columns) Box);
