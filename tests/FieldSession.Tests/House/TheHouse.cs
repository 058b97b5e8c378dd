using System.Collections.Immutable;
using FieldSession.Tests.Making;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

/// <summary>
/// The whole source, read once for all house tests, and compiled in memory so that a rule can ask what a name means and
/// need not guess from its spelling.
/// </summary>
public sealed class TheHouse
{
    private const string ImplicitUsings =
        "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq;"
        + "global using System.Net.Http; global using System.Threading; global using System.Threading.Tasks;";

    // What .gitignore leaves out, and git itself.
    private static readonly ImmutableHashSet<string> LeftOut = [".git", ".artifacts", ".vs", ".idea", "TestResults"];

    private readonly CSharpCompilation _compilation;
    private readonly Lazy<ImmutableArray<Use>> _uses;
    private readonly Lazy<ImmutableDictionary<string, ImmutableHashSet<string>>> _filesUsed;

    public TheHouse()
    {
        Files = [.. FilesBelow(Repository.Root).Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'))];
        Sources = [.. Files.Where(path => path.EndsWith(".cs", StringComparison.Ordinal)).Select(SourceFile.At)];
        Program = [.. Sources.Where(source => source.IsOfTheProgram)];
        _compilation = CSharpCompilation.Create(
            "TheHouse",
            Program.Select(source => source.Tree).Append(CSharpSyntaxTree.ParseText(ImplicitUsings)),
            Libraries(),
            // without nullable: what may be null is the build's concern, and twice the work
            new CSharpCompilationOptions(OutputKind.ConsoleApplication, allowUnsafe: true)
        );
        _uses = new(() => [.. Program.AsParallel().AsOrdered().SelectMany(UsesIn)]);
        _filesUsed = new(FilesUsedByEach);
    }

    /// <summary>Every file that belongs to the repository, from its top, with slashes.</summary>
    public ImmutableArray<string> Files { get; }

    /// <summary>Every C# file of the program and of its tests.</summary>
    public ImmutableArray<SourceFile> Sources { get; }

    /// <summary>Every C# file of the program.</summary>
    public ImmutableArray<SourceFile> Program { get; }

    /// <summary>Every name in the program's files that means a type or a member, and what it means.</summary>
    public ImmutableArray<Use> Uses => _uses.Value;

    /// <summary>For each file of the program the others that it uses.</summary>
    public ImmutableDictionary<string, ImmutableHashSet<string>> FilesUsed => _filesUsed.Value;

    /// <summary>What the names in a file of the program mean.</summary>
    public SemanticModel MeaningOf(SourceFile source) => _compilation.GetSemanticModel(source.Tree);

    /// <summary>Whether a symbol is declared in this house and not in a library.</summary>
    public bool IsOurs(ISymbol symbol) => SymbolEqualityComparer.Default.Equals(symbol.ContainingAssembly, _compilation.Assembly);

    /// <summary>Fails with every offender on a line of its own.</summary>
    public static void NoneOf(IEnumerable<string> offenders, string rule)
    {
        string[] all = [.. offenders.Distinct().Order(StringComparer.Ordinal)];
        Assert.True(all.Length == 0, $"{rule}. {all.Length} offenders:\n{string.Join('\n', all)}");
    }

    private ImmutableDictionary<string, ImmutableHashSet<string>> FilesUsedByEach() =>
        (
            from use in Uses
            where use.IsOurs
            let type = TopOf(use.Symbol)
            where type is not null
            from place in type.DeclaringSyntaxReferences.Take(1)
            where place.SyntaxTree.FilePath != use.Source.Path
            group place.SyntaxTree.FilePath by use.Source.Path
        ).ToImmutableDictionary(file => file.Key, file => file.ToImmutableHashSet());

    private static INamedTypeSymbol? TopOf(ISymbol symbol)
    {
        INamedTypeSymbol? type = symbol as INamedTypeSymbol ?? symbol.ContainingType;
        while (type?.ContainingType is { } outer)
        {
            type = outer;
        }

        return type?.OriginalDefinition;
    }

    // Not only written types: also the members called, so that a room reached through another's property is seen.
    private IEnumerable<Use> UsesIn(SourceFile source)
    {
        SemanticModel meaning = MeaningOf(source);
        return from name in source.Tree.GetRoot().DescendantNodes().OfType<SimpleNameSyntax>()
            let symbol = meaning.GetSymbolInfo(name).Symbol
            where symbol is ITypeSymbol or IMethodSymbol or IPropertySymbol or IFieldSymbol or IEventSymbol
            where symbol.ContainingNamespace is { IsGlobalNamespace: false }
            select new Use(source, source.Place(name), symbol, IsOurs(symbol));
    }

    // A walk, not a question to git: the tests also run in a copy without history.
    private static IEnumerable<string> FilesBelow(string folder) =>
        Directory
            .EnumerateFileSystemEntries(folder)
            .Where(path => !LeftOut.Contains(Path.GetFileName(path)))
            .SelectMany(path => Directory.Exists(path) ? FilesBelow(path) : [path]);

    private static IEnumerable<MetadataReference> Libraries() =>
        ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
            .Split(Path.PathSeparator)
            .Where(path => !Path.GetFileName(path).StartsWith("fieldsession", StringComparison.OrdinalIgnoreCase))
            .Select(path => MetadataReference.CreateFromFile(path));
}

/// <summary>A name in a file of the program, and what it means.</summary>
/// <param name="Source">The file.</param>
/// <param name="Place">Where in it.</param>
/// <param name="Symbol">What the name means.</param>
/// <param name="IsOurs">Whether that is declared in this house, not in a library.</param>
public sealed record Use(SourceFile Source, string Place, ISymbol Symbol, bool IsOurs)
{
    /// <summary>The namespace that declares what is meant.</summary>
    public string Namespace => Symbol.ContainingNamespace.ToDisplayString();

    /// <summary>The room that declares what is meant.</summary>
    public string Room => Symbol.ContainingNamespace.Name;

    /// <summary>The library that declares what is meant.</summary>
    public string Library => Symbol.ContainingAssembly?.Name ?? "";

    public override string ToString() => $"{Place}: {Namespace} ({Symbol.Name})";
}

/// <summary>The house tests share one reading of the source.</summary>
[CollectionDefinition(Name)]
public sealed class HouseRules : ICollectionFixture<TheHouse>
{
    public const string Name = "House";
}
