using Mono.Cecil;

namespace Closeout.Tests.Layers;

/// <summary>
/// Which namespace, that is which folder, uses which: read from the compiled types, their signatures and their code. Mono.Cecil
/// reads the code as well; NetArchTest.Rules tells dependencies of named parts, and has no rule about circles.
/// </summary>
internal static class Uses
{
    public static IReadOnlyCollection<(string From, string To)> Of(Type anyOf)
    {
        using var module = ModuleDefinition.ReadModule(anyOf.Assembly.Location);
        return [.. module.GetTypes().SelectMany(t => Named(t).Select(to => (From: Namespace(t), To: Namespace(to))))
            .Where(u => u.From != u.To && u.From.StartsWith("Closeout", StringComparison.Ordinal) && u.To.StartsWith("Closeout", StringComparison.Ordinal))
            .Distinct()
            .OrderBy(u => u)];
    }

    /// <summary>A circle of it, the first again at its end; empty: there is none.</summary>
    public static IReadOnlyList<string> Circle(IReadOnlyCollection<(string From, string To)> uses)
    {
        var left = uses;
        while (left.Where(u => left.Any(other => other.From == u.To)).ToList() is var inner && inner.Count < left.Count)
            left = inner;

        List<string> way = [.. left.Take(1).Select(u => u.From)];
        while (way.Count > 0 && way.IndexOf(way[^1]) == way.Count - 1)
            way.Add(left.First(u => u.From == way[^1]).To);

        return way.Count == 0 ? [] : way[way.IndexOf(way[^1])..];
    }

    private static string Namespace(TypeReference type) => type.DeclaringType is { } outer ? Namespace(outer) : type.Namespace;

    private static IEnumerable<TypeReference> Named(TypeDefinition type) =>
        Parts(type).Where(t => t is not null).SelectMany(t => Inner(t!)).Where(t => t is not GenericParameter);

    private static IEnumerable<TypeReference?> Parts(TypeDefinition type) =>
    [
        type.BaseType,
        .. type.Interfaces.Select(i => i.InterfaceType),
        .. type.Fields.Select(f => f.FieldType),
        .. type.CustomAttributes.SelectMany(a => a.ConstructorArguments).Select(a => a.Value as TypeReference),
        .. type.Methods.SelectMany(m => m.Parameters.Select(p => p.ParameterType).Append(m.ReturnType)),
        .. type.Methods.Where(m => m.HasBody).SelectMany(m => m.Body.Variables.Select(v => v.VariableType)),
        .. type.Methods.Where(m => m.HasBody).SelectMany(m => m.Body.Instructions).SelectMany(i => i.Operand switch
        {
            TypeReference t => [t],
            GenericInstanceMethod m => m.GenericArguments.Append(m.DeclaringType),
            MemberReference m => new[] { m.DeclaringType },
            _ => [],
        }),
    ];

    private static IEnumerable<TypeReference> Inner(TypeReference type) => type switch
    {
        GenericInstanceType g => g.GenericArguments.SelectMany(Inner).Append(g.ElementType),
        TypeSpecification s => Inner(s.ElementType),
        _ => [type],
    };
}
