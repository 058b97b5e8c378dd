using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Rating;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal.Screens.Rating;

/// <summary>The rating screen: one person alone, attribute by attribute. Leaving it gives the keyboard back to nobody.</summary>
internal sealed class RateScreen : TypingScreen
{
    private readonly Pen _pen;
    private readonly TypingBox _box;
    private RateSight _sight;

    /// <summary>The screen on a study.</summary>
    public RateScreen(Desk desk, Pen pen)
        : base(desk)
    {
        _pen = pen;
        _sight = Nobody(null);
        _box = new TypingBox
        {
            Pressed = OnPressed,
            X = RatePage.BoxColumn,
            Width = Dim.Fill(1),
        };
        Lay(_box);
    }

    /// <inheritdoc/>
    public override void Enter()
    {
        _sight = Nobody(null);
        _box.Forget();
        base.Enter();
        Draw();
    }

    /// <inheritdoc/>
    public override void Refresh(Palette palette)
    {
        _sight = _sight with { Study = Desk.Logbook.Study, IsParked = Desk.Parking.IsParked };
        base.Refresh(palette);
    }

    /// <inheritdoc/>
    protected override void Draw()
    {
        RateWords words = RatePage.Of(_sight, Frame.Width, Frame.Height);
        Paper.Show(words.Rows, Palette);
        _box.Y = words.BoxRow;
    }

    private bool OnPressed(Key key)
    {
        if (key == Key.Enter || key == Key.Esc)
        {
            Done(isEnter: key == Key.Enter);
            return true;
        }

        return AsksHelp(key);
    }

    // whichever key it is, an order that is shown is covered by it
    private void Done(bool isEnter)
    {
        if (_sight.Slip is not null)
        {
            See(Nobody(null));
        }
        else if (isEnter)
        {
            Take(_box.Text.Trim());
        }
        else
        {
            See(_box.Text.Length > 0 ? _sight with { Message = null } : Nobody(null));
        }
    }

    private void Take(string typed)
    {
        if (!Desk.Parking.IsParked && RatePage.IsOpen(_sight.Study))
        {
            See(Nobody(Desk.Parking.Take(typed) ? null : $"'{Columns.Cut(typed, 20)}' is not '{Parking.Word}'"));
            return;
        }

        if (ParkedAgain(typed, ScreenName.Rate) is { } words)
        {
            See(_sight with { IsParked = true, Message = words });
            return;
        }

        bool isLine = typed.Contains(' ', StringComparison.Ordinal) && Member(typed) is null;
        if (isLine || !RatePage.IsOpen(_sight.Study))
        {
            Write(typed.TrimStart(':'));
            return;
        }

        Answer(typed);
    }

    private void Answer(string typed)
    {
        switch (_sight)
        {
            case { Rater: null } or { Next: null } when typed.Length > 0:
                See(Called(typed));
                break;
            case { Next: { } attribute } when typed.Length > 0:
                Write($"rate {_sight.Rater!.Name} {attribute.Name} {typed}");
                break;
            case { Next: { } attribute }:
                See(_sight with { Skipped = _sight.Skipped.Add(attribute.Name), Message = null });
                break;
            default:
                See(Nobody(null));
                break;
        }
    }

    private RateSight Called(string typed)
    {
        return Member(typed) is { } member
            ? Nobody(null) with
            {
                Rater = member,
            }
            : Nobody(RateScreenWords.NotInCrew(typed, string.Join(", ", Crew.Select((m, place) => $"{place + 1} {m.Name}"))));
    }

    private ImmutableList<CrewMember> Crew => Desk.Logbook.Study.Plan?.Crew ?? [];

    private CrewMember? Member(string typed) =>
        Typed.Count(typed) is { } number && number <= Crew.Count ? Crew[number - 1] : CrewMember.Meant(Crew, typed);

    private void Write(string line)
    {
        if (line.Length == 0)
        {
            See(_sight with { Message = null });
            return;
        }

        int? slip = (EntryText.Parse(line, Desk.Logbook.Study).Entry as SlipTaken)?.Set;
        Outcome outcome = _pen.Write(line);
        See(
            _sight with
            {
                Study = Desk.Logbook.Study,
                Message = outcome.IsWritten ? null : ShellWords.NotWritten(outcome),
                Slip = outcome.IsWritten ? slip : null,
            }
        );
    }

    // Whatever comes of it, a number does not stay in sight.
    private void See(RateSight sight)
    {
        _sight = sight;
        _box.Forget();
        Draw();
    }

    private RateSight Nobody(string? message) =>
        new(Desk.Logbook.Study, null, [], Desk.Parking.IsParked, message) { Letters = Desk.Letters };
}
