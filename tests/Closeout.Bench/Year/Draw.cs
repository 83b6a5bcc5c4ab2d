namespace Closeout.Bench.Year;

/// <summary>Random draws from a fixed seed.</summary>
public sealed class Draw(int seed)
{
    private readonly Random random = new(seed);

    public double Uniform() => random.NextDouble();

    public int Whole(int least, int most) => random.Next(least, most + 1);

    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>An index with the chance of its weight.</summary>
    public int Of(double[] weights)
    {
        var left = random.NextDouble() * weights.Sum();
        for (var i = 0; i < weights.Length - 1; i++)
        {
            left -= weights[i];
            if (left < 0)
            {
                return i;
            }
        }

        return weights.Length - 1;
    }

    /// <summary>Negative binomial with that mean and so many times its variance, above 1: a Poisson draw around a gamma draw.</summary>
    public int Lumpy(double mean, double varianceToMean) =>
        mean <= 0 ? 0 : Poisson(Gamma(mean / (varianceToMean - 1)) * (varianceToMean - 1));

    public int Poisson(double mean)
    {
        var (count, left) = (0, mean);
        while ((left += Math.Log(1 - random.NextDouble())) > 0)
        {
            count++;
        }

        return count;
    }

    /// <summary>Scale 1. Marsaglia and Tsang 2000; a shape below 1 by the usual power of a uniform.</summary>
    private double Gamma(double shape)
    {
        if (shape < 1)
        {
            return Gamma(shape + 1) * Math.Pow(1 - random.NextDouble(), 1 / shape);
        }

        var d = shape - 1.0 / 3;
        var c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            var x = Normal();
            var v = Math.Pow(1 + c * x, 3);
            if (v > 0 && Math.Log(1 - random.NextDouble()) < x * x / 2 + d - d * v + d * Math.Log(v))
            {
                return d * v;
            }
        }
    }
}
