namespace FieldSession.Store.Planning;

/// <summary>One table of a list of tables, such as each <c>[[crew]]</c>.</summary>
/// <param name="Name">The list's name.</param>
/// <param name="Line">Line of its heading, from 1.</param>
/// <param name="Words">The words in it.</param>
internal sealed record PlanTable(string Name, int Line, IReadOnlyList<PlanWord> Words);
