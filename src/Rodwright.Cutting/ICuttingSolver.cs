namespace Rodwright.Cutting;

/// <summary>Something that finds a cutting plan.</summary>
public interface ICuttingSolver
{
    /// <summary>The best plan found with an effort. The same problem and effort give the same plan.</summary>
    /// <param name="problem">Pieces, boards, saw.</param>
    /// <param name="effort">How hard to look; <see cref="CuttingEffort.Usual"/> when null.</param>
    /// <param name="progress">Told whenever plan or bound gets better.</param>
    /// <param name="stop">Stops the search.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    CuttingPlan Solve(CuttingProblem problem, CuttingEffort? effort = null, IProgress<CuttingProgress>? progress = null, CancellationToken stop = default);
}
