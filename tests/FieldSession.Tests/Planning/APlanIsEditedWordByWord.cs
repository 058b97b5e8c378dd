using System.Collections.Immutable;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Planning;

public sealed class APlanIsEditedWordByWord : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-pages").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_demo_plan_written_back_is_the_same_plan_and_the_same_text()
    {
        string demo = Path.Combine(Repository.Root, "demo", "quillmere");
        PlanPages pages = PlanPages.Open(demo);
        pages.Write(_folder);
        Assert.Equal(File.ReadAllText(Path.Combine(demo, "plan.toml")), File.ReadAllText(Path.Combine(_folder, "plan.toml")));
        AssertSame(PlanFolder.Read(demo).Plan!, PlanFolder.Read(_folder).Plan!);
    }

    [Fact]
    public void Every_field_set_to_its_own_text_gives_the_same_plan()
    {
        PlanPages pages = PlanPages.Open(Path.Combine(Repository.Root, "demo", "quillmere"));
        PlanPages again = PlanFields.All.Aggregate(pages, (now, field) => now.With(field, now.TextOf(field)));
        AssertSame(pages.Judged().Plan!, again.Judged().Plan!);
        Assert.StartsWith("# The demo study", again.Toml);
    }

    [Fact]
    public void A_folder_without_a_plan_begins_with_one_that_lacks_only_its_route()
    {
        PlanPages pages = PlanPages.Open(Path.Combine(_folder, "new"));
        PlanProblem problem = Assert.Single(pages.Judged().Problems);
        Assert.Equal("the route has no segment", problem.What);
        PlanPages whole = pages with { Rows = [Row("Mill lane", "smooth", "80", "900")] };
        whole.Write(Path.Combine(_folder, "new"));
        Assert.Equal(40.5, PlanFolder.Read(Path.Combine(_folder, "new")).Plan!.Route[0].Seconds, 1e-9);
    }

    [Fact]
    public void An_imperial_plan_is_edited_in_miles()
    {
        PlanPages pages = PlanPages.Open(_folder).With(Field("units"), "imperial");
        Assert.Contains("speed_mph", pages.Columns);
        Plan plan = (pages with { Rows = [Row("Main", "smooth", "45", "0.6")] }).Judged().Plan!;
        Assert.Equal(UnitSystem.Imperial, plan.Units);
        Assert.Equal(48, plan.Route[0].Seconds, 1e-9);
        Assert.Equal(45, plan.Route[0].Speed.Mph, 1e-9);
    }

    [Theory]
    [InlineData("a \"quoted\" name, with a comma")]
    [InlineData("back\\slash")]
    [InlineData("Ådal ü 漢")]
    public void Hard_letters_come_back_as_they_were_typed(string text)
    {
        PlanPages pages = PlanPages.Open(_folder).With(Field("question"), text);
        Plan plan = (pages with { Rows = [Row(text, "smooth", "80", "900")] }).Judged().Plan!;
        Assert.Equal((text, text), (plan.Question, plan.Route[0].Name));
    }

    [Theory]
    [InlineData("margin_db", "loud", "'margin_db' is text")]
    [InlineData("specs", "two", "'specs' is text")]
    [InlineData("order", "R 7 R", "unknown place '7'")]
    [InlineData("tyre_size", "round", "'tyre_size' is 'round'")]
    [InlineData("required_checks", "oil", "'required_checks' names 'oil'")]
    [InlineData("main_segments", "Moon", "'Moon' is not a segment")]
    [InlineData("covered_until_evening", "perhaps", "'covered_until_evening' is text")]
    [InlineData("usable_kwh", "big", "'usable_kwh' is text")]
    [InlineData("energy_days", "X=9 Y=R", "9")]
    [InlineData("rerun_counts", "best", "'rerun_counts' is 'best'")]
    [InlineData("car_order", "X; Y", "'car_order' names 'X'")]
    [InlineData("driver_order", "Ro; Ro", "'driver_order' names 'Ro'")]
    public void What_can_not_be_is_kept_on_the_page_and_refused_by_name(string field, string text, string said)
    {
        PlanPages pages = (PlanPages.Open(_folder) with { Rows = [Row("Mill lane", "smooth", "80", "900")] }).With(Field(field), text);
        Assert.Equal(text, pages.TextOf(Field(field)));
        Assert.Contains(pages.Judged().Problems, problem => problem.What.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Ana, Bo")]
    [InlineData("Ana; Bo")]
    [InlineData(" Ana ,Bo;")]
    public void A_crew_of_two_is_two_people_whether_a_comma_or_a_semicolon_parts_them(string typed)
    {
        PlanPages pages = (PlanPages.Open(_folder) with { Rows = [Row("Mill lane", "smooth", "80", "900")] }).With(Field("crew"), typed);
        Assert.Equal(["Ana", "Bo"], pages.Judged().Plan!.Crew.Select(member => member.Name));
        Assert.Equal("Ana; Bo", pages.TextOf(Field("crew")));
    }

    [Fact]
    public void A_segment_keeps_the_comma_of_its_name_and_a_margin_takes_one_for_its_point()
    {
        PlanPages pages = (PlanPages.Open(_folder) with { Rows = [Row("Viaduct, 3 joints", "smooth", "80", "900")] })
            .With(Field("main_segments"), "Viaduct, 3 joints")
            .With(Field("margin_db"), "1,5");
        Assert.Equal(["Viaduct, 3 joints"], pages.Judged().Plan!.MainSegments);
        Assert.Equal(1.5, pages.Judged().Plan!.MarginDb);
    }

    [Fact]
    public void A_word_is_taken_away_with_its_line_and_comes_before_the_first_table()
    {
        const string Toml = "specs = 2\nquestion = \"a\"  # remark\norder = \"R 1 R\"\n[limits]\nwidth_warn_db = 5\n";
        string without = PlanText.With(Toml, "question", null);
        Assert.Equal("specs = 2\norder = \"R 1 R\"\n[limits]\nwidth_warn_db = 5\n", without);
        Assert.Equal(
            "specs = 2\norder = \"R 1 R\"\nquestion = \"b\"\n[limits]\nwidth_warn_db = 5\n",
            PlanText.With(without, "question", "\"b\"")
        );
    }

    [Fact]
    public void Every_word_of_a_plan_can_be_edited_and_says_what_it_takes()
    {
        Assert.All(PlanFields.All, field => Assert.True(field.Hint.Length is > 10 and < 170, field.Name));
        Assert.Equal(PlanFields.All.Length, PlanFields.All.Select(field => field.Name).Distinct().Count());
        foreach (PlanField field in PlanFields.All)
        {
            PlanPages pages = PlanPages.Open(_folder).With(field, "x");
            Assert.DoesNotContain(
                pages.Judged().Problems.Concat(pages.Judged().Warnings),
                problem => problem.What.Contains("not a word of the plan", StringComparison.Ordinal)
            );
        }
    }

    [Theory]
    [InlineData("yes", true)]
    [InlineData("no", false)]
    public void Yes_and_no_are_written_as_truth_values(string text, bool covered)
    {
        PlanPages pages = (PlanPages.Open(_folder) with { Rows = [Row("Mill lane", "smooth", "80", "900")] }).With(
            Field("covered_until_evening"),
            text
        );
        Assert.Equal(covered, pages.Judged().Plan!.CoveredUntilEvening);
        Assert.Equal(text, pages.TextOf(Field("covered_until_evening")));
    }

    [Fact]
    public void Pressures_are_edited_in_the_units_of_the_plan_and_a_word_in_the_file_is_always_there()
    {
        PlanPages metric = PlanPages.Of("x", "specs = 2\npressure_front_psi = 33\n", "");
        string[] names = [.. metric.Fields(metric.Texts()).Select(field => field.Name)];
        Assert.Contains("pressure_front_kpa", names);
        Assert.Contains("pressure_front_psi", names);
        Assert.DoesNotContain("pressure_rear_psi", names);
        PlanPages imperial = PlanPages.Of("x", "units = \"imperial\"\n", "");
        Assert.DoesNotContain(imperial.Fields(imperial.Texts()), field => field.Name == "pressure_front_kpa");
    }

    [Fact]
    public void Limits_and_reasons_are_written_in_their_tables_and_everything_else_stays()
    {
        Limit tread = FurtherLimits.Tread;
        const string Toml = "specs = 2 # two\norder = \"R 1 R\"\n";
        PlanPages pages = PlanPages.Of("x", Toml, "segment,kind,speed_kmh,length_m\nMill lane,smooth,80,900\n");
        PlanPages changed = pages.With(tread, "2,5").WithReason(tread, "worn \"on purpose\"").With(AllLimits.InOrder[2].Limit, "6");
        Assert.Equal(
            Toml
                + "\n[limits]\ntread_difference_mm = 2.5\nwind_warn_m_s = 6.0\n\n[limits.reasons]\ntread_difference_mm = \"worn "
                + "\\\"on purpose\\\"\"\n",
            changed.Toml
        );
        Limits limits = changed.Judged().Plan!.Limits;
        Assert.Equal((2.5, 6.0, "worn \"on purpose\""), (limits.Of(tread), limits.WindWarnMetresPerSecond, limits.Reasons![tread.Name]));
        PlanPages back = changed.With(tread, "").WithReason(tread, "").With(AllLimits.InOrder[2].Limit, "");
        Assert.Equal(Toml + "\n[limits]\n\n[limits.reasons]\n", back.Toml);
    }

    [Theory]
    [InlineData(
        "[limits] # ours\nwidth_warn_db = 5 # wide\n\n[[crew]]\nname = \"Ro\"\n",
        "[limits] # ours\nwidth_warn_db = 5 # wide\ntread_difference_mm = 2.0\n\n[[crew]]\nname = \"Ro\"\n"
    )]
    [InlineData("[limits]", "[limits]\ntread_difference_mm = 2.0\n")]
    [InlineData("limits.width_warn_db = 5\nspecs = 2\n", "limits.width_warn_db = 5\nlimits.tread_difference_mm = 2.0\nspecs = 2\n")]
    [InlineData("limits.tread_difference_mm = 5 # old\n", "limits.tread_difference_mm = 2.0 # old\n")]
    [InlineData("[limits]\nreasons.width_warn_db = \"why\"\n", "[limits]\nreasons.width_warn_db = \"why\"\ntread_difference_mm = 2.0\n")]
    public void A_limit_finds_its_table_however_it_is_written(string toml, string then) =>
        Assert.Equal(then, PlanText.With(toml, "limits", "tread_difference_mm", "2.0"));

    [Fact]
    public void A_reason_beside_dotted_ones_is_dotted_too() =>
        Assert.Equal(
            "[limits]\nwidth_warn_db = 5\nreasons.width_warn_db = \"why\"\nreasons.tread_difference_mm = \"worn\"\n",
            PlanText.With(
                "[limits]\nwidth_warn_db = 5\nreasons.width_warn_db = \"why\"\n",
                "limits.reasons",
                "tread_difference_mm",
                "\"worn\""
            )
        );

    private static PlanField Field(string name) => PlanFields.All.Single(field => field.Name == name);

    private static ImmutableArray<string> Row(string name, string kind, string speed, string length) =>
        [name, kind, speed, length, "", "", "", "", ""];

    private static void AssertSame(Plan one, Plan other)
    {
        Assert.Equal(one.Route, other.Route);
        Assert.Equal(one.Order, other.Order);
        Assert.Equal(one.Phrases, other.Phrases);
        Assert.Equal(one.Crew, other.Crew);
        Assert.Equal(
            (
                one.StudyName,
                one.Question,
                one.SpecCount,
                one.MarginDb,
                one.ImpactMarginDb,
                one.Custodian,
                one.Protocol,
                one.CalibratorDb,
                one.PricePremium
            ),
            (
                other.StudyName,
                other.Question,
                other.SpecCount,
                other.MarginDb,
                other.ImpactMarginDb,
                other.Custodian,
                other.Protocol,
                other.CalibratorDb,
                other.PricePremium
            )
        );
    }
}
