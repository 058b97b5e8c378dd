using System.Text;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Commands;

namespace FieldSession.Tests.Making;

/// <summary>The world outside of a command: lines in, what it says out.</summary>
internal sealed class Outside(params IEnumerable<string> lines)
{
    private readonly StringBuilder _output = new();
    private readonly StringBuilder _error = new();

    public StoppedClock Clock { get; } = new();

    /// <summary>What was answered, a line each.</summary>
    public string[] Answers => _output.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);

    /// <summary>What came on the message stream, a line each.</summary>
    public string[] Messages => _error.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);

    public Surroundings World =>
        new()
        {
            Input = new Typist(lines),
            Output = new StringWriter(_output),
            Error = new StringWriter(_error),
            Clock = Clock,
            Lot = new SystemLot(),
            Stretch = QuickStretch.Derive,
        };

    /// <summary>Runs a command as it is typed at the prompt.</summary>
    public int Run(params string[] words) => CommandLine.Run(words, World);

    /// <summary>Hands on a line when it is asked for and not before, so that something can happen between two lines.</summary>
    private sealed class Typist(IEnumerable<string> lines) : TextReader
    {
        private readonly IEnumerator<string> _lines = lines.GetEnumerator();
        private string _line = "";
        private int _at;

        public override int Read()
        {
            if (_at == _line.Length)
            {
                (_line, _at) = _lines.MoveNext() ? ($"{_lines.Current}\n", 0) : ("", 0);
            }

            return _line.Length == 0 ? -1 : _line[_at++];
        }

        public override string? ReadLine() => _lines.MoveNext() ? _lines.Current : null;
    }
}
