using System.Text.Json;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Exports;

/// <summary>What an earlier export left in a folder: only files that its descriptor lists, everything else is somebody else's.</summary>
internal static class EarlierExport
{
    /// <summary>The names of the files that an earlier export of this program wrote there, its descriptor included; empty: there was none.</summary>
    public static IReadOnlySet<string> In(IDisk disk, string folder)
    {
        string descriptor = Path.Combine(folder, DataPackageJson.FileName);
        if (!disk.Exists(descriptor))
        {
            return new HashSet<string>();
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(disk.ReadAll(descriptor));
            return Listed(document.RootElement);
        }
        catch (Exception foreign) when (foreign is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return new HashSet<string>();
        }
    }

    private static HashSet<string> Listed(JsonElement root)
    {
        if (root.GetProperty(DataPackageJson.MakerProperty).GetString() != DataPackageJson.Maker)
        {
            return [];
        }

        // a name that is none of ours could lead out of the folder
        IEnumerable<string> listed = root.GetProperty("resources").EnumerateArray()
            .Select(resource => resource.GetProperty("path").GetString() ?? "")
            .Where(name => Exports.All.Any(file => file.Name == name));
        return [DataPackageJson.FileName, .. listed];
    }
}
