using FieldSession.Store;
using FieldSession.Store.Planning;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Hostile;

/// <summary>A text that a person wrote is read to a limit, and as UTF-8 or not at all, whatever lies under its name.</summary>
public sealed class SmallTextTests : IDisposable
{
    private readonly Folder _folder = new();

    [Fact]
    public void A_text_at_the_limit_is_read_and_one_beyond_it_is_not()
    {
        Assert.Equal(SmallText.MostBytes, SmallText.Read(Written("plan.toml", SmallText.MostBytes)).Length);
        TextRefusedException refused = Assert.Throws<TextRefusedException>(() =>
            SmallText.Read(Written("plan.toml", SmallText.MostBytes + 1))
        );
        Assert.Equal($"{_folder["plan.toml"]}: the file is larger than 5 MiB; name a text of some lines", refused.Message);
    }

    [Fact]
    public void A_file_without_end_is_not_read_to_its_end()
    {
        if (File.Exists("/dev/zero"))
        {
            Assert.Throws<TextRefusedException>(() => SmallText.Read("/dev/zero"));
        }
    }

    [Fact]
    public void A_plan_that_is_not_UTF_8_is_not_opened_on_the_screen_because_saving_would_lose_its_letters()
    {
        File.WriteAllBytes(_folder["plan.toml"], [.. "specs = 2\nstudy = \"M"u8, 0xFC, .. "hle\"\n"u8]);
        TextRefusedException refused = Assert.Throws<TextRefusedException>(() => PlanPages.Open(_folder.Path));
        Assert.Equal($"{_folder["plan.toml"]}, line 2: the text is not UTF-8; save the file as UTF-8", refused.Message);
    }

    [Theory]
    [InlineData("plan.toml", "plan")]
    [InlineData("plan.toml", "start")]
    [InlineData("plan.toml", "orders")]
    [InlineData("route.csv", "start")]
    public void Commands_that_read_a_plan_say_that_it_is_too_large(string name, string command)
    {
        APlan();
        Written(name, SmallText.MostBytes + 1);
        Outside outside = new();
        Assert.Equal(ExitCode.Wrong, outside.Run([command, _folder.Path, .. command == "start" ? new[] { _folder.Study } : []]));
        Assert.Contains(
            outside.Messages,
            said => said.Contains("larger than 5 MiB", StringComparison.Ordinal) && said.Contains(name, StringComparison.Ordinal)
        );
        Assert.False(File.Exists(_folder.Study));
    }

    [Fact]
    public void A_list_of_specs_that_is_too_large_seals_nothing()
    {
        APlan();
        Assert.Equal(ExitCode.Done, new Outside().Run("start", _folder.Path, _folder.Study));
        byte[] before = File.ReadAllBytes(_folder.Text);
        Outside outside = new();
        Assert.Equal(
            ExitCode.Wrong,
            outside.Run("seal", _folder.Study, "--specs", Written("specs.txt", SmallText.MostBytes + 1), "--key", _folder["custodian.key"])
        );
        Assert.Contains("specs.txt: the file is larger than 5 MiB", Assert.Single(outside.Messages), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_folder.Text));
        Assert.False(File.Exists(_folder["custodian.key"]));
    }

    public void Dispose() => _folder.Dispose();

    private void APlan()
    {
        foreach (string name in new[] { "plan.toml", "route.csv" })
        {
            File.Copy(Path.Combine(Repository.Root, "demo", "quillmere", name), _folder[name]);
        }
    }

    private string Written(string name, int bytes)
    {
        byte[] text = new byte[bytes];
        Array.Fill(text, (byte)'#');
        File.WriteAllBytes(_folder[name], text);
        return _folder[name];
    }
}
