using System.Text.RegularExpressions;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Reporting;

public sealed class TheDemoReportsAreTheApprovedOnesTests
{
    [Theory]
    [InlineData("quillmere")]
    [InlineData("dunmarrow")]
    public void The_Markdown_of_a_demo_is_what_somebody_looked_at_and_approved(string demo)
    {
        (string markdown, _) = AReport.OfDemo(demo);
        Golden.Approve(
            $"tests/FieldSession.Tests/Reporting/{demo}-report.md",
            Regex.Replace(markdown, "[0-9a-f]{64}", "(64 hexadecimal digits)")
        );
    }
}
