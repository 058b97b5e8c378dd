using System.Collections.Immutable;

namespace FieldSession.Terminal.Commands;

/// <summary>What a shell needs to complete the program's words: each script asks the program itself, by the directive [suggest:PLACE].</summary>
internal static class CompletionScripts
{
    /// <summary>The shells, and the script of each.</summary>
    public static ImmutableArray<(string Shell, string Script)> All { get; } = [("bash", Bash), ("zsh", Zsh), ("powershell", PowerShell)];

    // Short options are left out: they are the same on every command. Where the program knows no word, the shell offers files.
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
            if (( ${#found} )); then
                compadd -- "${found[@]}"
            fi
            [[ "${words[CURRENT]}" == -* ]] || _files
        }
        compdef _fieldsession fieldsession
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
