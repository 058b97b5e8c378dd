namespace FieldSession.Store.Journaling;

/// <summary>A file that LiteDB may look at: what it writes on the way stays in memory, and the file is as it was.</summary>
internal sealed class SightStream(IDiskFile file) : DurableStream(file, DiskFault.FromTheBeginning());
