using System.Collections.Immutable;
using System.CommandLine;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'completion': prints the script by which a shell completes the program's words.</summary>
internal static class CompletionCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> shell = new("SHELL") { Description = "bash, zsh, fish or powershell" };
        shell.AcceptOnlyFromAmong([.. CompletionScripts.All.Select(one => one.Shell)]);
        Command command = new("completion", "prints the script by which a shell completes words") { shell };
        command.SetAction(typed =>
        {
            outside.Output.WriteLine(CompletionScripts.All.First(one => one.Shell == typed.GetRequiredValue(shell)).Script);
            return ExitCode.Done;
        });
        return command;
    }
}

/// <summary>
/// What a shell needs to complete the program's words: each script asks the program itself, by the directive [suggest:PLACE].
/// </summary>
internal static class CompletionScripts
{
    /// <summary>The shells, and the script of each.</summary>
    public static ImmutableArray<(string Shell, string Script)> All { get; } =
    [("bash", Bash), ("zsh", Zsh), ("fish", Fish), ("powershell", PowerShell)];

    // Short options are left out, and long ones where no option is begun: a file goes there. Where the program knows no word, the shell
    // offers files.
    private const string Bash = """
        # bash completion of fieldsession; in ~/.bashrc: source <(fieldsession completion bash)
        _fieldsession()
        {
            local line="${COMP_LINE:0:COMP_POINT}"
            line="${line#"${COMP_WORDS[0]}"}"
            line="${line# }"
            local word="${COMP_WORDS[COMP_CWORD]}"
            local found
            found="$("${COMP_WORDS[0]}" "[suggest:${#line}]" "$line" 2>/dev/null | grep -Ev '^(-.|/.)$')"
            [[ "$word" == -* ]] || found="$(grep -v '^-' <<< "$found")"
            mapfile -t COMPREPLY < <(compgen -W "$found" -- "$word")
        }
        complete -o default -F _fieldsession fieldsession
        """;

    private const string Zsh = """
        #compdef fieldsession
        # zsh completion of fieldsession; in ~/.zshrc, after compinit: source <(fieldsession completion zsh)
        _fieldsession()
        {
            local line="${(j: :)words[2,CURRENT]}"
            local -a found
            found=("${(@f)$("${words[1]}" "[suggest:${#line}]" "$line" 2>/dev/null | grep -Ev '^(-.|/.)$')}")
            found=("${(@)found:#}")
            [[ "${words[CURRENT]}" == -* ]] || found=("${(@)found:#-*}")
            if (( ${#found} )); then
                compadd -- "${found[@]}"
            else
                [[ "${words[CURRENT]}" == -* ]] || _files
            fi
        }
        compdef _fieldsession fieldsession
        """;

    private const string Fish = """
        # fish completion of fieldsession; in ~/.config/fish/config.fish: fieldsession completion fish | source
        function __fieldsession_words
            set -l before (commandline -cp)
            set -l line (string replace -r '^\S+ ?' '' -- $before)
            set -l program (commandline -po)[1]
            set -l left_out '^(-.|/.)$'
            string match -q -- '-*' (commandline -ct); or set left_out '^(-.*|/.)$'
            $program "[suggest:"(string length -- $line)"]" "$line" 2>/dev/null | string match -rv -- $left_out
        end
        function __fieldsession_has_words
            test (count (__fieldsession_words)) -gt 0
        end
        complete -c fieldsession -n __fieldsession_has_words -f -a '(__fieldsession_words)'
        """;

    private const string PowerShell = """
        # PowerShell completion of fieldsession; in $PROFILE: fieldsession completion powershell | Out-String | Invoke-Expression
        Register-ArgumentCompleter -Native -CommandName fieldsession -ScriptBlock {
            param($word, $ast, $position)
            $line = $ast.ToString().PadRight($position).Substring(0, $position)
            $first = $ast.CommandElements[0].ToString()
            $line = $line.Substring([Math]::Min($line.Length, $first.Length)).TrimStart()
            & $first "[suggest:$($line.Length)]" "$line" 2>$null |
                Where-Object { $_ -like "$word*" -and $_ -notmatch '^(-.|/.)$' } |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
        }
        """;
}
