using CsCheck;

namespace Closeout.Tests;

/// <summary>Laws that hold for every sample drawn from a generator.</summary>
/// <remarks>CsCheck's own <c>Sample</c> fixes only its first sample by a seed; here all of them are the same on every run.</remarks>
internal static class Law
{
    /// <summary>Draws samples and tries the law on each. A sample that breaks it is handed to CsCheck, which shrinks it.</summary>
    public static void Holds<T>(this Gen<T> gen, Action<T> law, int samples = 300, ulong seed = 20261118)
    {
        var lots = new PCG(1, seed);
        for (var i = 0; i < samples; i++)
        {
            var start = lots.State;
            var sample = gen.Generate(lots, null, out _);
            try
            {
                law(sample);
            }
            catch (Exception)
            {
                gen.Sample(law, seed: lots.ToString(start), iter: samples, threads: 1);
                throw;
            }
        }
    }

    /// <summary>The same for a law of three things.</summary>
    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> law, int samples = 300, ulong seed = 20261118) =>
        gen.Holds(t => law(t.Item1, t.Item2, t.Item3), samples, seed);
}
