using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FieldSession.Tests.House;

/// <summary>One C# file of the house, read as text and as a tree.</summary>
/// <param name="Path">From the top of the repository, with slashes.</param>
/// <param name="Text">The whole text.</param>
/// <param name="Tree">What the compiler reads in it.</param>
public sealed record SourceFile(string Path, string Text, SyntaxTree Tree)
{
    /// <summary>How many lines it has.</summary>
    public int Lines => Text.AsSpan().TrimEnd().Count('\n') + 1;

    /// <summary>Whether it belongs to the program, not to its tests.</summary>
    public bool IsOfTheProgram => Path.StartsWith("src/", StringComparison.Ordinal);

    /// <summary>The folder it lies in, from the top of the repository.</summary>
    public string Folder => Path[..Path.LastIndexOf('/')];

    /// <summary>The namespace that it declares; empty: none.</summary>
    public string Namespace => Tree.GetRoot().ChildNodes().OfType<BaseNamespaceDeclarationSyntax>().FirstOrDefault()?.Name.ToString() ?? "";

    /// <summary>The room it belongs to: the last part of its namespace. A folder below a room sorts its files by subject.</summary>
    public string Room => Namespace[(Namespace.LastIndexOf('.') + 1)..];

    /// <summary>The types that it declares at its top.</summary>
    public IEnumerable<MemberDeclarationSyntax> Types =>
        Tree.GetRoot()
            .DescendantNodes(node => node is CompilationUnitSyntax or BaseNamespaceDeclarationSyntax)
            .OfType<MemberDeclarationSyntax>()
            .Where(member => member is BaseTypeDeclarationSyntax or DelegateDeclarationSyntax);

    /// <summary>Whether it lies in a folder or in one below it.</summary>
    public bool LiesIn(string folder) => Path.StartsWith(folder, StringComparison.Ordinal);

    /// <summary>The file as it lies in the repository.</summary>
    public static SourceFile At(string path)
    {
        string text = File.ReadAllText(System.IO.Path.Combine(Making.Repository.Root, path));
        return new SourceFile(path, text, CSharpSyntaxTree.ParseText(text, path: path));
    }

    /// <summary>Whether a piece of it is in a type of one of these names, by their ends.</summary>
    public static bool IsInTypeNamed(SyntaxNode node, IEnumerable<string> ends) =>
        node.Ancestors()
            .OfType<BaseTypeDeclarationSyntax>()
            .Any(type => ends.Any(end => type.Identifier.Text.EndsWith(end, StringComparison.Ordinal)));

    /// <summary>Where a piece of the file is, as an editor can follow it.</summary>
    public string Place(SyntaxNode node) => $"{Path}:{Tree.GetLineSpan(node.Span).StartLinePosition.Line + 1}";
}
