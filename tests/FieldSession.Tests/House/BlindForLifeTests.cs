using System.Collections.Immutable;
using System.Reflection;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Tests.House;

[Collection(HouseRules.Name)]
public sealed class BlindForLifeTests(TheHouse house)
{
    private const BindingFlags Everything = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;

    // Every other room could only show who is who too early.
    private static readonly ImmutableArray<string> MaySeeTheKey =
    [
        "src/FieldSession/Sealing/",
        "src/FieldSession/Revealing/",
        "src/FieldSession.Store/Sealing/",
        "src/FieldSession.Terminal/Custodian/",
        "src/FieldSession.Terminal/Commands/Custodian/SealCommand.cs",
        "src/FieldSession.Terminal/Commands/Custodian/SealAway.cs",
        "src/FieldSession.Terminal/Commands/Custodian/KeyMaking.cs",
        "src/FieldSession.Terminal/Commands/Custodian/FittingCommand.cs",
        "src/FieldSession.Terminal/Commands/Custodian/KeycheckCommand.cs",
        "src/FieldSession.Terminal/Demonstration/DemoDay.cs",
    ];

    [Fact]
    public void The_study_can_never_learn_who_is_who()
    {
        Dictionary<Type, string> reached = ReachedFrom(typeof(Study));
        TheHouse.NoneOf(
            reached.Where(pair => IsKey(pair.Key)).Select(pair => $"{pair.Value} is a {pair.Key.FullName}"),
            "no type that holds the key can be reached from the study"
        );
    }

    [Fact]
    public void The_walk_from_the_study_reaches_what_it_is_made_of()
    {
        Dictionary<Type, string> reached = ReachedFrom(typeof(Study));
        Type[] parts = [typeof(Plan), typeof(Run), typeof(Reading), typeof(Missed), typeof(SpecCode), typeof(Prediction), typeof(Undoable)];
        Assert.Empty(parts.Except(reached.Keys));
        Assert.True(IsKey(typeof(KeySheet)));
    }

    [Fact]
    public void Nobody_sees_the_key_but_the_rooms_that_seal_and_open_it() =>
        TheHouse.NoneOf(
            from use in house.Uses
            where use.IsOurs && !MaySeeTheKey.Any(use.Source.LiesIn)
            where (use.Symbol.ContainingType?.Name ?? use.Symbol.Name) is nameof(KeySheet) or nameof(KeyLine)
            select use.ToString(),
            "the key is seen where it is sealed, kept, opened and told, nowhere else"
        );

    [Fact]
    public void No_screen_of_the_day_takes_what_the_reveal_knows() =>
        TheHouse.NoneOf(
            from use in house.Uses
            where use.IsOurs && use.Source.LiesIn("src/FieldSession.Terminal/Screens/")
            where use.Source.Room is not ("Revealing" or "Reporting")
            where use.Room is "Revealing" or "Reporting"
            select use.ToString(),
            "before the reveal there is nothing on a screen that could tell"
        );

    private static bool IsKey(Type type) =>
        type.Namespace == "FieldSession.Revealing" || type == typeof(KeySheet) || type == typeof(KeyLine) || type == typeof(SpecList);

    // Each type with the way by which it was reached.
    private static Dictionary<Type, string> ReachedFrom(Type start)
    {
        Dictionary<Type, string> reached = new() { [start] = start.Name };
        Queue<Type> open = new([start]);
        while (open.TryDequeue(out Type? type))
        {
            foreach ((Type next, string way) in NextTo(type).Where(step => reached.TryAdd(step.Type, $"{reached[type]}.{step.Way}")))
            {
                open.Enqueue(next);
            }
        }

        return reached;
    }

    private static IEnumerable<(Type Type, string Way)> NextTo(Type type)
    {
        IEnumerable<(Type Type, string Way)> parts = type.GetGenericArguments().Select(part => (part, "<>"));
        if (type.HasElementType)
        {
            return parts.Append((type.GetElementType()!, "[]"));
        }

        return type.Assembly != typeof(Study).Assembly
            ? parts
            : parts
                .Concat(type.GetProperties(Everything).Select(property => (property.PropertyType, property.Name)))
                .Concat(type.GetFields(Everything).Select(field => (field.FieldType, field.Name)))
                .Concat(type.Assembly.GetTypes().Where(other => other.BaseType == type).Select(other => (other, $"({other.Name})")));
    }
}
