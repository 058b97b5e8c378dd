using System.Collections.Immutable;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Starting;

/// <summary>What the start screen may use.</summary>
internal sealed record StartDesk
{
    /// <summary>The studies opened last, newest first.</summary>
    public required ImmutableArray<RecentStudy> Recent { get; init; }

    /// <summary>Opens what was chosen; words say why it can't be, null: it is open.</summary>
    public required Func<StartChoice, string?> Open { get; init; }

    /// <summary>The look to begin with.</summary>
    public Palette Palette { get; init; } = Palette.Day;

    /// <summary>The keys; those that go to a screen of a study do nothing here.</summary>
    public KeyTable Keys { get; init; } = ForStart(KeyTable.Standard);

    /// <summary>The keys without those that go to a screen of a study.</summary>
    public static KeyTable ForStart(KeyTable keys) => new([.. keys.Rows.Where(row => row.Deed != KeyDeed.Screen)]);
}

/// <summary>A study that was opened lately.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Words">How far it has come, or why that can't be told.</param>
internal sealed record RecentStudy(string Path, string Words);

/// <summary>What was chosen on the start screen.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Path">The study file or the plan folder; empty for the demo.</param>
internal sealed record StartChoice(StartKind Kind, string Path);

/// <summary>What can be chosen on the start screen.</summary>
internal enum StartKind
{
    /// <summary>A study that exists.</summary>
    Study,

    /// <summary>A folder with a plan, of which a study is made.</summary>
    Plan,

    /// <summary>A folder whose plan is written or changed on the plan screen; it may not be there yet.</summary>
    Planning,

    /// <summary>The demo.</summary>
    Demo,
}
