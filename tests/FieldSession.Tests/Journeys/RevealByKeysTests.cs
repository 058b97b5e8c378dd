using FieldSession.State;
using FieldSession.Terminal;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>The key opened on its screen where it is not one file: two fittings, or a sheet of paper.</summary>
public class RevealByKeysTests
{
    private const string Passphrase = $"{AtThePrompt.Passphrase}<Enter>";

    [Fact]
    public void Each_fitting_is_opened_by_its_own_key_file_and_one_twice_is_not_enough()
    {
        using AtThePrompt prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready).Drive(3);
        prompt.Must(0, ["seal", prompt.Study, "--specs", prompt.Here("specs.txt"), "--key", prompt.Here("b.key")]);
        prompt.Drive(3).Predict(prompt.Now().DrivenCodes.First());
        Dictionary<SpecCode, string> specs = new[] { "a.key", "b.key" }.SelectMany(prompt.SpecsIn).ToDictionary();
        using OpenedStudy opened = OpenedStudy.At(prompt.Study, prompt.Outside());
        using Tui tui = Screens(prompt, opened);

        tui.Keys("parked<Enter>a.key<Enter>").Keys(Passphrase);
        Assert.Contains("passphrase 1 of 2", tui.Screen, StringComparison.Ordinal);
        tui.Keys("a.key<Enter>").Keys(Passphrase);
        Assert.Contains("give the key file of the other fitting", tui.Screen, StringComparison.Ordinal);
        tui.Keys("b.key<Enter>").Keys(Passphrase);
        foreach (SpecCode code in opened.Logbook.Study.DrivenCodes.ToArray())
        {
            Assert.Contains($"driven as {code}", tui.Screen, StringComparison.Ordinal);
            Assert.DoesNotContain("BETA", tui.Screen, StringComparison.Ordinal);
            tui.Keys($"{specs[code]}<Enter>");
        }

        tui.Keys("Ro<Enter>Ilse<Enter><Enter>");
        Assert.Contains("ok  it gives the published commitment", tui.Screen, StringComparison.Ordinal);
        Assert.True(opened.Logbook.Study.Opening!.CommitmentHolds);
    }

    [Fact]
    public void A_paper_key_is_typed_in_unseen()
    {
        using AtThePrompt prompt = AWholeDay.OnPaper().Enter(AWholeDay.Ready).Drive(6);
        prompt.Predict(prompt.Now().DrivenCodes.First());
        using OpenedStudy opened = OpenedStudy.At(prompt.Study, prompt.Outside());
        using Tui tui = Screens(prompt, opened);

        tui.Watcher = screen => Assert.DoesNotContain("HIDDEN", screen, StringComparison.Ordinal);
        tui.Keys("parked<Enter>HIDDEN-A<Enter>HIDDEN-B<Enter>HIDDEN-C<Enter>");
        Assert.Contains("the control is none of the specs", tui.Screen, StringComparison.Ordinal);
        tui.Keys("HIDDEN-A<Enter>");
        Assert.Contains("the mark under the tape", tui.Screen, StringComparison.Ordinal);
        tui.Watcher = null;
        tui.Keys("HIDDEN-A<Enter>HIDDEN-B<Enter>Ro<Enter>Ilse<Enter><Enter>");
        Assert.Contains("--  there was no commitment to check", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("HIDDEN-A (control)", tui.Screen, StringComparison.Ordinal);
        Assert.True(opened.Logbook.Study.Opening!.MarksAgree);
    }

    private static Tui Screens(AtThePrompt prompt, OpenedStudy opened) =>
        new(
            opened.Logbook,
            prompt.Clock,
            desk =>
                desk with
                {
                    OpenKey = (path, passphrase, ring) =>
                        DriveCommand.Tried(prompt.Here(path), passphrase, opened.Logbook.Study, ring, prompt.Outside().KeyFile),
                },
            screen: ScreenName.Reveal
        );
}
