using FieldSession.Tests.Making;

namespace FieldSession.Tests.Slips;

/// <summary>
/// A hand that types what is meant and slips now and then: keys left out, doubled, swapped, added, Enter too early or too late, words meant
/// for another window.
/// </summary>
/// <param name="tui">What it types into.</param>
/// <param name="chance">Where its slips come from.</param>
/// <param name="rate">Slips for each key, 0 to 1.</param>
internal sealed class SlippingHand(Tui tui, Random chance, double rate)
{
    private const string AnyKey = "0123456789twsrnemudc;:/*+-. qaoipl\n";

    private static readonly string[] OtherWindow =
    [
        "git status\n",
        "ls -la\n",
        "hello\n",
        "motorbike in the way",
        "yes\n",
        "ok\n",
        "truck overtaking us",
        "sudo apt update\n",
        "what time is it\n",
        ":wq\n",
        "exit\n",
        "set volume 40\n",
        "mute",
        "next song\n",
        "we turn left here\n",
    ];

    private string _late = "";

    /// <summary>Slips made so far.</summary>
    public int Slips { get; private set; }

    /// <summary>Keys that were meant so far.</summary>
    public int Meant { get; private set; }

    /// <summary>Types keys, with slips; a bar is a thought.</summary>
    public void Type(string keys)
    {
        string meant = _late + keys;
        _late = "";
        for (int i = 0; i < meant.Length; i++)
        {
            int gapMs = chance.Next(120, 350);
            if (meant[i] == '|')
            {
                gapMs += 1350;
                i++;
            }

            Meant++;
            if (chance.NextDouble() >= rate)
            {
                Press(gapMs, meant[i]);
            }
            else
            {
                Slips++;
                i = Slip(meant, i, gapMs);
            }
        }
    }

    /// <summary>Types keys without a slip, unhurried.</summary>
    public void TypeWithCare(string keys)
    {
        foreach (char key in keys)
        {
            Press(key == '|' ? 1350 : 1100, key);
        }
    }

    // Which place of what is meant comes next minus one: a swap takes two.
    private int Slip(string meant, int place, int gapMs)
    {
        switch (chance.Next(7))
        {
            case 0:
                break;
            case 1:
                Press(gapMs, meant[place]);
                Press(chance.Next(20, 140), meant[place]);
                break;
            case 2:
                return Swap(meant, place, gapMs);
            case 3:
                Add('\n', meant[place], gapMs);
                break;
            case 4:
                Late(meant[place], gapMs);
                break;
            case 5:
                Array.ForEach([.. OtherWindow[chance.Next(OtherWindow.Length)]], other => Press(chance.Next(50, 500), other));
                Press(1350, meant[place]);
                break;
            default:
                AddAny(meant[place], gapMs);
                break;
        }

        return place;
    }

    private int Swap(string meant, int place, int gapMs)
    {
        if (place + 1 >= meant.Length || meant[place + 1] == '|')
        {
            AddAny(meant[place], gapMs);
            return place;
        }

        Press(gapMs, meant[place + 1]);
        Press(chance.Next(20, 200), meant[place]);
        return place + 1;
    }

    // Enter comes after the next reading has begun.
    private void Late(char meant, int gapMs)
    {
        if (meant == '\n')
        {
            _late = "\n";
        }
        else
        {
            AddAny(meant, gapMs);
        }
    }

    private void AddAny(char meant, int gapMs) => Add(AnyKey[chance.Next(AnyKey.Length)], meant, gapMs);

    private void Add(char other, char meant, int gapMs)
    {
        Press(gapMs, other);
        Press(gapMs, meant);
    }

    private void Press(int afterMs, char key)
    {
        if (key != '|')
        {
            tui.After(afterMs, key);
        }
    }
}
