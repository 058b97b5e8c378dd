namespace FieldSession.State;

/// <summary>What is known of the study so far. It is blind for life: it never learns which spec a code stands for.</summary>
public sealed record Study;
