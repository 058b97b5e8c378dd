using System.Collections.Immutable;
using System.Text;
using CsvHelper;

namespace FieldSession.Store.Planning;

/// <summary>The fields of a route's text, row by row, the header first; nothing is judged.</summary>
internal static class RouteCells
{
    /// <summary>The rows; empty where the quotes of the text do not fit.</summary>
    public static ImmutableArray<ImmutableArray<string>> Of(string csv)
    {
        CsvReaderOptions options = new()
        {
            HasHeader = false,
            Separator = ',',
            SkipEmptyLines = true,
            TrimWhitespace = true,
            MalformedData = CsvMalformedDataHandling.Throw,
            IncludeValuesInExceptions = false,
        };
        using CsvReader reader = CsvReader.Create(Encoding.UTF8.GetBytes(csv.TrimStart('\uFEFF')), options);
        ImmutableArray<ImmutableArray<string>>.Builder rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        try
        {
            while (reader.Read())
            {
                rows.Add([.. reader.Current.ToArray()]);
            }
        }
        catch (CsvFormatException)
        {
            return [];
        }

        return rows.ToImmutable();
    }
}
