namespace FieldSession.Terminal;

/// <summary>Whether this user has covered the running comparison on this laptop. What the plan covers stays covered either way.</summary>
/// <param name="isOn">Whether it begins covered.</param>
internal sealed class Cover(bool isOn = false)
{
    /// <summary>Whether it is covered.</summary>
    public bool IsOn { get; private set; } = isOn;

    /// <summary>Covers it, or uncovers it.</summary>
    public void Turn() => IsOn = !IsOn;
}
