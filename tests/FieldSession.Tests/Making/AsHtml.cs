using Markdig;

namespace FieldSession.Tests.Making;

/// <summary>Markdown as another program reads it: CommonMark with pipe tables, raw HTML let through.</summary>
internal static class AsHtml
{
    public static string Of(string markdown) =>
        Markdown.ToHtml(markdown, new MarkdownPipelineBuilder().UsePipeTables().UseEmphasisExtras().Build());
}
