using FieldSession.Store.Sealing;

namespace FieldSession.Tests.Sealing;

public sealed class AnEditedKeyFileDoesNotOpen : IDisposable
{
    private readonly KeyFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_flipped_bit_anywhere_in_the_file_is_noticed()
    {
        byte[] whole = File.ReadAllBytes(_folder.Seal("a.key", KeyFolder.Key));
        int cipher = whole.AsSpan().IndexOf("cipher"u8);
        int tag = whole.AsSpan().IndexOf("\"tag"u8);
        List<int> opened = [];
        for (int at = 0; at < whole.Length; at += at > cipher && at < tag ? 19 : 1)
        {
            byte[] edited = [.. whole];
            edited[at] ^= (byte)(1 << (at % 8));
            KeyOpening opening = _folder.OpenBytes(edited);
            if (opening.Key is not null || opening.Fault is null || opening.Words.Contains("STAND", StringComparison.Ordinal))
            {
                opened.Add(at);
            }
        }

        Assert.Empty(opened);
        Assert.NotNull(_folder.OpenBytes(whole).Key);
    }

    [Fact]
    public void A_file_cut_off_anywhere_is_damaged()
    {
        byte[] whole = File.ReadAllBytes(_folder.Seal("a.key", KeyFolder.Key));
        for (int length = 0; length < whole.Length - 1; length += 61)
        {
            Assert.Equal(KeyFault.Damaged, _folder.OpenBytes(whole[..length]).Fault);
        }
    }

    [Fact]
    public void Line_ends_changed_by_a_mail_program_do_no_harm()
    {
        string text = File.ReadAllText(_folder.Seal("a.key", KeyFolder.Key));
        Assert.NotNull(_folder.OpenText(text.Replace("\n", "\r\n", StringComparison.Ordinal)).Key);
    }

    [Theory]
    [InlineData("salt")]
    [InlineData("nonce")]
    [InlineData("cipher")]
    [InlineData("tag")]
    public void A_member_swapped_in_from_another_file_is_noticed(string member)
    {
        string[] own = File.ReadAllLines(_folder.Seal("a.key", KeyFolder.Key));
        string[] other = File.ReadAllLines(_folder.Seal("b.key", KeyFolder.Key));
        int line = Array.FindIndex(own, text => text.Contains($"\"{member}\"", StringComparison.Ordinal));
        Assert.NotEqual(own[line], other[line]);
        own[line] = other[line];
        Assert.Equal(KeyFault.WrongPassphraseOrChanged, _folder.OpenText(string.Join('\n', own)).Fault);
    }

    [Theory]
    [InlineData("QW-0114\"", "QW-0115\"", KeyFault.AnotherStudy)]
    [InlineData("\"commitment\": \"", "\"commitment\": \"x", KeyFault.Damaged)]
    [InlineData("\"commitment\": \"0", "\"commitment\": \"1", KeyFault.WrongPassphraseOrChanged)]
    [InlineData("\"rounds\": 600000", "\"rounds\": 600001", KeyFault.WrongPassphraseOrChanged)]
    [InlineData("\"rounds\": 600000", "\"rounds\": 599999", KeyFault.OtherParameters)]
    [InlineData("\"rounds\": 600000", "\"rounds\": 10000001", KeyFault.OtherParameters)]
    [InlineData("\"rounds\": 600000", "\"rounds\": 99999999999999999999", KeyFault.OtherParameters)]
    [InlineData("\"rounds\": 600000", "\"rounds\": -1", KeyFault.OtherParameters)]
    [InlineData("\"rounds\": 600000", "\"rounds\": \"600000\"", KeyFault.Damaged)]
    [InlineData("\"rounds\": 600000", "\"rounds\": 600000, \"rounds\": 600000", KeyFault.Damaged)]
    [InlineData("\"rounds\": 600000", "\"rounds\": 600000, \"more\": 1", KeyFault.Damaged)]
    [InlineData("\"format\"", "\"formal\"", KeyFault.Damaged)]
    [InlineData("key-2", "key-3", KeyFault.OtherParameters)]
    [InlineData("key-2", "key-1", KeyFault.Damaged)]
    [InlineData("\"people\": 1", "\"people\": 2", KeyFault.NeedsTwoPassphrases)]
    [InlineData("\"people\": 1", "\"people\": 0", KeyFault.OtherParameters)]
    [InlineData("HMAC-SHA256", "HMAC-SHA1", KeyFault.OtherParameters)]
    public void An_edited_member_is_noticed_and_named(string written, string edited, KeyFault fault)
    {
        string text = File.ReadAllText(_folder.Seal("a.key", KeyFolder.Key));
        string changed = text.Replace(written, edited, StringComparison.Ordinal);
        Assert.NotEqual(text, changed);
        Assert.Equal(fault, _folder.OpenText(changed).Fault);
    }

    [Theory]
    [InlineData("")]
    [InlineData("nothing of the kind")]
    [InlineData("[1, 2]")]
    [InlineData("{}")]
    [InlineData("\uFEFF{")]
    [InlineData("{\"format\":{\"format\":{\"format\":1}}}")]
    [InlineData("{\"format\":\"\\ud800\"}")]
    public void A_file_that_is_no_key_file_is_called_so(string text) => Assert.Equal(KeyFault.Damaged, _folder.OpenText(text).Fault);

    [Fact]
    public void A_broken_character_in_a_member_is_damage()
    {
        string text = File.ReadAllText(_folder.Seal("a.key", KeyFolder.Key));
        Assert.Equal(KeyFault.Damaged, _folder.OpenText(text.Replace("QW-0114", "QW\\ud800", StringComparison.Ordinal)).Fault);
    }
}
