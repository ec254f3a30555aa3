using System.Collections.Concurrent;
using System.Globalization;
using System.Runtime.ExceptionServices;
using CsCheck;

namespace Rodwright.Properties;

/// <summary>
/// Properties held over the same made-up values on every run, so that a run says something of the change under test and not of the luck of the day. What breaks one is handed to CsCheck, which
/// looks for something smaller that breaks it too. <c>RODWRIGHT_PROPERTIES=N</c> takes other values: to look for what the usual ones miss.
/// </summary>
public static class Property
{
    private static readonly ulong Series = ulong.TryParse(Environment.GetEnvironmentVariable("RODWRIGHT_PROPERTIES"), CultureInfo.InvariantCulture, out var other) ? other : 20261126;

    /// <summary>Checks value after value.</summary>
    /// <param name="gen">Makes the values.</param>
    /// <param name="check">Throws where the property does not hold.</param>
    /// <param name="iter">How many.</param>
    /// <param name="threads">At once; as many as there are processors when not given.</param>
    public static void Holds<T>(this Gen<T> gen, Action<T> check, int iter = 100, int threads = 0)
    {
        ArgumentNullException.ThrowIfNull(gen);
        var broken = new ConcurrentDictionary<int, (string Seed, Exception Why)>();
        Parallel.For(0, iter, new() { MaxDegreeOfParallelism = threads > 0 ? threads : Environment.ProcessorCount }, (i, loop) =>
        {
            var random = new PCG((uint)i, Series);
            var seed = random.ToString();
            try
            {
                check(gen.Generate(random, null, out _));
            }
            catch (Exception why)
            {
                broken[i] = (seed, why);
                loop.Break();
            }
        });
        if (broken.IsEmpty) return;
        var first = broken[broken.Keys.Min()];
        gen.Sample(check, seed: first.Seed, iter: 200, threads: 1);
        // Nothing broke the second time: the check itself does not always say the same.
        ExceptionDispatchInfo.Throw(first.Why);
    }

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, int)"/>
    public static void Holds<T>(this Gen<T> gen, Func<T, bool> check, int iter = 100, int threads = 0) => gen.Holds(
        value =>
        {
            if (!check(value)) throw new PropertyException(string.Create(CultureInfo.InvariantCulture, $"does not hold for {value}"));
        },
        iter, threads);

    /// <summary>Checks value after value, one at a time.</summary>
    /// <param name="gen">Makes the values.</param>
    /// <param name="check">Throws where the property does not hold.</param>
    /// <param name="iter">How many.</param>
    public static async Task HoldsAsync<T>(this Gen<T> gen, Func<T, Task> check, int iter = 100)
    {
        for (var i = 0; i < iter; i++) await check(gen.Generate(new PCG((uint)i, Series), null, out _));
    }

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, int)"/>
    public static void Holds<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> check, int iter = 100, int threads = 0) => gen.Holds(t => check(t.Item1, t.Item2), iter, threads);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, int)"/>
    public static void Holds<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> check, int iter = 100, int threads = 0) => gen.Holds(t => check(t.Item1, t.Item2), iter, threads);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, int)"/>
    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> check, int iter = 100, int threads = 0) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3), iter, threads);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, int)"/>
    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> check, int iter = 100, int threads = 0) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3), iter, threads);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, int)"/>
    public static void Holds<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> check, int iter = 100, int threads = 0) =>
        gen.Holds(t => check(t.Item1, t.Item2, t.Item3, t.Item4), iter, threads);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, int)"/>
    public static void Holds<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> check, int iter = 100, int threads = 0) =>
        gen.Holds(t => check(t.Item1, t.Item2, t.Item3, t.Item4), iter, threads);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, int)"/>
    public static void Holds<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> check, int iter = 100, int threads = 0) =>
        gen.Holds(t => check(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5), iter, threads);
}

/// <summary>A made-up value for which a property does not hold.</summary>
public sealed class PropertyException(string message) : Exception(message);
