using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace FieldSession.Rating;

/// <summary>
/// The order in which codes are presented in a set of forced choices: every order equally often, in blocks that hold each
/// once, shuffled inside the block by the bytes of a SHA-256 hash. The same set gets the same order wherever it is planned, and no
/// one in the car can tell the next one in the head. Equal use of all orders: common practice of sensory testing (from memory).
/// </summary>
public static class Counterbalance
{
    private static ImmutableArray<string> Pairs => ["AB", "BA"];

    private static ImmutableArray<string> Triangles => ["AAB", "ABA", "BAA", "BBA", "BAB", "ABB"];

    /// <summary>Every order of a trial.</summary>
    /// <param name="places">2: a pair; 3: a triangle.</param>
    public static ImmutableArray<string> Orders(int places) => places == 3 ? Triangles : Pairs;

    /// <summary>The presentations of a set.</summary>
    /// <param name="places">2: a pair; 3: a triangle.</param>
    /// <param name="trials">How many trials, 1 or more.</param>
    /// <param name="seed">What names the set: study, number of the set, codes.</param>
    public static ImmutableList<string> Of(int places, int trials, string seed)
    {
        ImmutableArray<string> orders = Orders(places);
        ImmutableList<string>.Builder made = ImmutableList.CreateBuilder<string>();
        for (int block = 0; made.Count < trials; block++)
        {
            made.AddRange(Shuffled(orders, SHA256.HashData(Encoding.UTF8.GetBytes($"{seed}|{block}"))).Take(trials - made.Count));
        }

        return made.ToImmutable();
    }

    private static IEnumerable<string> Shuffled(ImmutableArray<string> orders, byte[] bytes) => orders
        .Select((order, place) => (Order: order, Lot: (bytes[place * 4] << 16) + (bytes[(place * 4) + 1] << 8) + bytes[(place * 4) + 2]))
        .OrderBy(drawn => drawn.Lot)
        .Select(drawn => drawn.Order);
}
